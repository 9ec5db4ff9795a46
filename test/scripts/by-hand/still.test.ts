import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import { boil, coldPot } from '../../../scripts/by-hand/boiling-pot.ts';
import { byHandRun } from '../../../scripts/by-hand/by-hand-run.ts';
import { drawByHand } from '../../../scripts/by-hand/draw-by-hand.ts';
import { runStill } from '../../../scripts/by-hand/hand-heated-still.ts';
import { responseTime, twoLags } from '../../../scripts/by-hand/hung-bulb.ts';
import { emptyColumn, riseThrough } from '../../../scripts/by-hand/packed-column.ts';
import { boilingPoint, lookUp, mixtureTables } from '../../../scripts/by-hand/wilson-mixture.ts';
import { referenceTable } from '../../reference-table.ts';

const folder = path.join(import.meta.dirname, '../../../scripts/by-hand');
const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);

describe('the still heated by hand', () => {
  // The files name the publications.
  test.each([
    ['vle/isobaric_101300_kamihama_2012.csv', 101.3],
    ['vle/isobaric_101325_carey_lewis_1932.csv', 101.325],
  ])('boils as measured in %s, within 0.3 K and 0.010 (rms)', (file, pressureKPa) => {
    const rows = referenceTable(file).map(({ T_C = 0, x1 = 0, y1 = 0 }) => {
      const { temperatureC, y } = boilingPoint(x1, pressureKPa);
      return { kelvin: temperatureC - T_C, vapour: y - y1 };
    });
    expect(rows.length).toBeGreaterThan(10);
    expect(rms(rows.map(({ kelvin }) => kelvin))).toBeLessThan(0.3);
    expect(rms(rows.map(({ vapour }) => vapour))).toBeLessThan(0.01);
  });

  test('has the dew point of a vapour where a liquid that boils there gives this vapour', () => {
    const tables = mixtureTables(90);
    for (const x of [0.003, 0.03, 0.2, 0.5, 0.75]) {
      const { temperatureC, y } = boilingPoint(x, 90);
      expect(lookUp(tables.dewC, y)).toBeCloseTo(temperatureC, 1);
    }
  });

  test('exchanges by transfer units: what is left of the way to equilibrium is exp(−NTU)', () => {
    const slices = 11;
    const x = 0.3;
    const setup = {
      slices,
      transferUnits: 2,
      clingingMol: 1e-6,
      drainS: 1,
      wallJPerK: 100,
      filmWPerK: 10,
      lossWPerK: 0,
      usualMolPerS: 0.001,
    };
    const tables = mixtureTables(101.325);
    const column = emptyColumn(setup, 200);
    column.ethanolMol.fill(1000 * x);
    column.waterMol.fill(1000 * (1 - x));
    const vapour = { mol: 0.001, ethanol: 0.1, light: 0 };
    riseThrough(column, tables, vapour, 200, 1);
    const star = boilingPoint(x, 101.325).y;
    // Ten packed slices with 2 units together, and the head's own 0.1.
    expect(vapour.ethanol).toBeCloseTo(star - (star - 0.1) * Math.exp(-2.1), 4);
    expect(vapour.mol).toBe(0.001);
  });

  test('without a column it boils down as Rayleigh has it: ln(n/n₀) = ∫ dx/(y − x)', () => {
    const tables = mixtureTables(101.325);
    const charge = { ethanolMol: 1, waterMol: 9, lightMol: 0 };
    const pot = coldPot({ charge, glassJPerK: 50, lossWPerK: 0, heaterS: 1, bumpK: 0 }, 80);
    while (pot.liquid.ethanolMol + pot.liquid.waterMol > 7) boil(pot, tables, 400, 20, 0.25);
    const end = pot.liquid;
    const endX = end.ethanolMol / (end.ethanolMol + end.waterMol);
    let integral = 0;
    const steps = 4000;
    for (let step = 0; step < steps; step += 1) {
      const x = endX + ((0.1 - endX) * (step + 0.5)) / steps;
      integral += (0.1 - endX) / steps / (boilingPoint(x, 101.325).y - x);
    }
    expect(Math.log(10 / (end.ethanolMol + end.waterMol))).toBeCloseTo(integral, 3);
  });

  test.each([
    [3, 2.6],
    [8, 3.5],
    [18, 4.6],
  ])('has a bulb with t63 = %f s and t90/t63 = %f when asked for one', (t63S, ratio) => {
    const lag = twoLags(0.7, t63S, ratio);
    expect(responseTime(lag, 1 - Math.exp(-1))).toBeCloseTo(t63S, 4);
    expect(responseTime(lag, 0.9) / t63S).toBeCloseTo(ratio, 4);
  });

  test('keeps its ethanol to one part in a million, however it is heated and charged', () => {
    const draws = Array.from({ length: 8 }, (_, index) => drawByHand(`closes/${index}`));
    for (const draw of draws) {
      const { ethanolGainShare, distilledMl } = runStill(draw.still, createRandom('closes'));
      expect(Math.abs(ethanolGainShare)).toBeLessThan(1e-6);
      expect(distilledMl.at(-1)).toBeGreaterThan(0);
    }
    expect(new Set(draws.map(({ tags }) => tags[0])).size).toBeGreaterThan(1);
  });

  test('a flame is taken away some ten to sixty times and put back within minutes, mostly unmarked', () => {
    const runs = Array.from({ length: 10 }, (_, index) => byHandRun(`flame/${index}`)).filter(
      ({ tags }) => tags.includes('by hand'),
    );
    const cycles = runs.map(({ course }) => {
      const off = course.acts.filter(({ kind }) => kind === 'heat-off');
      const on = course.acts.filter(({ kind }) => kind === 'heat-on');
      return off.slice(0, -1).map(({ timeS }, index) => (on[index + 1]?.timeS ?? 0) - timeS);
    });
    expect(Math.max(...cycles.map(({ length }) => length))).toBeGreaterThanOrEqual(10);
    expect(Math.max(...cycles.map(({ length }) => length))).toBeLessThanOrEqual(60);
    expect(Math.min(...cycles.flat())).toBeGreaterThanOrEqual(15);
    const marks = runs.flatMap(({ report }) => report.others).filter(({ kind }) => kind === 'mark');
    expect(marks.length).toBeLessThan(0.4 * cycles.flat().length);
  });

  test('draws the same run for the same seed, and another for another', () => {
    expect(byHandRun('same')).toEqual(byHandRun('same'));
    expect(byHandRun('same').report.head).not.toEqual(byHandRun('other').report.head);
  });

  /** From the layer's face or a room's. */
  const fromSharedCore =
    /import (?:type )?\{([^}]*)\} from '(?:#shared-core|\.\.\/\.\.\/shared-core\/[\w-]+\/index\.ts)'/g;

  test('takes no physics from the project or from the other ensembles', () => {
    const allowed = new Set(
      `Condition createMonitor createRandom defaultRunSettings densityKgPerM3 limitTemperatureC MarkBody moleFractionFromStrength
      PressureSetting pressureFromSteam Random RunInput RunSettings Stage stationPressure strengthFromMoleFraction Verdicts`.split(
        /\s+/,
      ),
    );
    const taken = readdirSync(folder).flatMap((file) => {
      const text = readFileSync(path.join(folder, file), 'utf8');
      expect(text).not.toMatch(
        /from '(?:\.\.\/(?!\.\.\/shared-core\/\w+(?:-\w+)*\/index\.ts')|#shared-core\/)/,
      );
      return [...text.matchAll(fromSharedCore)].flatMap(([, names = '']) =>
        names.split(',').map((name) => name.replace('type ', '').trim()),
      );
    });
    expect(taken.length).toBeGreaterThan(5);
    expect(taken.filter((name) => name !== '' && !allowed.has(name))).toEqual([]);
  });
});
