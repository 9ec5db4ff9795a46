import { describe, expect, test } from 'vitest';
import { airPressureCourse } from '../../../shared-core/column/air-pressure-course.ts';
import {
  heatContent,
  liquidHeatJ,
  liquidHeatJPerMol,
  vapourHeatJPerMol,
} from '../../../shared-core/column/heat-content.ts';
import { stepHeater } from '../../../shared-core/column/heater.ts';
import { lightVolatiles, volatilityRatio } from '../../../shared-core/column/light-volatile.ts';
import { strengthAbv, volumeMl } from '../../../shared-core/column/liquid-table.ts';
import { createSpells } from '../../../shared-core/column/spells.ts';
import { calmSurge, observeBoilUp, potReleaseMol } from '../../../shared-core/column/surge.ts';
import { lookUpBoiling, lookUpDewTemperatureC } from '../../../shared-core/column/vapour-lookup.ts';
import { bubblePoint } from '../../../shared-core/equilibrium/bubble-point.ts';
import { dewPoint } from '../../../shared-core/equilibrium/dew-point.ts';

const newBoiling = () => ({ temperatureC: 0, temperaturePerX: 0, y: 0, yPerX: 0 });

describe('the air pressure', () => {
  const course = airPressureCourse([
    { timeS: 100, pressureKPa: 100 },
    { timeS: 200, pressureKPa: 102 },
    { timeS: 300, pressureKPa: 101 },
  ]);
  const at = (timeS: number) => {
    course.follow(timeS);
    return course.table.pressureKPa;
  };

  test('goes in straight lines from moment to moment, as before the first and after the last, every four seconds', () => {
    expect(course.table.pressureKPa).toBe(100);
    expect([50, 150, 153.9, 154, 200, 250, 300, 1000].map(at)).toEqual([
      100,
      101,
      101,
      expect.closeTo(101.08, 9),
      102,
      101.5,
      101,
      101,
    ]);
  });

  test('that drifts over 10 kPa boils within 7 mK as one that stands there, over 1 kPa within 0.1 mK', () => {
    const { table } = airPressureCourse(100);
    const offK = (rangeKPa: number, x: number) => {
      const drifting = airPressureCourse([
        { timeS: 0, pressureKPa: 100 - rangeKPa / 2 },
        { timeS: 100, pressureKPa: 100 + rangeKPa / 2 },
      ]);
      drifting.follow(50);
      const [drifts, stands] = [newBoiling(), newBoiling()];
      lookUpBoiling(drifting.table, x, drifts);
      lookUpBoiling(table, x, stands);
      expect(Math.abs(drifts.y - stands.y)).toBeLessThan(1e-4);
      const dewC = lookUpDewTemperatureC(table, x);
      return Math.max(
        Math.abs(drifts.temperatureC - stands.temperatureC),
        Math.abs(lookUpDewTemperatureC(drifting.table, x) - dewC),
      );
    };
    // Bent by 2 (dT/d ln p)²/T' with some 28.6 K and 330 K: an eighth of it times (ln 105/95)² is 6 mK.
    for (const x of [0.02, 0.1, 0.4, 0.8]) {
      expect(offK(10, x)).toBeLessThan(0.007);
      expect(offK(1, x)).toBeLessThan(1e-4);
    }
  });

  test('tabulated boils as the model has it, within a hundredth of a kelvin', () => {
    const { table } = airPressureCourse(100);
    const boiling = newBoiling();
    for (const x of [0.02, 0.1, 0.4, 0.8]) {
      lookUpBoiling(table, x, boiling);
      const exact = bubblePoint({ ethanolMoleFraction: x, pressureKPa: 100 });
      expect(Math.abs(boiling.temperatureC - exact.temperatureC)).toBeLessThan(0.01);
      expect(Math.abs(boiling.y - exact.vapourEthanolMoleFraction)).toBeLessThan(0.002);
      const dew = dewPoint({ ethanolMoleFraction: x, pressureKPa: 100 });
      expect(Math.abs(lookUpDewTemperatureC(table, x) - dew.temperatureC)).toBeLessThan(0.01);
    }
  });

  test('is refused outside its range, and where there is none', () => {
    expect(() => airPressureCourse(49)).toThrow(/^air pressure is 49 kPa; .* 50 and 110/);
    expect(() => airPressureCourse([])).toThrow(/^number of pressure points is 0; .* 1 and 100000/);
  });
});

test('a look-up tells the slopes of its own curves', () => {
  const { table } = airPressureCourse(101.325);
  const at = (x: number) => {
    const boiling = newBoiling();
    lookUpBoiling(table, x, boiling);
    return boiling;
  };
  for (const x of [0.013, 0.21, 0.77]) {
    const step = 1e-7;
    const [before, here, after] = [at(x - step), at(x), at(x + step)];
    expect(here.yPerX).toBeCloseTo((after.y - before.y) / (2 * step), 4);
    expect(here.temperaturePerX).toBeCloseTo(
      (after.temperatureC - before.temperatureC) / (2 * step),
      3,
    );
  }
  expect([at(0).y, at(1).y]).toEqual([0, expect.closeTo(1, 9)]);
  // Pure water and pure ethanol boil and condense at one temperature each: 100.0 °C and 78.3 °C.
  for (const [x, boilsC] of [
    [0, 100],
    [1, 78.3],
  ] as const) {
    expect(at(x).temperatureC).toBeCloseTo(boilsC, 1);
    expect(lookUpDewTemperatureC(table, x)).toBeCloseTo(at(x).temperatureC, 2);
  }
});

describe('a pot that bumps', () => {
  const surging = () => ({
    ...calmSurge(),
    untilS: 200,
    depth: 0.8,
    periodS: 20,
    startedS: 100,
    usualMolPerS: 0.01,
  });

  test('is held back for three quarters of each period, then gives back what was held', () => {
    const released = Array.from({ length: 40 }, (_, step) =>
      potReleaseMol(surging(), 100 + step, 1),
    );
    expect(released[0]).toBeCloseTo(0.2 * 0.01, 12);
    expect(released[14]).toBeCloseTo(0.2 * 0.01, 12);
    expect(released[15]).toBeCloseTo((1 + 0.8 * 3) * 0.01, 12);
    expect(released.reduce((sum, mol) => sum + mol)).toBeCloseTo(40 * 0.01, 9);
  });

  test('boils as it likes once that is over, and learns what is usual only then, within a minute', () => {
    expect(potReleaseMol(surging(), 200, 1)).toBe(Number.POSITIVE_INFINITY);
    expect(potReleaseMol(calmSurge(), 0, 1)).toBe(Number.POSITIVE_INFINITY);
    const surge = surging();
    observeBoilUp(surge, 199, 1, 0.02);
    expect(surge.usualMolPerS).toBe(0.01);
    observeBoilUp(surge, 200, 3, 0.02);
    expect(surge.usualMolPerS).toBeCloseTo(0.01 + 0.01 * (3 / 60), 12);
  });
});

describe('spells at random', () => {
  const random = (...draws: readonly number[]) => {
    const left = [...draws];
    return { uniform: () => 0.5, normal: () => 0, exponential: () => left.shift() ?? 100 };
  };

  test('come after their waits and last their lengths', () => {
    // 36 an hour: 100 s of waiting for each unit; 10 s long for each. Begins at 50 s for 20 s, then 30 s later for 5 s.
    const spells = createSpells(random(0.5, 2, 0.3, 0.5), 36, 10);
    expect([49, 50, 69, 70, 99, 100, 104, 105].map(spells.covers)).toEqual([
      false,
      true,
      true,
      true,
      false,
      true,
      true,
      true,
    ]);
  });

  test('that passed unseen are told once, and none come where there are none', () => {
    const spells = createSpells(random(0.5, 0.1, 5, 0.1), 36, 10);
    expect([100, 101].map(spells.covers)).toEqual([true, false]);
    const never = createSpells(random(1, 1), 0, 10);
    expect(never.covers(1e9)).toBe(false);
  });
});

test('heat is counted from liquid of 80 °C, in straight lines', () => {
  const { vaporizationEthanolJPerMol: ethanolJ, vaporizationWaterJPerMol: waterJ } = heatContent;
  expect(liquidHeatJ(2, 3, 90)).toBeCloseTo((2 * 225 + 3 * 75.6) * 10, 9);
  expect(liquidHeatJPerMol(0.25, 70)).toBeCloseTo(-(0.25 * 225 + 0.75 * 75.6) * 10, 9);
  expect(vapourHeatJPerMol(0.25, 90)).toBeCloseTo(
    0.25 * (ethanolJ + 760) + 0.75 * (waterJ + 344),
    9,
  );
  expect(vapourHeatJPerMol(1, 80) - liquidHeatJPerMol(1, 80)).toBeCloseTo(ethanolJ, 9);
});

test('volumes and strengths are those of the tables, and nothing has none', () => {
  // A mole of water is 18.0 mL, of ethanol 58.4 mL; half and half of them is some 86 % vol.
  expect([volumeMl(0, 1), volumeMl(1, 0), volumeMl(0, 0)]).toEqual([
    expect.closeTo(18.05, 1),
    expect.closeTo(58.4, 0),
    0,
  ]);
  expect(volumeMl(2, 2)).toBeCloseTo(2 * volumeMl(1, 1), 9);
  expect([strengthAbv(0), strengthAbv(1)]).toEqual([0, expect.closeTo(100, 9)]);
  expect(strengthAbv(0.5)).toBeGreaterThan(76);
  expect(strengthAbv(0.5)).toBeLessThan(80);
});

test('a heater follows its setting, and heats only while it stands under the flask', () => {
  const heater = { setW: 100, givesW: 20, removed: false };
  expect([stepHeater(heater, 0.25), heater.givesW]).toEqual([40, 40]);
  const away = { ...heater, removed: true };
  expect([stepHeater(away, 0.5), away.givesW]).toEqual([0, 70]);
});

test('a volatile in traces rises by its activity and its vapour pressure', () => {
  const [acetaldehyde, methanol, ethylAcetate] = lightVolatiles;
  // Methanol boils at 64.5 °C (from memory): there, in pure ethanol, it is 0.94 of the air above it; in water 2.25.
  expect(volatilityRatio(methanol!, 1, 64.5, 101.325)).toBeCloseTo(0.94, 2);
  expect(volatilityRatio(methanol!, 0, 64.5, 101.325)).toBeCloseTo(2.25, 1);
  // Acetaldehyde boils at 20.2 °C, ethyl acetate at 77.1 °C.
  expect(volatilityRatio(ethylAcetate!, 0, 77.1, 101.325)).toBeCloseTo(65, -1);
  expect(volatilityRatio(acetaldehyde!, 1, 80, 101.325)).toBeGreaterThan(5);
  expect(volatilityRatio(methanol!, 0.3, 80, 50.6625)).toBeCloseTo(
    2 * volatilityRatio(methanol!, 0.3, 80, 101.325),
    9,
  );
  // Between the two by the square of the share of water in the volume.
  const share = 1 - ((58.4 / 18.05) * 0.3) / (1 + (58.4 / 18.05 - 1) * 0.3);
  const logOf = (x: number) => Math.log(volatilityRatio(methanol!, x, 80, 101.325));
  expect(logOf(0.3)).toBeCloseTo(logOf(1) + (logOf(0) - logOf(1)) * share ** 2, 9);
});
