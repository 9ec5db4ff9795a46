import { describe, expect, test } from 'vitest';
import {
  createRandom,
  OutOfRangeError,
  platinumTemperatureC,
  stationPressure,
  steamPoint,
} from '#shared-core';
import { calibrateAtTwoPoints } from '../../../shared-core/probe/calibrate.ts';
import { platinumResistanceOhm } from '../../../shared-core/probe/platinum.ts';
import { probeBudget } from '../../../shared-core/probe/probe-budget.ts';
import type { ProbeBudgetSetup } from '../../../shared-core/probe/probe-budget-setup.ts';
import { icePoint } from '../../../shared-core/probe/reference-point.ts';

const classB: ProbeBudgetSetup = {
  temperatureC: 78.2,
  sensor: { kind: 'platinum', toleranceClass: 'B' },
  resolutionK: 0.1,
  noiseK: 0.05,
};

const namesOf = (setup: ProbeBudgetSetup) => probeBudget(setup).components.map(({ name }) => name);

describe('probeBudget', () => {
  test('reads as sentences, largest doubt first, and says what would help', () => {
    const budget = probeBudget(classB);
    const combined = Math.sqrt(0.691 ** 2 / 3 + 0.1 ** 2 / 3 + 0.05 ** 2 + 0.1 ** 2 / 12);
    expect(budget).toEqual({
      combinedStandardUncertaintyK: expect.closeTo(combined, 9),
      coverageFactor: 2,
      expandedUncertaintyK: expect.closeTo(2 * combined, 9),
      sentence:
        'The head temperature is known to ± 0.81 °C (k = 2, about 95 %). The largest part is the tolerance of the sensor: ' +
        'calibrate at the ice and steam points to remove most of it.',
      components: [
        {
          name: 'tolerance of the sensor',
          distribution: 'rectangular',
          standardUncertaintyK: expect.closeTo(0.691 / Math.sqrt(3), 9),
          sensitivity: 1,
          share: expect.closeTo(0.691 ** 2 / 3 / combined ** 2, 9),
          sentence:
            'Tolerance of the sensor: promised limits ± 0.69 °C at 78 °C; counts 0.40 °C, 96 % of the variance.',
        },
        {
          name: 'heat along the stem',
          distribution: 'rectangular',
          standardUncertaintyK: expect.closeTo(0.1 / Math.sqrt(3), 9),
          sensitivity: 1,
          share: expect.closeTo(0.1 ** 2 / 3 / combined ** 2, 9),
          sentence:
            'Heat along the stem: usual for a short probe; no source; counts 0.058 °C, 2 % of the variance.',
        },
        {
          name: 'noise of a reading',
          distribution: 'normal',
          standardUncertaintyK: 0.05,
          sensitivity: 1,
          share: expect.closeTo(0.05 ** 2 / combined ** 2, 9),
          sentence:
            'Noise of a reading: scatter of single readings; counts 0.050 °C, 2 % of the variance.',
        },
        {
          name: 'smallest step',
          distribution: 'rectangular',
          standardUncertaintyK: expect.closeTo(0.1 / Math.sqrt(12), 9),
          sensitivity: 1,
          share: expect.closeTo(0.1 ** 2 / 12 / combined ** 2, 9),
          sentence: 'Smallest step: steps of 0.1 °C; counts 0.029 °C, 1 % of the variance.',
        },
      ],
    });
  });

  test('an ice-and-steam calibration with a barometer replaces the tolerance and more than halves the doubt', () => {
    const ice = icePoint('distilled');
    const steam = steamPoint(stationPressure({ kind: 'barometer', stationPressureKPa: 98.6 }));
    const made = calibrateAtTwoPoints(
      {
        readingC: 0.3,
        readingStandardUncertaintyK: 0.03,
        referenceC: ice.temperatureC,
        referenceStandardUncertaintyK: ice.standardUncertaintyK,
      },
      {
        readingC: 99,
        readingStandardUncertaintyK: 0.03,
        referenceC: steam.temperatureC,
        referenceStandardUncertaintyK: steam.standardUncertaintyK,
      },
    );
    if (!made.ok) throw new Error(made.error.kind);
    const calibrated = { ...classB, calibration: made.value };
    expect(namesOf(calibrated)).not.toContain('tolerance of the sensor');
    expect(probeBudget(calibrated).expandedUncertaintyK).toBeLessThan(
      probeBudget(classB).expandedUncertaintyK / 2,
    );
  });

  test('uncorrected lag counts as the whole lag, corrected lag as the doubt of τ and more noise', () => {
    const lag = { timeConstantS: 6.5, slopeKPerS: 0.1 };
    const part = (setup: ProbeBudgetSetup, wanted: string) =>
      probeBudget(setup).components.find(({ name }) => name === wanted)?.standardUncertaintyK;
    const plain = { ...classB, lag: { ...lag, noisePenalty: null } };
    const corrected = { ...classB, lag: { ...lag, noisePenalty: 2.5 } };
    expect({
      plain: part(plain, 'lag, not corrected'),
      plainNoise: part(plain, 'noise of a reading'),
      corrected: part(corrected, 'time constant of the lag correction'),
      correctedNoise: part(corrected, 'noise of a reading'),
    }).toEqual({
      plain: expect.closeTo(0.65 / Math.sqrt(3), 9),
      plainNoise: 0.05,
      corrected: expect.closeTo((0.3 * 0.65) / Math.sqrt(3), 9),
      correctedNoise: expect.closeTo(0.125, 12),
    });
  });

  test('two bare wires of 0.5 Ω on a Pt100 count as 1.3 K', () => {
    const budget = probeBudget({ ...classB, leads: { resistanceOhm: 0.5, r0Ohm: 100 } });
    // 0.5 Ω read as heat, straight from the resistance.
    const shownC = platinumTemperatureC(platinumResistanceOhm(78.2) + 0.5, 100);
    const [largest] = budget.components;
    expect(largest?.name).toBe('resistance of the leads');
    expect((largest?.standardUncertaintyK ?? 0) * Math.sqrt(3)).toBeCloseTo(shownC - 78.2, 2);
  });

  test('the room reaches a thermocouple through its terminals', () => {
    const typeK: ProbeBudgetSetup = {
      ...classB,
      sensor: { kind: 'thermocouple', type: 'K', toleranceClass: 1 },
      coldJunctionToleranceK: 1,
    };
    const line = probeBudget(typeK).components.find(({ name }) => name === 'cold junction');
    // 40.5 µV/K at 25 °C over 41.5 µV/K at 78 °C; NIST SRD 60.
    expect(line?.sensitivity).toBeCloseTo(0.98, 1);
    expect(namesOf({ ...classB, coldJunctionToleranceK: 1 })).not.toContain('cold junction');
  });

  test('the expanded uncertainty holds the truth in about 95 % of simulated probes', () => {
    const random = createRandom('probe coverage');
    const half = (width: number) => width * (2 * random.uniform() - 1);
    const setup: ProbeBudgetSetup = {
      ...classB,
      resolutionK: 0.0625,
      lag: { timeConstantS: 6.5, slopeKPerS: 0.05, noisePenalty: null },
    };
    const { expandedUncertaintyK } = probeBudget(setup);
    const trials = 20_000;
    let held = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      const analogue = 78.2 + half(0.691) + half(0.1) + half(6.5 * 0.05) + 0.05 * random.normal();
      const shown = Math.round(analogue * 16) / 16;
      if (Math.abs(shown - 78.2) <= expandedUncertaintyK) held += 1;
    }
    expect(held / trials).toBeGreaterThan(0.94);
    expect(held / trials).toBeLessThan(0.99);
  });

  describe('says of each doubt where it comes from', () => {
    const sentence = (of: string, other: Partial<ProbeBudgetSetup>) =>
      probeBudget({ ...classB, ...other })
        .components.find(({ name }) => name === of)
        ?.sentence.replace(/; counts .*/, '') ?? null;
    const lag = { timeConstantS: 12, slopeKPerS: 0.01, noisePenalty: 2.5 };
    const leads = { resistanceOhm: 0.5, r0Ohm: 100 };
    const calibration = {
      offsetK: 0.5,
      gain: 1.04,
      offsetVarianceK2: 0,
      gainVariance: 1e-4,
      covarianceK: 0,
    };
    const typeK = { kind: 'thermocouple', type: 'K', toleranceClass: 1 } as const;

    test.each([
      ['noise of a reading', {}, 'Noise of a reading: scatter of single readings'],
      [
        'noise of a reading',
        { lag: { ...lag, noisePenalty: null } },
        'Noise of a reading: scatter of single readings',
      ],
      [
        'noise of a reading',
        { lag },
        'Noise of a reading: scatter of single readings, times 2.5 for the lag correction',
      ],
      ['heat along the stem', { immersionK: 0.2 }, 'Heat along the stem: stated limits'],
      ['smallest step', {}, 'Smallest step: steps of 0.1 °C'],
      [
        'drift since the calibration',
        { driftK: 0.1 },
        'Drift since the calibration: stated limits',
      ],
      [
        'lag, not corrected',
        { lag: { ...lag, noisePenalty: null } },
        'Lag, not corrected: 12.0 s behind',
      ],
      [
        'time constant of the lag correction',
        { lag },
        'Time constant of the lag correction: ± 30 %; round figure, no source',
      ],
      [
        'time constant of the lag correction',
        { lag: { ...lag, timeConstantToleranceS: 2 } },
        'Time constant of the lag correction: stated limits',
      ],
      [
        'resistance of the leads',
        { leads },
        'Resistance of the leads: two wires of together 0.5 Ω read as heat',
      ],
      ['resistance of the leads', { leads, calibration }, null],
      [
        'calibration',
        { calibration },
        'Calibration: doubt of the fixed points and of the readings there',
      ],
      [
        'cold junction',
        { sensor: typeK, coldJunctionToleranceK: 0.5 },
        'Cold junction: limits of its thermometer',
      ],
      ['cold junction', { sensor: typeK }, null],
      ['cold junction', { coldJunctionToleranceK: 0.5 }, null],
    ] as const)('%s with %o', (of, other, words) => {
      expect(sentence(of, other)).toBe(words);
    });

    test('a calibration is in doubt where the probe read, not where it was corrected to', () => {
      // (78.5 − 0.5)/1.04 = 75 °C was read; 1 % of it.
      const { components } = probeBudget({ ...classB, temperatureC: 78.5, calibration });
      expect(components[0]).toMatchObject({
        name: 'calibration',
        standardUncertaintyK: expect.closeTo(0.75, 9),
      });
    });

    test('and of the whole what would help, where something would', () => {
      const exact = { offsetK: 0, gain: 1, offsetVarianceK2: 0, gainVariance: 0, covarianceK: 0 };
      const nothing = { ...classB, calibration: exact, immersionK: 0, resolutionK: 0, noiseK: 0 };
      const whole = (other: Partial<ProbeBudgetSetup>) =>
        probeBudget({ ...nothing, ...other }).sentence.replace(/^The head .*?95 %\)\. ?/, '');
      expect([
        whole({}),
        whole({ resolutionK: 0.5 }),
        whole({ noiseK: 0.2 }),
        whole({ immersionK: 0.2 }),
        whole({ lag: { ...lag, noisePenalty: null } }),
        probeBudget({ ...classB, leads }).sentence.replace(/^The head .*?95 %\)\. ?/, ''),
      ]).toEqual([
        '',
        'The largest part is the smallest step.',
        'The largest part is the noise of a reading: average over a longer window.',
        'The largest part is the heat along the stem: put the bulb deeper into the vapour and lag the joint.',
        'The largest part is the lag, not corrected: wait until the head holds, or switch the lag correction on.',
        'The largest part is the resistance of the leads: use three or four wires, or calibrate with these leads.',
      ]);
    });
  });

  test('missing and negative numbers are refused', () => {
    const refused: readonly ProbeBudgetSetup[] = [
      { ...classB, temperatureC: Number.NaN },
      { ...classB, noiseK: Number.NaN },
      { ...classB, resolutionK: -0.1 },
      { ...classB, immersionK: -1 },
    ];
    for (const wrong of refused) expect(() => probeBudget(wrong)).toThrow(OutOfRangeError);
  });
});
