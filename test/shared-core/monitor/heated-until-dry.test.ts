import { describe, expect, test } from 'vitest';
import {
  createBatchSimulation,
  createMonitor,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  pearFermentSetup,
} from '#shared-core';

const charge = { volumeMl: 350, strengthAbv: 9 };
const hourS = 3600;
const everyS = 4;
const endS = 11 * hourS;

interface Course {
  /** The sentences, without their numbers, in the order in which they were first said. */
  readonly said: readonly string[];
  readonly calledS: number;
  /** What the simulated pot truly held when the call came, and at the end [mL]. */
  readonly heldMl: number;
  readonly endMl: number;
  readonly last: ReturnType<ReturnType<typeof createMonitor>['snapshot']>;
}

/** Nobody takes the heat off, and nothing is booked: the head alone tells, and stands still for hours. */
function heatFor11Hours(schedule: readonly { timeS: number; powerW: number }[]): Course {
  const base = pearFermentSetup();
  const still = createBatchSimulation({
    ...base,
    charge: { ...base.charge, ...charge },
    schedule: schedule.map((step) => ({ ...step, kind: 'heat-on' as const })),
  });
  const probe = createProbeSignal({ random: createRandom(1), whiteNoiseK: 0.04 });
  const monitor = createMonitor({
    ...defaultRunSettings,
    charge: { ...charge, standardUncertaintyAbv: 0.5 },
    pressure: {
      pressureKPa: base.pressureKPa,
      standardUncertaintyKPa: 0.1,
      source: 'barometer',
      altitudeM: null,
    },
    attentionCheckS: null,
  });
  monitor.push({ kind: 'mark', timeS: 1, markId: 1, mark: { type: 'heat-on' } });
  const said = new Set<string>();
  let calledS = Number.POSITIVE_INFINITY;
  let heldMl = Number.NaN;
  for (let timeS = everyS; timeS <= endS; timeS += everyS) {
    still.advance(timeS);
    const { bulbTemperatureC, potVolumeMl } = still.state;
    const value = probe.read(timeS, bulbTemperatureC);
    if (value === null) continue;
    monitor.push({ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' });
    const { sentence, alarms } = monitor.snapshot();
    said.add(sentence.replace(/[\d.–]+/g, '#'));
    const dryness = alarms.some(
      ({ alarm, state }) => alarm === 'near-dryness' && state === 'unacknowledged',
    );
    if (dryness && calledS === Number.POSITIVE_INFINITY) {
      calledS = timeS;
      heldMl = potVolumeMl;
    }
  }
  const endMl = still.state.potVolumeMl;
  return {
    said: [...said],
    calledS,
    heldMl,
    endMl,
    last: monitor.snapshot(),
  };
}

/** What stands at the top of the window in the end, whatever was said before. */
const atTheEnd = (course: Course) => [
  course.said.at(-1),
  course.last.act,
  course.last.alarms.find(({ alarm }) => alarm === 'near-dryness')?.state,
];
const dry = [
  'The pot may be close to running dry#',
  'Take the heat off (flame out, mantle down) now and let the pot cool.',
  'unacknowledged',
];

describe('a still that is heated for eleven hours, nobody by', () => {
  test('a gentle flame: the call comes long before the pot is dry, replaces the older sentence and stands', () => {
    const course = heatFor11Hours([
      { timeS: 0, powerW: 130 },
      { timeS: 760, powerW: 64 },
    ]);
    expect(course.said.slice(-3, -1)).toEqual([
      'The main fraction is ending#',
      'The main fraction has ended#',
    ]);
    expect(atTheEnd(course)).toEqual(dry);
    expect(course.calledS).toBeLessThan(endS);
    expect(course.heldMl).toBeGreaterThan(0.1 * charge.volumeMl);
  });

  test('a strong one: the simulated pot boils dry, and the call comes while a tenth of the charge is still there', () => {
    const course = heatFor11Hours([{ timeS: 0, powerW: 130 }]);
    expect(course.endMl).toBeLessThan(0.01 * charge.volumeMl);
    expect(course.heldMl).toBeGreaterThan(0.1 * charge.volumeMl);
    expect(atTheEnd(course)).toEqual(dry);
  });
});
