import { describe, expect, test } from 'vitest';
import type { Reading } from '#shared-core';
import {
  isBlind,
  isDropout,
  type ProbeFault,
  probeFaultWords,
} from '../../../../shared-core/monitor/sense/probe-fault.ts';
import { createProbeHealth } from '../../../../shared-core/monitor/sense/probe-health.ts';
import type { LinkChange } from '../../../../shared-core/run/link-change.ts';

const expected = { bulbC: null, noiseSdK: 0.05, plateauC: null, waterC: 99.6, potC: null };
const bin = (timeS: number, value: number) => ({ timeS, value, count: 1, spread: 0 });

function reading(value: number, quality: Reading['quality'] = 'good'): Reading {
  return { kind: 'reading', timeS: 0, channel: 'head', value, unit: '°C', quality };
}

function link(timeS: number, state: LinkChange['state'], reason: LinkChange['reason']): LinkChange {
  return { kind: 'link', timeS, state, reason };
}

/** A probe that has sent once a second up to `untilS`. */
function healthy(untilS: number) {
  const health = createProbeHealth(5);
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    health.seeReading(reading(20 + timeS / 10), 20 + timeS / 10);
    health.judge(timeS, bin(timeS, 20 + timeS / 10), expected);
  }
  return health;
}

const faultsAt = (health: ReturnType<typeof createProbeHealth>, ...timesS: number[]) =>
  timesS.map((timeS) => health.judge(timeS, null, expected).fault);

describe('a head probe', () => {
  test('is waited for half a minute, then it is silent', () => {
    expect(faultsAt(createProbeHealth(5), 30, 31)).toEqual([null, 'silent']);
  });

  test('that stops is silent after the time set, or an open circuit while it sends what no head has', () => {
    expect(faultsAt(healthy(60), 65, 66)).toEqual([null, 'silent']);
    const health = healthy(60);
    expect(health.seeReading({ ...reading(-127), timeS: 64 }, -127)).toBe(false);
    expect(faultsAt(health, 65, 66, 69, 70)).toEqual([
      null,
      'open-circuit',
      'open-circuit',
      'silent',
    ]);
  });

  test('whose cable is out is lost after two seconds, and back with its first reading', () => {
    const health = healthy(60);
    health.seeLink(link(61, 'lost', 'unplugged'));
    expect(faultsAt(health, 62, 63)).toEqual([null, 'lost']);
    health.seeReading(reading(26), 26);
    expect(health.judge(64, bin(64, 26), expected)).toEqual({
      accepted: bin(64, 26),
      probeStepK: 0,
      fault: null,
    });
  });

  test('is not called disconnected where the reader of the probe stopped', () => {
    const health = healthy(60);
    health.seeLink(link(61, 'lost', 'reader-stopped'));
    expect(faultsAt(health, 62, 63)).toEqual([null, 'reader-stopped']);
    health.seeReading(reading(26), 26);
    expect(health.judge(64, bin(64, 26), expected)).toMatchObject({ fault: null });
  });

  test('that has been heard once is waited for, since nobody knows its pace, but not while it sends what no head has', () => {
    expect(faultsAt(healthy(1), 181, 182)).toEqual([null, 'silent']);
    const health = healthy(1);
    const faults = [2, 3, 4, 5, 6, 7].map((timeS) => {
      health.seeReading({ ...reading(-127), timeS }, -127);
      return health.judge(timeS, null, expected).fault;
    });
    expect(faults).toEqual([null, null, null, null, null, 'open-circuit']);
  });

  test('that is back is not lost any more: what is wrong with it then is what it sends', () => {
    const health = healthy(60);
    health.seeLink(link(61, 'lost', 'unplugged'));
    health.seeLink(link(80, 'back', 'unplugged'));
    expect(faultsAt(health, 80)).toEqual(['silent']);
    health.seeReading({ ...reading(-127), timeS: 80 }, -127);
    expect(faultsAt(health, 80)).toEqual(['open-circuit']);
  });

  test.each(['program-closed', 'clock-stepped'] as const)(
    'is not called silent for the time in which the program was closed, but from when it is back for %s on',
    (reason) => {
      const health = healthy(60);
      health.seeLink(link(61, 'lost', 'program-closed'));
      expect(faultsAt(health, 400)).toEqual(['program-closed']);
      health.seeLink(link(500, 'back', reason));
      expect(faultsAt(health, 505, 506)).toEqual(['program-closed', 'silent']);
    },
  );

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -40, 140, -41, 141])(
    'that sends %d °C sends nothing',
    (value) => {
      expect(healthy(10).seeReading(reading(value), value)).toBe(false);
    },
  );

  test.each([-39.9, 0, 20, 139.9])('may show %d °C', (value) => {
    expect(createProbeHealth(5).seeReading(reading(value), value)).toBe(true);
  });

  test('that sends the value a one-wire sensor has after power-on is believed only near what it last sent', () => {
    expect(healthy(10).seeReading(reading(85), 85)).toBe(false);
    const hot = createProbeHealth(5);
    hot.judge(1, bin(1, 83.5), expected);
    expect(hot.seeReading(reading(85), 85)).toBe(true);
    expect(createProbeHealth(5).seeReading(reading(85), 85)).toBe(false);
  });

  test('that doubts its own reading is believed only near what it last sent', () => {
    const health = createProbeHealth(5);
    health.judge(1, bin(1, 78.4), expected);
    expect(
      [80.4, 80.5, 76.4, 76.3].map((c) => health.seeReading(reading(c, 'suspect'), c)),
    ).toEqual([true, false, true, false]);
  });

  test('that says itself that its reading is bad sends nothing, however likely what it shows', () => {
    const health = healthy(60);
    expect(health.seeReading({ ...reading(26, 'bad'), timeS: 64 }, 26)).toBe(false);
    expect(faultsAt(health, 65, 66)).toEqual([null, 'open-circuit']);
  });

  test('is believed to have risen by 20 K for each second since it was last heard', () => {
    const rose = (gapS: number, byK: number) => {
      const health = healthy(60);
      const at = { ...expected, bulbC: 26 };
      return health.judge(60 + gapS, bin(60 + gapS, 26 + byK), at).accepted !== null;
    };
    // With 1.3 K for the noise.
    expect([rose(1, 21.2), rose(1, 21.4), rose(3, 61.2), rose(3, 61.4)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  test('whose readings do not come, or cannot be, is blind; one that another channel contradicts, or that hangs oddly, is not', () => {
    const faults = Object.keys(probeFaultWords) as ProbeFault[];
    expect([null, ...faults].filter((fault) => !isBlind(fault))).toEqual([
      null,
      'hotter-than-pot',
      'below-boiling',
    ]);
    expect(faults.filter(isDropout)).toEqual(['lost', 'silent', 'open-circuit', 'reader-stopped']);
  });

  test('that jumped off its plateau is told of for 45 s', () => {
    const health = healthy(3);
    const onPlateau = { ...expected, bulbC: 78.4, plateauC: 78.4 };
    const faults = [];
    for (let timeS = 4; timeS <= 60; timeS += 1)
      faults.push(health.judge(timeS, bin(timeS, timeS < 7 ? 85 : 78.4), onPlateau).fault);
    expect([faults.indexOf('step'), faults.lastIndexOf('step')]).toEqual([2, 46]);
  });

  test('that jumps to and fro has spikes, and is silent only when nothing comes any more', () => {
    const health = healthy(3);
    const at = { ...expected, bulbC: 78.4, plateauC: 78.4 };
    const faults = [85, 20, 85, 20, 85, 20].map(
      (value, index) => health.judge(4 + index, bin(4 + index, value), at).fault,
    );
    expect(faults).toEqual([null, null, null, null, 'spikes', 'spikes']);
    expect(faultsAt(health, 14, 15)).toEqual(['spikes', 'silent']);
  });
});
