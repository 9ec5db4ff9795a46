import { describe, expect, test } from 'vitest';
import {
  type BatchColumn,
  type ColumnFlows,
  fillColumn,
  stepColumn,
} from '../../../shared-core/twin/batch-column.ts';
import { equilibriumTables, readTable } from '../../../shared-core/twin/equilibrium-tables.ts';
import type { StillGuess } from '../../../shared-core/twin/still-guess.ts';

const guess: StillGuess = {
  plates: 3.4,
  refluxRatio: 3,
  lossShare: 0.5,
  vapourMolPerS: 0.0012,
  strengthAbv: 10,
  holdUpMol: 0.02,
  biasK: 0,
};
const flowsOf = (distillateMol: number, lostMol: number): ColumnFlows => ({
  vapourMol: 0.05,
  lostMol,
  distillateMol,
});
const vapourOver = (moleFraction: number): number =>
  readTable(equilibriumTables(), equilibriumTables().vapour, moleFraction);

/** A column over a pot so large that it stands, after so long that nothing changes any more. */
function settled(plates: number, topEfficiency: number, flows: ColumnFlows): BatchColumn {
  const curve = equilibriumTables();
  const column: BatchColumn = {
    x: new Float64Array(13).fill(0.1),
    plates,
    topEfficiency,
    held: 0.02,
    potMol: 0,
    topY: 0,
  };
  for (let step = 0; step < 3000; step += 1) {
    column.potMol = 1e9;
    column.x[0] = 0.03;
    stepColumn(column, flows, curve);
  }
  return column;
}

describe('a column that has settled', () => {
  test('has on each plate what rises from the one below, where all is led back', () => {
    const { x, topY } = settled(4, 1, flowsOf(0, 0));
    for (let plate = 1; plate <= 4; plate += 1) {
      expect(x[plate]).toBeCloseTo(vapourOver(x[plate - 1] as number), 6);
    }
    expect(topY).toBeCloseTo(vapourOver(x[4] as number), 6);
  });

  test.each([
    [1, 1],
    [3, 1],
    [4, 0.4],
    [7, 0.7],
  ])(
    'keeps to the balance about its top, with what its wall condenses, of %i plates the last with efficiency %f',
    (plates, topEfficiency) => {
      const flows = flowsOf(0.012, 0.01);
      const { x, topY } = settled(plates, topEfficiency, flows);
      // V_i y_i = (V_i − D) x_(i+1) + D y_top, with V_i = V − loss i/N.
      for (let plate = 0; plate < plates; plate += 1) {
        const rising = flows.vapourMol - (flows.lostMol * plate) / plates;
        const falling = (rising - flows.distillateMol) * (x[plate + 1] as number);
        expect(rising * vapourOver(x[plate] as number)).toBeCloseTo(
          falling + flows.distillateMol * topY,
          7,
        );
      }
      expect(topY).toBeCloseTo(
        (1 - topEfficiency) * vapourOver(x[plates - 1] as number) +
          topEfficiency * vapourOver(x[plates] as number),
        6,
      );
    },
  );
});

describe('one step', () => {
  test('conserves ethanol to rounding, and takes the distillate out of the pot', () => {
    const column: BatchColumn = {
      x: Float64Array.from([0.03, 0.2, 0.4, 0.55]),
      plates: 3,
      topEfficiency: 0.6,
      held: 0.02,
      potMol: 12,
      topY: 0,
    };
    const inAll = () =>
      column.potMol * (column.x[0] as number) +
      column.held * [1, 2, 3].reduce((sum, plate) => sum + (column.x[plate] as number), 0);
    for (let step = 0; step < 20; step += 1) {
      const before = inAll();
      const { potMol } = column;
      const flows = flowsOf(0.01, 0.006);
      stepColumn(column, flows, equilibriumTables());
      expect(column.potMol).toBeCloseTo(potMol - 0.01, 12);
      expect(inAll() + 0.01 * column.topY).toBeCloseTo(before, 12);
    }
  });
});

describe('the column as vapour reaches the head', () => {
  test('holds with the pot what was charged, on as many plates as are needed, the last in part', () => {
    const column = fillColumn(guess, 18, 0.6, flowsOf(0.012, 0.01), equilibriumTables());
    expect([column.plates, column.topEfficiency]).toEqual([4, expect.closeTo(0.4, 9)]);
    expect(column.held).toBeCloseTo((0.02 * 3.4) / 4, 12);
    expect(column.potMol).toBeCloseTo(18 - 0.02 * 3.4, 12);
    const onPlates = [1, 2, 3, 4].reduce((sum, plate) => sum + (column.x[plate] as number), 0);
    expect(column.potMol * (column.x[0] as number) + column.held * onPlates).toBeCloseTo(0.6, 9);
  });

  test('lies between total reflux and the state it settles to', () => {
    const flows = flowsOf(0.012, 0);
    const { x, plates } = fillColumn({ ...guess, plates: 4 }, 18, 0.6, flows, equilibriumTables());
    const potX = x[0] as number;
    let atTotalReflux = potX;
    for (let plate = 1; plate <= plates; plate += 1) {
      atTotalReflux = vapourOver(atTotalReflux);
      expect(x[plate]).toBeLessThan(atTotalReflux);
      expect(x[plate]).toBeGreaterThan(x[plate - 1] as number);
    }
  });

  test('has at least one plate and at most twelve, and never holds more than a fifth of the charge', () => {
    const of = (changed: Partial<StillGuess>) => {
      const { plates, topEfficiency, held, potMol } = fillColumn(
        { ...guess, ...changed },
        18,
        0.6,
        flowsOf(0.012, 0),
        equilibriumTables(),
      );
      return { plates, topEfficiency, held, potMol };
    };
    expect(of({ plates: 0.2 })).toMatchObject({ plates: 1, topEfficiency: expect.closeTo(0.2, 9) });
    expect(of({ plates: 0.01 })).toMatchObject({ plates: 1, topEfficiency: 0.05 });
    expect(of({ plates: 14 })).toMatchObject({ plates: 12, topEfficiency: 1 });
    const much = of({ plates: 4, holdUpMol: 3 });
    expect([much.held, much.potMol]).toEqual([
      expect.closeTo((0.2 * 18) / 4, 9),
      expect.closeTo(0.8 * 18, 9),
    ]);
  });
});
