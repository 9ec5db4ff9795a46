import { describe, expect, test } from 'vitest';
import {
  createRandom,
  defaultRunSettings,
  type RunInput,
  type RunSettings,
  type Verdicts,
} from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { createChannelSenses } from '../../../shared-core/monitor/sense/channel-senses.ts';
import { barometerSettings } from './support.ts';

const untilS = 4500;

/** A head at 77.9 °C from 900 s on, which rises by 1.5 K/min from 3600 s. */
function headC(timeS: number): number {
  if (timeS < 880) return 21;
  return 77.9 - 57 * Math.exp(-(timeS - 880) / 6) + Math.max(0, timeS - 3600) * (1.5 / 60);
}

function run(
  side: (timeS: number) => RunInput | null,
  settings: RunSettings = barometerSettings,
): Verdicts {
  const random = createRandom('channels of a run');
  const inputs: RunInput[] = [];
  for (let timeS = 0; timeS <= untilS; timeS += 1) {
    const value = headC(timeS) + 0.03 * random.normal();
    inputs.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
    const beside = side(timeS);
    if (beside !== null) inputs.push(beside);
  }
  return analyseRun(settings, inputs, untilS);
}

const reading = (
  channel: string,
  timeS: number,
  value: number,
  unit: '°C' | 'kPa' | 'g' = '°C',
): RunInput => ({ kind: 'reading', timeS, channel, value, unit, quality: 'good' });

const callS = ({ alarms }: Verdicts): number | null =>
  alarms.find(({ alarm }) => alarm === 'plateau-departure')?.raisedS ?? null;

describe('another channel than the head costs no call to take the heat off', () => {
  const aloneS = callS(run(() => null));
  const pots: Readonly<Record<string, (timeS: number) => RunInput | null>> = {
    'stops at 68 °C': (timeS) => (timeS > 500 ? null : reading('pot', timeS, 20 + timeS / 10.4)),
    'freezes at 68 °C': (timeS) => reading('pot', timeS, Math.min(68, 20 + timeS / 10.4)),
    'jumps down': (timeS) => reading('pot', timeS, timeS < 2500 ? 92 : 30),
    'lies by 20 K': (timeS) => reading('pot', timeS, 70),
  };
  test.each(Object.entries(pots))('a pot probe that %s', (_, pot) => {
    const calledS = callS(run(pot));
    expect(aloneS).not.toBeNull();
    expect(Math.abs((calledS ?? Number.POSITIVE_INFINITY) - (aloneS ?? 0))).toBeLessThanOrEqual(5);
  });

  const trueKPa = (timeS: number): number => 98.6 + 0.02 * Math.sin(timeS);
  const barometers: Readonly<Record<string, (timeS: number) => number | null>> = {
    vanishes: (timeS) => (timeS > 2000 ? null : trueKPa(timeS)),
    freezes: (timeS) => trueKPa(Math.min(timeS, 2000)),
    'jumps up': (timeS) => trueKPa(timeS) + (timeS > 2000 ? 8 : 0),
    'jumps up for a minute just before the call': (timeS) =>
      trueKPa(timeS) + (timeS > 3600 && timeS < 3660 ? 8 : 0),
    'drifts up': (timeS) => trueKPa(timeS) + Math.max(0, timeS - 2000) / 600,
    'drifts down': (timeS) => trueKPa(timeS) - Math.max(0, timeS - 2000) / 600,
    'shows the lower end of its range': (timeS) => (timeS > 2000 ? 60 : trueKPa(timeS)),
    'shows what it wakes with': (timeS) => (timeS > 2000 ? 101.325 : trueKPa(timeS)),
  };
  const heardS = (
    pressure: RunSettings['pressure'],
    shownKPa: (timeS: number) => number | null,
  ): number | null =>
    callS(
      run(
        (timeS) => {
          const value = shownKPa(timeS);
          return value === null ? null : reading('air-pressure', timeS, value, 'kPa');
        },
        { ...barometerSettings, pressure },
      ),
    );
  const stated = { nobody: defaultRunSettings.pressure, 'a person': barometerSettings.pressure };
  describe.each(Object.entries(stated))('where %s has stated a pressure', (_, pressure) => {
    const calledS = heardS(pressure, trueKPa);
    test.each(Object.entries(barometers))('a barometer that %s', (_name, kPa) => {
      expect(calledS).not.toBeNull();
      expect(heardS(pressure, kPa)).toBe(calledS);
    });
  });

  const grams = (timeS: number): number => 85 + 0.02 * Math.max(0, timeS - 1000);
  const potAt = (timeS: number): number => Math.min(93 + timeS / 3000, 20 + timeS / 10.4);
  const beside: Readonly<Record<string, (timeS: number) => RunInput>> = {
    'a balance that freezes': (timeS) =>
      reading('receiver', timeS, grams(Math.min(timeS, 2000)), 'g'),
    'a balance that runs away': (timeS) =>
      reading('receiver', timeS, grams(timeS) + Math.max(0, timeS - 2000) / 20, 'g'),
    'a pot probe that reads high': (timeS) =>
      reading('pot', timeS, potAt(timeS) + (timeS > 1500 ? 9 : 0)),
    'a pot probe that reads low': (timeS) =>
      reading('pot', timeS, potAt(timeS) - (timeS > 1500 ? 9 : 0)),
  };
  describe('where the stop follows the forecast', () => {
    const settings: RunSettings = {
      ...barometerSettings,
      stop: { kind: 'purity-against-recovery', leastMeanStrengthAbv: 86 },
    };
    const calledS = callS(run(() => null, settings));
    test.each(Object.entries(beside))('%s', (_, side) => {
      expect(calledS).not.toBeNull();
      expect(callS(run(side, settings))).toBe(calledS);
    });
  });

  test('one that goes silent is told of, with since when', () => {
    const { problems } = run((timeS) => (timeS > 500 ? null : reading('pot', timeS, 60)));
    expect(problems).toEqual([
      {
        problem:
          'The channel pot has sent nothing since 0:08:20; what hangs on it is left out. Check its probe and cable.',
        fromS: 500,
        toS: null,
      },
    ]);
  });

  test('a barometer on the line that contradicts what a person read is told of, and not followed', () => {
    const { problems } = run((timeS) => reading('air-pressure', timeS, 101.3, 'kPa'));
    expect(problems).toEqual([
      {
        problem:
          'The air-pressure channel shows 101.3 kPa, and the limit is reckoned by 98.6 kPa. Read a barometer in this room and enter what it shows.',
        fromS: 1,
        toS: null,
      },
    ]);
  });
});

describe('channel senses', () => {
  test('a channel that is silent for a while shows nothing, and is told of once each way', () => {
    const senses = createChannelSenses();
    const turns: string[] = [];
    const say = (atS: number, value: number): void =>
      senses.see({ channel: 'pot', value, unit: '°C', atS });
    for (let timeS = 1; timeS <= 100; timeS += 1) {
      if (timeS <= 20 || timeS > 70) say(timeS, 80);
      for (const { isSilent, lastS } of senses.second(timeS)) {
        turns.push(`${timeS} ${isSilent ? 'silent' : 'back'} since ${lastS}`);
      }
      if (timeS === 30) expect(senses.value('pot')).toBe(80);
      if (timeS === 60) expect(senses.value('pot')).toBeNull();
    }
    expect(turns).toEqual(['36 silent since 20', '71 back since 71']);
  });

  test('a logger of one reading a minute is not silent between two of them, from its first', () => {
    const senses = createChannelSenses();
    let turns = 0;
    for (let timeS = 1; timeS <= 3600; timeS += 1) {
      if (timeS % 60 === 0) senses.see({ channel: 'room', value: 20, unit: '°C', atS: timeS });
      turns += senses.second(timeS).length;
    }
    expect(turns).toBe(0);
    expect(senses.value('room')).toBe(20);
  });

  test('a value that jumps further than a bulb can waits until it is confirmed', () => {
    const senses = createChannelSenses();
    const say = (atS: number, value: number): void =>
      senses.see({ channel: 'pot', value, unit: '°C', atS });
    say(1, 90);
    say(2, 20);
    expect(senses.value('pot')).toBe(90);
    say(3, 20);
    say(4, 20);
    say(5, 20);
    expect(senses.value('pot')).toBe(20);
  });
});
