import { expect, test } from 'vitest';
import { applyCalibration } from '../../../shared-core/probe/calibration.ts';
import { lagTimeConstantS } from '../../../shared-core/probe/lag.ts';
import {
  platinumResistanceOhm,
  platinumSlopeOhmPerK,
  platinumTemperatureC,
} from '../../../shared-core/probe/platinum.ts';
import { probeBudget } from '../../../shared-core/probe/probe-budget.ts';
import { steamPoint } from '../../../shared-core/probe/reference-point.ts';
import { type SensorKind, sensorToleranceK } from '../../../shared-core/probe/sensor-tolerance.ts';
import {
  thermocoupleEmfMv,
  thermocoupleTemperatureC,
} from '../../../shared-core/probe/thermocouple.ts';
import { expectRange } from '../../support/expect-range.ts';

const known = {
  offsetK: 0,
  gain: 1,
  offsetVarianceK2: 0,
  gainVariance: 0,
  covarianceK: 0,
};
const stated = { kind: 'stated', toleranceK: 0.5 } as const;
const air = { kind: 'station', pressureKPa: 100, standardUncertaintyKPa: 0.1 } as const;
const tolerance = (sensor: SensorKind) => (temperatureC: number) =>
  sensorToleranceK(sensor, temperatureC);
const platinum = (toleranceClass: 'AA' | 'A' | 'B' | 'C') =>
  tolerance({ kind: 'platinum', toleranceClass });

// Limits of IEC 60751 (platinum), IEC 60584 (thermocouples) and of the data sheet of a digital thermometer.
test.each([
  ['temperature', '°C', -200, 850, (temperatureC: number) => platinumResistanceOhm(temperatureC)],
  ['temperature', '°C', -200, 850, (temperatureC: number) => platinumSlopeOhmPerK(temperatureC)],
  ['resistance at 0 °C', 'Ω', 1, 100_000, (r0: number) => platinumResistanceOhm(20, r0)],
  ['resistance at 0 °C', 'Ω', 1, 100_000, (r0: number) => platinumSlopeOhmPerK(20, r0)],
  ['resistance at 0 °C', 'Ω', 1, 100_000, (r0: number) => platinumTemperatureC(1.1 * r0, r0)],
  [
    'temperature',
    '°C',
    -100,
    300,
    (temperatureC: number) =>
      probeBudget({ temperatureC, sensor: stated, resolutionK: 0.1, noiseK: 0.1 }),
  ],
  ['reading', '°C', -100, 300, (readingC: number) => applyCalibration(known, readingC)],
  ['response time t90', 's', 0, 600, lagTimeConstantS],
  ['air pressure', 'kPa', 50, 115, (pressureKPa: number) => steamPoint({ ...air, pressureKPa })],
  [
    'uncertainty of the air pressure',
    'kPa',
    0,
    10,
    (standardUncertaintyKPa: number) => steamPoint({ ...air, standardUncertaintyKPa }),
  ],
  [
    'temperature',
    '°C',
    -40,
    350,
    tolerance({ kind: 'thermocouple', type: 'K', toleranceClass: 1 }),
  ],
  ['temperature', '°C', -55, 125, tolerance({ kind: 'one-wire' })],
  ['temperature', '°C', -273.15, 2000, tolerance(stated)],
  [
    'stated tolerance',
    'K',
    Number.MIN_VALUE,
    100,
    (toleranceK: number) => sensorToleranceK({ ...stated, toleranceK }, 20),
  ],
] as const)(
  '%s [%s] is answered for from %d to %d, and refused by name beyond (%o)',
  (quantity, unit, low, high, act) => {
    expectRange(act, { quantity, low, high, unit });
  },
);

// IEC 60751:2008, table 3, wire-wound or film, from memory.
test.each([
  ['AA', platinum('AA')],
  ['A', platinum('A')],
  ['B', platinum('B')],
  ['C', platinum('C')],
])(
  'a platinum sensor of class %s promises nothing at a temperature that is no number',
  (_, act) => {
    expect(() => act(Number.NaN)).toThrow(
      expect.objectContaining({
        detail: expect.objectContaining({ quantity: 'temperature', unit: '°C' }),
      }),
    );
  },
);

test('beyond the ends of its table a sensor tells no temperature, and says of what', () => {
  // IEC 60751: 18.52 Ω at −200 °C and 390.48 Ω at 850 °C.
  for (const ohm of [18.51, 390.49]) {
    expect(() => platinumTemperatureC(ohm, 100)).toThrow(
      expect.objectContaining({
        detail: {
          quantity: 'resistance',
          value: ohm,
          low: expect.closeTo(18.52, 2),
          high: expect.closeTo(390.481, 2),
          unit: 'Ω',
        },
      }),
    );
  }
  expect([platinumTemperatureC(18.5201, 100), platinumTemperatureC(390.48, 100)]).toEqual([
    expect.closeTo(-200, 1),
    expect.closeTo(850, 1),
  ]);
  for (const type of ['K', 'T'] as const) {
    expect(() => thermocoupleTemperatureC(type, 100)).toThrow(
      expect.objectContaining({
        detail: expect.objectContaining({ quantity: 'thermocouple voltage', unit: 'mV' }),
      }),
    );
    expect(() => thermocoupleEmfMv(type, 5000)).toThrow(
      expect.objectContaining({
        detail: expect.objectContaining({ quantity: 'temperature', unit: '°C' }),
      }),
    );
  }
});
