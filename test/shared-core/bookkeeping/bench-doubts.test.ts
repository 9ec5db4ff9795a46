import { describe, expect, test } from 'vitest';
import {
  benchAlcoholometer,
  benchChromatogram,
  benchHydrometer,
  benchRefractometer,
} from '../../../shared-core/bookkeeping/bench-doubts.ts';
import { benchUncertainty } from '../../../shared-core/bookkeeping/bench-uncertainty.ts';
import { instrumentShare } from '../../../shared-core/bookkeeping/instrument-share.ts';

// Common practice, no source: see the comments beside the numbers.
test.each([
  ['liquid-volume', 'volumeUncertaintyMl', 20, Math.hypot(0.5, 0.005 * 20)],
  ['liquid-volume', 'volumeUncertaintyMl', null, 0.5],
  ['sample-weighed', 'volumeUncertaintyMl', 50, 0.1],
  ['liquid-mass', 'massUncertaintyG', 300, 0.05],
  ['liquid-strength', 'strengthUncertaintyAbv', 40, 0.5],
  ['liquid-label', 'strengthUncertaintyAbv', 40, 0.3],
  ['liquid-chromatogram', 'strengthUncertaintyAbv', 40, 0.8],
  ['liquid-chromatogram', 'strengthUncertaintyAbv', 10, 0.3],
  ['liquid-chromatogram', 'strengthUncertaintyAbv', null, 0.3],
  ['liquid-density', 'densityUncertaintyKgPerM3', 950, 1],
  ['liquid-strength', 'temperatureUncertaintyK', 25, 0.5],
  ['liquid-strength', 'temperatureUncertaintyK', null, 2],
  ['sample-weighed', 'weighingUncertaintyG', 40, 0.02],
  ['liquid-refractometer', 'uncertaintyPercent', 50, 1],
  ['liquid-refractometer', 'uncertaintyPercent', 50.1, 2],
  ['liquid-refractometer', 'uncertaintyPercent', null, 1],
] as const)('a %s without a %s, read as %s, is in doubt by %d', (type, field, value, doubt) => {
  expect(benchUncertainty({ type, field, value })).toBeCloseTo(doubt, 12);
});

describe('a reading at the bench', () => {
  test('is in doubt by 0.6 of its uncertainty for itself and by 0.8 for the instrument, which has a name', () => {
    const doubts = (strength: ReturnType<typeof benchAlcoholometer>) => [
      'instrument' in strength ? strength.instrument : null,
      'indicatedAbv' in strength
        ? strength.indicatedAbv
        : 'indicatedDensityKgPerM3' in strength
          ? strength.indicatedDensityKgPerM3
          : 'strengthAbv' in strength && strength.strengthAbv,
    ];
    expect([
      doubts(benchAlcoholometer(40, 20, { abv: 1 })),
      doubts(benchHydrometer(950, 20, { kgPerM3: 2 })),
      doubts(benchRefractometer(40, 'volume', 1)),
      doubts(benchChromatogram(40, 1)),
    ]).toEqual([
      [
        { name: 'Alcoholometer', standardUncertainty: 0.8 },
        { value: 40, standardUncertainty: 0.6 },
      ],
      [
        { name: 'Hydrometer', standardUncertainty: 1.6 },
        { value: 950, standardUncertainty: 1.2 },
      ],
      [
        { name: 'Refractometer', standardUncertainty: 0.8 },
        { value: 40, standardUncertainty: 0.6 },
      ],
      [
        { name: 'Gas chromatograph', standardUncertainty: 0.8 },
        { value: 40, standardUncertainty: 0.6 },
      ],
    ]);
  });

  test('of a refractometer by mass is carried to per cent by volume along the slope there, at both ends too', () => {
    // General formula of OIML R 22: 0, 1, 39, 40, 99 and 100 % are 0, 1.262, 46.31, 47.39, 99.39 and 100 % vol.
    const found = (percent: number) => {
      const read = benchRefractometer(percent, 'mass', 1);
      return 'strengthAbv' in read ? read.strengthAbv : null;
    };
    const near = (value: number) => expect.closeTo(value, 2);
    expect([found(0), found(0.9), found(1), found(40), found(100)]).toEqual([
      { value: 0, standardUncertainty: near(0.6 * 1.26) },
      { value: near(1.136), standardUncertainty: near(0.6 * 1.26) },
      { value: near(1.262), standardUncertainty: near(0.6 * 1.26) },
      { value: near(47.395), standardUncertainty: near(0.6 * 1.085) },
      { value: near(100), standardUncertainty: near(0.6 * 0.61) },
    ]);
  });

  test('shares what its instrument does to the mass fraction, whichever instrument it was', () => {
    // General formula of OIML R 22: 39.2 % vol is 32.59 % and 40.8 % vol 34.01 % by mass.
    const share = { massFraction: expect.closeTo((0.3401 - 0.3259) / 2, 3) };
    expect(
      [
        benchAlcoholometer(40, 20, { abv: 1 }),
        benchRefractometer(40, 'volume', 1),
        benchChromatogram(40, 1),
      ].map(instrumentShare),
    ).toEqual([
      { name: 'Alcoholometer', ...share },
      { name: 'Refractometer', ...share },
      { name: 'Gas chromatograph', ...share },
    ]);
  });
});
