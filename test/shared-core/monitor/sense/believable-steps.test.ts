import { describe, expect, test } from 'vitest';
import { createBelievableSteps } from '../../../../shared-core/monitor/sense/believable-steps.ts';

const bin = (value: number) => ({ timeS: 0, value, count: 1, spread: 0 });
/** With this noise 1 + 6 · 0.05 = 1.3 K are always believed. */
const noiseSdK = 0.05;

function verdicts(
  values: readonly number[],
  at: { readonly bulbC: number | null; readonly plateauC?: number | null; readonly gapS?: number },
) {
  const steps = createBelievableSteps();
  const { bulbC, plateauC = null, gapS = 1 } = at;
  return values.map((value) => steps.judge(bin(value), { bulbC, noiseSdK, plateauC }, gapS));
}

const believed = { believed: true, probeStepK: 0 };
const doubted = { believed: false, probeStepK: 0 };

describe('a step of the reading', () => {
  test('is believed whatever it is, while nobody knows where the bulb is', () => {
    expect(verdicts([139, -39], { bulbC: null })).toEqual([believed, believed]);
  });

  test('is believed up to 20 K a second upwards and 8 K downwards, with the noise', () => {
    expect(verdicts([71.2, 71.4], { bulbC: 50 })).toEqual([believed, doubted]);
    expect(verdicts([40.8, 40.6], { bulbC: 50 })).toEqual([believed, doubted]);
  });

  test('is believed further after a gap', () => {
    expect(verdicts([110, 111.4], { bulbC: 50, gapS: 3 })).toEqual([believed, doubted]);
    expect(verdicts([24.8, 24.6], { bulbC: 50, gapS: 3 })).toEqual([believed, doubted]);
  });

  test('upwards off a plateau is believed up to half a kelvin a second only', () => {
    const at = { bulbC: 78.4, plateauC: 78.4 };
    expect(verdicts([80.1, 80.3], at)).toEqual([believed, doubted]);
    // Below a kelvin above the plateau nothing is steeper than elsewhere.
    expect(verdicts([79.3], at)).toEqual([believed]);
  });

  test('is taken for true in the third second alike; off a plateau for the probe’s own, upwards alone', () => {
    const slipped = { believed: true, probeStepK: expect.closeTo(6.6, 9) };
    expect(verdicts([85, 85.5, 85], { bulbC: 78.4, plateauC: 78.4 })).toEqual([
      doubted,
      doubted,
      slipped,
    ]);
    expect(verdicts([60, 60, 60], { bulbC: 78.4, plateauC: 78.4 })).toEqual([
      doubted,
      doubted,
      believed,
    ]);
    expect(verdicts([85, 85, 85], { bulbC: 50 })).toEqual([doubted, doubted, believed]);
  });

  test('does not add up with one in the other direction', () => {
    expect(verdicts([85, 60, 85, 60], { bulbC: 78.4, plateauC: 78.4 })).toEqual(
      Array(4).fill(doubted),
    );
  });

  test('begins to be counted anew when a reading between was believed', () => {
    expect(verdicts([85, 85, 78.4, 85, 85], { bulbC: 78.4, plateauC: 78.4 })).toEqual([
      doubted,
      doubted,
      believed,
      doubted,
      doubted,
    ]);
  });

  test('counts as a jump, half as much after 23 s', () => {
    const steps = createBelievableSteps();
    for (const value of [85, 60, 85])
      steps.judge(bin(value), { bulbC: 78.4, noiseSdK, plateauC: 78.4 }, 1);
    expect(steps.jumps()).toBe(3);
    for (let second = 0; second < 23; second += 1) steps.fade();
    expect(steps.jumps()).toBeCloseTo(1.49, 2);
  });
});
