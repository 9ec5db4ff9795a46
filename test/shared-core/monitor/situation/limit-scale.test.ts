import { expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { limitTemperatureC } from '../../../../shared-core/equilibrium/limit-temperature.ts';
import { createLimitScale } from '../../../../shared-core/monitor/situation/limit-scale.ts';

test('a barometer that is read in the run takes the place of what was assumed', () => {
  const limitScale = createLimitScale(defaultRunSettings);
  expect(limitScale.settings().pressure.source).toBe('assumed');
  limitScale.setPressure(94.2);
  expect(limitScale.settings().pressure).toMatchObject({
    pressureKPa: 94.2,
    standardUncertaintyKPa: 0.3,
    source: 'barometer',
  });
  expect(limitScale.scale().limitC).toBeCloseTo(
    limitTemperatureC({ leastStrengthAbv: 80, pressureKPa: 94.2 }),
    6,
  );
});

test('a reading that no air pressure can have is left aside', () => {
  const limitScale = createLimitScale(defaultRunSettings);
  for (const pressureKPa of [0, 59, 111, 1013]) limitScale.setPressure(pressureKPa);
  expect(limitScale.settings().pressure).toEqual(defaultRunSettings.pressure);
});
