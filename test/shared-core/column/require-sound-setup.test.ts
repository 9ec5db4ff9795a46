import { expect, test } from 'vitest';
import type { BatchSetup } from '../../../shared-core/column/batch-setup.ts';
import { pearFermentSetup } from '../../../shared-core/column/pear-ferment-setup.ts';
import { requireSoundSetup } from '../../../shared-core/column/require-sound-setup.ts';

const pear = pearFermentSetup();
const { charge, rig } = pear;
const withRig = (changes: Partial<BatchSetup['rig']>): BatchSetup => ({
  ...pear,
  rig: { ...rig, ...changes },
});

test('what lies within its range is sound, at either end too, and what is left out is as usual', () => {
  for (const setup of [
    pear,
    { ...pear, charge: { volumeMl: 10, strengthAbv: 0 } },
    { ...pear, charge: { volumeMl: 20_000, strengthAbv: 95, temperatureC: 70 } },
    { ...pear, roomTemperatureC: 5, stepS: 0.02, leastStrengthAbv: 1 },
    { ...pear, roomTemperatureC: 40, stepS: 2, leastStrengthAbv: 95 },
    { ...pear, schedule: [] },
    withRig({ plates: 0, returnedFraction: 1 }),
  ] satisfies BatchSetup[])
    expect(() => requireSoundSetup(setup)).not.toThrow();
});

test.each<[BatchSetup, RegExp]>([
  [{ ...pear, charge: { ...charge, volumeMl: 9 } }, /^charge volume is 9 mL; .* 10 and 20000/],
  [
    { ...pear, charge: { ...charge, strengthAbv: 96 } },
    /^charge strength is 96 % vol; .* 0 and 95/,
  ],
  [
    { ...pear, charge: { ...charge, temperatureC: 71 } },
    /^charge temperature is 71 °C; .* 0 and 70/,
  ],
  [{ ...pear, roomTemperatureC: 4 }, /^room temperature is 4 °C; .* 5 and 40/],
  [{ ...pear, stepS: 2.1 }, /^step is 2\.1 s; .* 0\.02 and 2/],
  [{ ...pear, leastStrengthAbv: 0 }, /^least strength is 0 % vol; .* 1 and 95/],
  [withRig({ plates: 41 }), /^plates is 41; .* 0 and 40/],
  [withRig({ returnedFraction: 1.1 }), /^returned fraction is 1\.1; .* 0 and 1/],
  [
    withRig({ flask: { ...rig.flask, heatCapacityJPerK: 0 } }),
    /^heat capacity of the flask is 0 J\/K; .* 1 and 5000/,
  ],
  [
    withRig({ column: { ...rig.column, lossWPerK: 6 } }),
    /^heat loss of the column is 6 W\/K; .* 0 and 5/,
  ],
  [withRig({ head: { ...rig.head, lossWPerK: -1 } }), /^heat loss of the head is -1 W\/K/],
  [
    withRig({ column: { ...rig.column, holdUpMl: 0 } }),
    /^hold-up of the column is 0 mL; .* 0\.1 and 500/,
  ],
  [
    withRig({ column: { ...rig.column, drainS: 121 } }),
    /^drain time of the column is 121 s; .* 1 and 120/,
  ],
  [withRig({ head: { ...rig.head, filmWPerK: 0 } }), /^film of the head is 0 W\/K; .* 0\.1 and 50/],
  [
    withRig({ head: { ...rig.head, vapourSpaceMl: 0 } }),
    /^vapour space of the head is 0 mL; .* 1 and 1000/,
  ],
  [
    withRig({ head: { ...rig.head, recedeS: 0 } }),
    /^receding time of the head is 0 s; .* 1 and 120/,
  ],
  [
    withRig({ condenser: { ...rig.condenser, distillateTemperatureC: 61 } }),
    /^distillate temperature is 61 °C; .* 0 and 60/,
  ],
  [
    withRig({ condenser: { ...rig.condenser, drainS: 0 } }),
    /^drain time of the condenser is 0 s; .* 1 and 120/,
  ],
  [withRig({ bulb: { ...rig.bulb, wetT90S: 0 } }), /^lag of the wet bulb is 0 s; .* 0\.1 and 300/],
  [
    withRig({ bulb: { ...rig.bulb, dryT90S: 1001 } }),
    /^lag of the dry bulb is 1001 s; .* 0\.1 and 1000/,
  ],
  [withRig({ heater: { ...rig.heater, powerW: 0 } }), /^heater power is 0 W; .* 1 and 5000/],
  [
    withRig({ heater: { ...rig.heater, timeConstantS: 0 } }),
    /^time constant of the heater is 0 s; .* 0\.1 and 600/,
  ],
  [
    {
      ...pear,
      charge: {
        ...charge,
        lightVolatiles: { acetaldehydeMgPerL: 1, methanolMgPerL: 5001, ethylAcetateMgPerL: 1 },
      },
    },
    /^light volatile in the charge is 5001 mg\/L; .* 0 and 5000/,
  ],
  [
    {
      ...pear,
      schedule: [
        { timeS: 5, kind: 'heat-on' },
        { timeS: 4, kind: 'heat-off' },
      ],
    },
    /^time of an event is 4 s; .* 5 and 10000000/,
  ],
  [{ ...pear, schedule: [{ timeS: 1e7, kind: 'heat-on' }] }, /^time of an event is 10000000 s/],
  [
    {
      ...pear,
      pressureKPa: [
        { timeS: 10, pressureKPa: 100 },
        { timeS: 9, pressureKPa: 100 },
      ],
    },
    /^time of a pressure is 9 s; .* 10 and 10000000/,
  ],
])('setup %# outside a range is refused by name, with unit and bounds', (setup, message) => {
  expect(() => requireSoundSetup(setup)).toThrow(message);
});

test('events and pressures of one moment are in order', () => {
  const schedule = [
    { timeS: 5, kind: 'heat-on' },
    { timeS: 5, kind: 'receiver-changed' },
  ] as const;
  expect(() => requireSoundSetup({ ...pear, schedule })).not.toThrow();
});
