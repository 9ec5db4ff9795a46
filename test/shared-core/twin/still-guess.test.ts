import { describe, expect, test } from 'vitest';
import { createRandom, defaultRunSettings, type RunSettings } from '#shared-core';
import { enthalpyOfVaporizationJPerMol } from '../../../shared-core/thermo/enthalpy-of-vaporization.ts';
import {
  drawWalk,
  guessPrior,
  logPrior,
  statedHeatW,
  toGuess,
} from '../../../shared-core/twin/still-guess.ts';

const vapourAt = 3;
const priorOf = (tookS: number | null, volumeMl = 350, eased: boolean | null = null) =>
  guessPrior(
    { ...defaultRunSettings, charge: { ...defaultRunSettings.charge, volumeMl } },
    { tookS, eased },
    0.3,
  );
const vapour = ({ mean }: ReturnType<typeof guessPrior>): number => Math.exp(mean[vapourAt] ?? 0);

describe('how much vapour is believed to rise before the head is seen', () => {
  test.each([0, 41, 98, 239])(
    'a first mark only %s s before the vapour came is no start of heating: it tells no more than none',
    (tookS) => {
      for (const eased of [null, false, true]) {
        expect(priorOf(tookS, 860, eased)).toEqual(priorOf(null, 860, eased));
      }
    },
  );

  test('a start that was seen makes it surer, and a slower one means less vapour', () => {
    expect(priorOf(900).sd[vapourAt]).toBeLessThan(priorOf(null).sd[vapourAt] ?? 0);
    expect(vapour(priorOf(1800))).toBeLessThan(vapour(priorOf(900)));
  });

  test('where no start was seen, a larger charge stands over a stronger heat', () => {
    expect(vapour(priorOf(null, 900)) / vapour(priorOf(null, 300))).toBeGreaterThan(2.5);
  });
});

/** Half ethanol and half water at 85 °C [J/mol]. */
const latent = () =>
  (enthalpyOfVaporizationJPerMol('ethanol', 85) + enthalpyOfVaporizationJPerMol('water', 85)) / 2;

describe('the prior by hand', () => {
  const of = (rig: Partial<RunSettings['rig']>, tookS: number | null, eased: boolean | null) =>
    guessPrior(
      { ...defaultRunSettings, rig: { ...defaultRunSettings.rig, ...rig } },
      { tookS, eased },
      0.3,
    );

  test('has the heat that brought 350 mL to the boil, 4.1 J/(mL K) over 72 K and three tenths for glass and losses', () => {
    const toBoilW = (tookS: number) => (350 * 4.1 * 72 * 1.3) / tookS;
    const molPerS = (tookS: number, easing: number) =>
      ((toBoilW(tookS) - 12) / latent()) * Math.exp(easing);
    const { mean, sd } = of({}, 900, null);
    expect(Math.exp(mean[3]!)).toBeCloseTo(molPerS(900, -0.4), 9);
    expect(sd[3]).toBe(0.34);
    expect(Math.exp(of({}, 900, true).mean[3]!)).toBeCloseTo(molPerS(900, -0.38), 9);
    expect(Math.exp(of({}, 900, false).mean[3]!)).toBeCloseTo(molPerS(900, -0.25), 9);
    expect([of({}, 900, true).sd[3], of({}, 900, false).sd[3]]).toEqual([0.3, 0.38]);
    // A start that nobody saw: twenty minutes. So slow a start that a warm flask loses all: 15 W all the same.
    expect(Math.exp(of({}, null, null).mean[3]!)).toBeCloseTo(molPerS(1200, -0.4), 9);
    expect(Math.exp(of({}, 9000, null).mean[3]!)).toBeCloseTo((15 / latent()) * Math.exp(-0.4), 9);
    expect(of({}, 240, null)).not.toEqual(of({}, null, null));
  });

  test('has a stated heat for what it is, 6 % less and known to 8 %, and tells a person who knew the vapour that heat', () => {
    const { mean, sd } = of({ heatW: 120 }, 900, true);
    expect(sd[3]).toBe(0.08);
    const vapourMolPerS = Math.exp(mean[3]!);
    expect(vapourMolPerS).toBeCloseTo(((120 - 12) / latent()) * Math.exp(-0.06), 9);
    expect(statedHeatW(vapourMolPerS)).toBeCloseTo(120, 9);
  });

  test('has the plates and the charge as they were stated, each with its doubt', () => {
    const known = of({ plates: 7 }, null, null);
    expect([Math.exp(known.mean[0]!), Math.exp(known.mean[1]!)]).toEqual([
      expect.closeTo(7, 9),
      expect.closeTo(2.2, 9),
    ]);
    expect(known.sd).toEqual([0.35, 0.45, 1.3, 0.6, 0.5, 0.8, 0.3]);
    expect([known.mean[4], known.mean[6]]).toEqual([9, 0]);
    expect(Math.exp(known.mean[5]!)).toBeCloseTo(0.021 * (350 / 375) ** 0.8, 9);
    const unknown = of({}, null, null);
    expect([Math.exp(unknown.mean[0]!), unknown.sd[0]]).toEqual([expect.closeTo(4.8, 9), 0.5]);
    const bare = of({ plates: 0 }, null, null);
    expect([Math.exp(bare.mean[0]!), Math.exp(bare.mean[1]!)]).toEqual([
      expect.closeTo(0.2, 9),
      expect.closeTo(0.3, 9),
    ]);
  });

  test('never holds a strength for surer than 0.2 % vol', () => {
    const charge = { ...defaultRunSettings.charge, standardUncertaintyAbv: 0.01 };
    const settings = { ...defaultRunSettings, charge };
    expect(guessPrior(settings, { tookS: null, eased: null }, 0.3).sd[4]).toBe(0.2);
  });
});

describe('a guess on its walking scales', () => {
  test('lands in its physical range, wherever the walk has gone', () => {
    const { plates, ...rest } = toGuess([
      Math.log(5),
      Math.log(3),
      0,
      Math.log(0.001),
      9,
      Math.log(0.02),
      -0.4,
    ]);
    expect(plates).toBeCloseTo(5, 9);
    expect(rest).toEqual({
      refluxRatio: expect.closeTo(3, 9),
      lossShare: 0.5,
      vapourMolPerS: expect.closeTo(0.001, 12),
      strengthAbv: 9,
      holdUpMol: expect.closeTo(0.02, 12),
      biasK: -0.4,
    });
    const far = toGuess([9, 0, 3, 0, 99, 0, 0]);
    expect([far.plates, far.strengthAbv, far.lossShare]).toEqual([
      11.9,
      60,
      expect.closeTo(1 / (1 + Math.exp(-3)), 12),
    ]);
    expect(toGuess([0, 0, 0, 0, -4, 0, 0]).strengthAbv).toBe(0.5);
  });

  test('is as likely before the head is seen as the normal distributions say, and drawn from them', () => {
    const prior = { mean: [1, 2, 3, 4, 5, 6, 7], sd: [1, 1, 2, 1, 1, 1, 1], heatUpMolPerS: null };
    expect(logPrior(prior, prior.mean)).toBe(0);
    expect(logPrior(prior, [1, 2, 5, 4, 5, 6, 4])).toBeCloseTo(-(1 + 9) / 2, 12);
    const random = createRandom('walks');
    const drawn = Array.from({ length: 4000 }, () => drawWalk(prior, random)[2]!);
    const mean = drawn.reduce((sum, value) => sum + value, 0) / 4000;
    const variance = drawn.reduce((sum, value) => sum + (value - 3) ** 2, 0) / 4000;
    expect(Math.abs(mean - 3)).toBeLessThan(0.16);
    expect(Math.abs(variance / 4 - 1)).toBeLessThan(0.12);
  });
});
