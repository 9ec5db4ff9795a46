import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { enthalpyOfVaporizationJPerMol } from '../../../shared-core/thermo/enthalpy-of-vaporization.ts';
import { startOf } from '../../../shared-core/twin/course-start.ts';
import { guessPrior, toGuess } from '../../../shared-core/twin/still-guess.ts';

/** Half ethanol and half water at 85 °C [J/mol]. */
const latent = () =>
  (enthalpyOfVaporizationJPerMol('ethanol', 85) + enthalpyOfVaporizationJPerMol('water', 85)) / 2;

const priorOf = (tookS: number | null, eased: boolean | null) =>
  guessPrior(
    { ...defaultRunSettings, charge: { ...defaultRunSettings.charge, volumeMl: 350 } },
    { tookS, eased },
    0.3,
  );

describe('how far a run is along a guess when it begins', () => {
  const guessOf = (vapourMolPerS: number, refluxRatio: number) =>
    toGuess([Math.log(5), Math.log(refluxRatio), 0, Math.log(vapourMolPerS), 9, Math.log(0.02), 0]);
  const with2Mmol = { mean: [], sd: [], heatUpMolPerS: 0.002 };

  test('a minute of the heat-up’s heat: what it drives up beyond the guess’s own comes over whole, known to seven tenths', () => {
    // Twice the vapour, of which a third comes over at a reflux ratio of 2: three times as much more, for 60 s.
    const { courseS, sdS } = startOf(guessOf(0.001, 2), with2Mmol);
    expect(courseS).toBeCloseTo(60 * 1 * 3, 9);
    expect(sdS).toBeCloseTo(Math.hypot(80, 0.7 * 180), 9);
    expect(startOf(guessOf(0.0016, 2), with2Mmol).courseS).toBeCloseTo(60 * 0.25 * 3, 9);
  });

  test('nothing where the guess boils as hard as the heat-up or harder', () => {
    expect(startOf(guessOf(0.002, 2), with2Mmol).courseS).toBeCloseTo(0, 9);
    expect(startOf(guessOf(0.003, 2), with2Mmol)).toEqual({ courseS: 0, sdS: 80 });
  });

  test('nobody knows where the start was not seen, or the heat had been eased before vapour came', () => {
    for (const prior of [priorOf(null, null), priorOf(900, true)]) {
      expect(startOf(guessOf(0.001, 2), prior)).toEqual({ courseS: 0, sdS: 120 });
    }
    const { heatUpMolPerS } = priorOf(900, false);
    expect(heatUpMolPerS).toBeCloseTo(((350 * 4.1 * 72 * 1.3) / 900 - 12) / latent(), 9);
  });
});
