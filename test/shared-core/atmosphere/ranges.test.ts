import { test } from 'vitest';
import { judgeBarometerEntry, pressureAtAltitudeKPa, stationPressure } from '#shared-core';
import { stationPressureFromSeaLevelKPa } from '../../../shared-core/atmosphere/sea-level-reduction.ts';
import { expectRange } from '../../support/expect-range.ts';

const report = { seaLevelPressureKPa: 101, altitudeM: 500 };
const station = 'station pressure';

test.each([
  ['altitude', 'm', -500, 11_000, pressureAtAltitudeKPa],
  [
    'altitude',
    'm',
    -430,
    5000,
    (altitudeM: number) => judgeBarometerEntry({ pressureKPa: 100, altitudeM }),
  ],
  [
    'altitude',
    'm',
    -430,
    5000,
    (altitudeM: number) => stationPressure({ kind: 'altitude', altitudeM }),
  ],
  [
    'altitude',
    'm',
    -430,
    5000,
    (altitudeM: number) => stationPressureFromSeaLevelKPa({ ...report, altitudeM }),
  ],
  [
    'sea-level pressure',
    'kPa',
    85,
    110,
    (seaLevelPressureKPa: number) =>
      stationPressureFromSeaLevelKPa({ ...report, seaLevelPressureKPa }),
  ],
  [
    'air temperature',
    '°C',
    -50,
    50,
    (temperatureC: number) => stationPressureFromSeaLevelKPa({ ...report, temperatureC }),
  ],
  [
    station,
    'kPa',
    50,
    115,
    (kPa: number) => stationPressure({ kind: 'barometer', stationPressureKPa: kPa }),
  ],
  [
    station,
    'kPa',
    50,
    115,
    (kPa: number) => stationPressure({ kind: 'channel', stationPressureKPa: kPa }),
  ],
] as const)(
  '%s [%s] is answered for from %d to %d, and refused by name beyond (%o)',
  (quantity, unit, low, high, act) => {
    expectRange(act, { quantity, low, high, unit });
  },
);
