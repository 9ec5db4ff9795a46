import { expect, test } from 'vitest';
import { azeotrope, dewPoint } from '#shared-core';
import { alcoholByVolume } from '../../../../shared-core/alcoholometry/alcohol-by-volume.ts';
import { massFractionFromMoleFraction } from '../../../../shared-core/alcoholometry/amount-fractions.ts';
import { createVapourScale } from '../../../../shared-core/monitor/situation/vapour-scale.ts';

const pressureKPa = 98.6;

test('a head temperature means the strength of the vapour whose dew point it is', () => {
  const scale = createVapourScale(pressureKPa, 80);
  for (const ethanolMoleFraction of [0.2, 0.5, 0.7]) {
    const { temperatureC } = dewPoint({ ethanolMoleFraction, pressureKPa });
    const ethanolMassFraction = massFractionFromMoleFraction(ethanolMoleFraction);
    expect(scale.strengthAbv(temperatureC)).toBeCloseTo(
      alcoholByVolume({ ethanolMassFraction }),
      1,
    );
  }
  expect(scale.strengthAbv(scale.limitC)).toBeCloseTo(80, 1);
  expect(scale.strengthAbv(scale.waterC)).toBeCloseTo(0, 1);
});

test('below the azeotrope it is that of the azeotrope, above boiling water none, however far', () => {
  const scale = createVapourScale(pressureKPa, 80);
  const strongest = alcoholByVolume({
    ethanolMassFraction: massFractionFromMoleFraction(azeotrope(pressureKPa).ethanolMoleFraction),
  });
  for (const belowC of [scale.azeotropeC - 1, -40, -500]) {
    expect(scale.strengthAbv(belowC)).toBeCloseTo(strongest, 1);
  }
  for (const aboveC of [scale.waterC + 1, 140, 900]) {
    expect(scale.strengthAbv(aboveC)).toBeCloseTo(0, 3);
  }
});

test('the model’s doubt is the same beyond a hundred kelvins as there, and grows from the azeotrope on', () => {
  const scale = createVapourScale(pressureKPa, 80);
  const at = (aboveK: number) => scale.modelSdK(scale.azeotropeC + aboveK);
  expect([at(500), at(-500)]).toEqual([at(100), at(-100)]);
  expect(at(0)).toBeLessThan(at(10));
  expect(at(-20)).toBeLessThanOrEqual(at(10));
});
