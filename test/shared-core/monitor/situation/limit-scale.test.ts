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

test('a channel fills in what was only guessed at, and never takes the place of what a person read', () => {
  const { pressure } = defaultRunSettings;
  const stated = (source: 'barometer' | 'altitude' | 'channel' | 'assumed', heardKPa: number) => {
    const standardUncertaintyKPa = source === 'assumed' ? 6 : 1.2;
    const scale = createLimitScale({
      ...defaultRunSettings,
      pressure: { ...pressure, pressureKPa: 95, standardUncertaintyKPa, source },
    });
    scale.hearPressure(heardKPa);
    return scale.scale().pressureKPa;
  };
  expect([
    stated('assumed', 75),
    stated('assumed', 108.5),
    // A sensor that has reached its end shows this, whatever the air does.
    stated('assumed', 60),
    stated('assumed', 110),
    stated('altitude', 98.5),
    stated('altitude', 98.7),
    stated('barometer', 96),
    stated('channel', 96),
  ]).toEqual([75, 108.5, 95, 95, 98.5, 95, 95, 95]);
});

test('what a person reads in the run stands against a channel heard before and after', () => {
  const limitScale = createLimitScale(defaultRunSettings);
  limitScale.hearPressure(70);
  limitScale.setPressure(94.2);
  limitScale.hearPressure(108);
  expect(limitScale.scale().pressureKPa).toBe(94.2);
});

test('the ends of what air pressures can be belong to it', () => {
  for (const pressureKPa of [60, 110]) {
    const limitScale = createLimitScale(defaultRunSettings);
    limitScale.setPressure(pressureKPa);
    expect(limitScale.scale().pressureKPa).toBe(pressureKPa);
  }
});

test('a pressure that differs by less than any probe shows is kept, and nothing is reckoned anew', () => {
  const limitScale = createLimitScale(defaultRunSettings);
  const { pressureKPa } = defaultRunSettings.pressure;
  const before = limitScale.scale();
  limitScale.setPressure(pressureKPa + 0.019);
  expect(limitScale.scale()).toBe(before);
  expect(limitScale.settings().pressure.pressureKPa).toBe(pressureKPa + 0.019);
  limitScale.setPressure(pressureKPa - 0.021);
  expect(limitScale.scale().pressureKPa).toBe(pressureKPa - 0.021);
});

test('a limit that follows the forecast is taken in half per cents, between 10 and 95 % vol, at the pressure known by then', () => {
  const limitScale = createLimitScale(defaultRunSettings);
  limitScale.setPressure(94.2);
  const limits = [82.3, 82.2, 3, 99].map((wantedAbv) => {
    limitScale.setLimit(wantedAbv);
    return limitScale.limitAbv();
  });
  expect(limits).toEqual([82.5, 82, 10, 95]);
  expect(limitScale.scale().limitC).toBeCloseTo(
    limitTemperatureC({ leastStrengthAbv: 95, pressureKPa: 94.2 }),
    6,
  );
  const before = limitScale.scale();
  limitScale.setLimit(95.1);
  expect(limitScale.scale()).toBe(before);
});
