import { test } from 'vitest';
import {
  azeotrope,
  azeotropeSlopeKPerKPa,
  bubblePoint,
  dewPoint,
  headVapour,
  headVapourTable,
  saturationPressureKPa,
} from '#shared-core';
import { bubblePressure } from '../../../shared-core/equilibrium/bubble-pressure.ts';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { equilibriumModelUncertaintyK } from '../../../shared-core/equilibrium/model-uncertainty.ts';
import { saturationTemperatureC } from '../../../shared-core/equilibrium/saturation-temperature.ts';
import { expectRange } from '../../support/expect-range.ts';

const mixture = { ethanolMoleFraction: 0.3, pressureKPa: 100 };
const liquid = { ethanolMoleFraction: 0.3, temperatureC: 80 };
const reading = {
  temperatureC: 80,
  pressureKPa: 100,
  temperatureUncertaintyK: 0.1,
  pressureUncertaintyKPa: 0.1,
};
const place = { temperatureAboveAzeotropeK: 1, pressureKPa: 100 };

test.each([
  ['pressure', 'kPa', 20, 200, azeotrope],
  ['pressure', 'kPa', 21, 199, azeotropeSlopeKPerKPa],
  ['pressure', 'kPa', 20, 200, headVapourTable],
  ['pressure', 'kPa', 20, 200, (pressureKPa: number) => headVapour({ ...reading, pressureKPa })],
  [
    'pressure',
    'kPa',
    20,
    200,
    (pressureKPa: number) => limitTemperatureC({ leastStrengthAbv: 80, pressureKPa }),
  ],
  [
    'pressure',
    'kPa',
    20,
    200,
    (pressureKPa: number) => equilibriumModelUncertaintyK({ ...place, pressureKPa }),
  ],
  ['pressure', 'kPa', 2, 200, (pressureKPa: number) => bubblePoint({ ...mixture, pressureKPa })],
  ['pressure', 'kPa', 2, 200, (pressureKPa: number) => dewPoint({ ...mixture, pressureKPa })],
  [
    'pressure',
    'kPa',
    2,
    200,
    (pressureKPa: number) => saturationTemperatureC('water', pressureKPa),
  ],
  [
    'ethanol mole fraction',
    'mol/mol',
    0,
    1,
    (x: number) => bubblePoint({ ...mixture, ethanolMoleFraction: x }),
  ],
  [
    'ethanol mole fraction',
    'mol/mol',
    0,
    1,
    (y: number) => dewPoint({ ...mixture, ethanolMoleFraction: y }),
  ],
  [
    'ethanol mole fraction',
    'mol/mol',
    0,
    1,
    (x: number) => bubblePressure({ ...liquid, ethanolMoleFraction: x }),
  ],
  [
    'temperature',
    '°C',
    0,
    130,
    (temperatureC: number) => bubblePressure({ ...liquid, temperatureC }),
  ],
  [
    'temperature of water',
    '°C',
    0,
    373.9,
    (temperatureC: number) => saturationPressureKPa('water', temperatureC),
  ],
  [
    'temperature of ethanol',
    '°C',
    0,
    240.7,
    (temperatureC: number) => saturationPressureKPa('ethanol', temperatureC),
  ],
  [
    'least strength',
    '% vol',
    0,
    96,
    (leastStrengthAbv: number) => limitTemperatureC({ leastStrengthAbv, pressureKPa: 100 }),
  ],
  [
    'head temperature',
    '°C',
    -50,
    150,
    (temperatureC: number) => headVapour({ ...reading, temperatureC }),
  ],
  [
    'head temperature',
    '°C',
    -50,
    150,
    (temperatureC: number) => headVapourTable(100).ethanolMoleFractionAt(temperatureC),
  ],
  [
    'temperature uncertainty',
    'K',
    0,
    20,
    (temperatureUncertaintyK: number) => headVapour({ ...reading, temperatureUncertaintyK }),
  ],
  [
    'pressure uncertainty',
    'kPa',
    0,
    20,
    (pressureUncertaintyKPa: number) => headVapour({ ...reading, pressureUncertaintyKPa }),
  ],
  [
    'temperature above the azeotrope',
    'K',
    -200,
    200,
    (aboveK: number) =>
      equilibriumModelUncertaintyK({ ...place, temperatureAboveAzeotropeK: aboveK }),
  ],
] as const)(
  '%s [%s] is answered for from %d to %d, and refused by name beyond (%o)',
  (quantity, unit, low, high, act) => {
    expectRange(act, { quantity, low, high, unit });
  },
);
