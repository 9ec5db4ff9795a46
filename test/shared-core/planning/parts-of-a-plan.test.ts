import { describe, expect, test } from 'vitest';
import { teachingRigs } from '../../../shared-core/column/teaching-rigs.ts';
import { equilibriumModelUncertaintyK } from '../../../shared-core/equilibrium/model-uncertainty.ts';
import { estimateFrom } from '../../../shared-core/planning/estimate-from.ts';
import { expectedCourse } from '../../../shared-core/planning/expected-course.ts';
import { usualPlanUncertainty } from '../../../shared-core/planning/plan-request.ts';
import { purityAgainstRecovery } from '../../../shared-core/planning/purity-against-recovery.ts';
import { rigAsKnown } from '../../../shared-core/planning/rig-as-known.ts';
import type { PlanOutcome, PlanSample } from '../../../shared-core/planning/run-member.ts';
import { withModelDoubt } from '../../../shared-core/planning/with-model-doubt.ts';

/** A run of which only what was read of it counts here. */
const outcome = (samples: readonly Partial<PlanSample>[]): PlanOutcome => ({
  vapourS: null,
  firstFraction: null,
  mainFraction: null,
  tail: null,
  plateauC: null,
  refluxRatio: null,
  durationS: 20 * samples.length,
  chargeEthanolMol: 1,
  samples: samples.map((sample, index) => ({
    timeS: 20 * (index + 1),
    bulbTemperatureC: 20,
    recoveredFraction: 0,
    meanStrengthAbv: 0,
    vapourStrengthAbv: 0,
    ...sample,
  })),
});

describe('an estimate over some runs', () => {
  test('is their median with the ends of the middle 90 %, between two of them in proportion', () => {
    const values = Array.from({ length: 21 }, (_, index) => 20 - index);
    expect(estimateFrom(values)).toEqual({
      value: 10,
      low: expect.closeTo(1, 9),
      high: expect.closeTo(19, 9),
    });
    // Of 1 and 3 the 5 % point lies a twentieth of the way.
    expect(estimateFrom([3, 1])).toEqual({
      value: 2,
      low: expect.closeTo(1.1, 9),
      high: expect.closeTo(2.9, 9),
    });
    expect(estimateFrom([7])).toEqual({ value: 7, low: 7, high: 7 });
    expect(estimateFrom([])).toBeNull();
    expect(values[0]).toBe(20);
  });
});

describe('the course expected', () => {
  test('is as long as half of the runs last, every 20 s; a run that has ended keeps its last value', () => {
    const run = (count: number, offsetC: number) =>
      outcome(Array.from({ length: count }, (_, index) => ({ bulbTemperatureC: offsetC + index })));
    const course = expectedCourse([run(2, 20), run(4, 20), run(5, 20)]);
    expect(course.map(({ timeS }) => timeS)).toEqual([20, 40, 60, 80]);
    expect(course.map(({ headTemperatureC }) => headTemperatureC.value)).toEqual([20, 21, 22, 23]);
    expect(course.at(-1)?.headTemperatureC.low).toBeCloseTo(21 + 0.2, 9);
  });

  test('has 240 points at most, and leaves a run without a reading aside', () => {
    const long = outcome(Array.from({ length: 1000 }, () => ({ bulbTemperatureC: 78 })));
    const course = expectedCourse([long, long]);
    expect(course.length).toBe(200);
    expect(course[1]?.timeS).toBe(120);
    const unread = outcome([{ bulbTemperatureC: Number.NaN }, { bulbTemperatureC: Number.NaN }]);
    const read = outcome([{ bulbTemperatureC: 78 }, { bulbTemperatureC: 79 }]);
    expect(
      expectedCourse([unread, read]).map(({ headTemperatureC }) => headTemperatureC.value),
    ).toEqual([78, 79]);
    expect(expectedCourse([unread])).toEqual([]);
    expect(expectedCourse([])).toEqual([]);
  });
});

describe('purity against recovery', () => {
  const collecting = (mostRecovered: number, meanAbv: number) =>
    outcome(
      Array.from({ length: 100 }, (_, index) => ({
        recoveredFraction: Math.min(mostRecovered, (index + 1) / 100),
        meanStrengthAbv: meanAbv - index / 10,
        vapourStrengthAbv: meanAbv - index / 2,
      })),
    );

  test('is read where each run first has so much, in steps of a twentieth', () => {
    const points = purityAgainstRecovery([collecting(1, 92), collecting(1, 90)]);
    expect(points.map(({ recoveredFraction }) => recoveredFraction)).toEqual(
      Array.from({ length: 19 }, (_, index) => Math.round(5 * (index + 1)) / 100),
    );
    expect(points[3]?.strengthAbv.value).toBeCloseTo(91 - 1.9, 9);
    expect(points[3]?.vapourStrengthAbv.value).toBeCloseTo(91 - 9.5, 9);
  });

  test('ends where fewer than four runs of five get', () => {
    const runs = [1, 0.5, 0.32, 0.32, 0.12].map((most) => collecting(most, 90));
    expect(purityAgainstRecovery(runs).at(-1)?.recoveredFraction).toBe(0.3);
    expect(purityAgainstRecovery(runs.slice(0, 2)).at(-1)?.recoveredFraction).toBe(0.5);
    expect(purityAgainstRecovery([])).toEqual([]);
  });
});

describe('a rig as it is known', () => {
  const unknown = { description: 'of glass', plates: null, heatW: null, columnLossW: null };

  test('is a column of glass beads where nothing is known, and its uncertainty wide', () => {
    const { rig, uncertainty } = rigAsKnown(unknown);
    expect(rig).toEqual({ ...teachingRigs.glassBeads, description: 'of glass' });
    expect(uncertainty).toEqual({
      ...usualPlanUncertainty,
      platesShare: 0.35,
      lossShare: 0.35,
      heatShare: 0.2,
    });
  });

  test('has each number that was stated, with the usual uncertainty', () => {
    const plates = rigAsKnown({ ...unknown, plates: 3 });
    expect(plates.rig.plates).toBe(3);
    expect(plates.uncertainty).toEqual({
      ...usualPlanUncertainty,
      lossShare: 0.35,
      heatShare: 0.2,
    });
    const loss = rigAsKnown({ ...unknown, columnLossW: 31 });
    expect(loss.rig.column).toEqual({ ...teachingRigs.glassBeads.column, lossWPerK: 0.5 });
    expect(loss.uncertainty.lossShare).toBe(usualPlanUncertainty.lossShare);
    const heat = rigAsKnown({ ...unknown, heatW: 90 });
    expect(heat.rig.heater).toEqual({ ...teachingRigs.glassBeads.heater, powerW: 90 });
    expect(heat.uncertainty).toEqual({
      ...usualPlanUncertainty,
      platesShare: 0.35,
      lossShare: 0.35,
    });
    expect(rigAsKnown({ ...unknown, columnLossW: 1000 }).rig.column.lossWPerK).toBe(5);
  });

  test('without plates is a bare still head', () => {
    const { rig } = rigAsKnown({ ...unknown, plates: 0 });
    expect(rig).toEqual({ ...teachingRigs.simpleHead, description: 'of glass', plates: 0 });
  });
});

test('the equilibrium model’s doubt adds as squares to a temperature’s range, 1.645 of it for 90 %', () => {
  const place = { azeotropeC: 77.7, pressureKPa: 99.4 };
  const doubtK =
    1.644854 * equilibriumModelUncertaintyK({ temperatureAboveAzeotropeK: 5, pressureKPa: 99.4 });
  expect(withModelDoubt({ value: 82.7, low: 82.4, high: 83.3 }, place)).toEqual({
    value: 82.7,
    low: expect.closeTo(82.7 - Math.hypot(0.3, doubtK), 4),
    high: expect.closeTo(82.7 + Math.hypot(0.6, doubtK), 4),
  });
});
