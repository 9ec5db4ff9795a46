import { expect, test } from 'vitest';
import { airPressureCourse } from '../../../shared-core/column/air-pressure-course.ts';
import { emptyCollection, stepCondenser } from '../../../shared-core/column/condenser.ts';
import { liquidHeatJPerMol } from '../../../shared-core/column/heat-content.ts';
import { pearFermentSetup } from '../../../shared-core/column/pear-ferment-setup.ts';
import { chargedStack } from '../../../shared-core/column/stage-stack.ts';
import { coldHead } from '../../../shared-core/column/still-head.ts';

const pear = pearFermentSetup();
const { table } = airPressureCourse(101.325);

/** A step in which a hundredth of a mole of vapour, four fifths of it ethanol, went on from the head. */
function stepped(returnedFraction: number, limitY = 0.7) {
  const stack = chargedStack(pear, 20, table);
  const top = stack.count - 1;
  stack.ethanolMol[top] = 1;
  stack.waterMol[top] = 2;
  stack.energyJ[top] = 500;
  stack.risenMol[top] = 0.02;
  for (const [index, trace] of stack.traces.entries()) trace.risenMol[top] = 1e-4 * (index + 1);
  const head = {
    ...coldHead(20),
    vapourEthanolMoleFraction: 0.8,
    passedMol: 0.01,
    passedEnergyJ: 400,
  };
  const collection = emptyCollection(returnedFraction, stack.traces.length);
  const coolingJ = stepCondenser(collection, head, stack, pear.rig, limitY, 0.25);
  return { stack, top, collection, coolingJ };
}

test('a quarter of what condenses has dropped, and the rest is on its way', () => {
  const { collection } = stepped(0);
  expect(collection).toMatchObject({
    condensedMol: 0.01,
    droppedEthanolMol: expect.closeTo(0.002, 12),
    droppedWaterMol: expect.closeTo(0.0005, 12),
    running: { ethanolMol: expect.closeTo(0.006, 12), waterMol: expect.closeTo(0.0015, 12) },
    receivers: [{ ethanolMol: expect.closeTo(0.002, 12), waterMol: expect.closeTo(0.0005, 12) }],
  });
});

test('a share goes back to the top plate with its heat, the rest is distillate', () => {
  const { stack, top, collection, coolingJ } = stepped(0.6);
  const heatJPerMol = liquidHeatJPerMol(0.8, pear.rig.condenser.distillateTemperatureC);
  expect([stack.ethanolMol[top], stack.waterMol[top], stack.energyJ[top]]).toEqual([
    expect.closeTo(1 + 0.006 * 0.8, 12),
    expect.closeTo(2 + 0.006 * 0.2, 12),
    expect.closeTo(500 + 0.006 * heatJPerMol, 9),
  ]);
  expect(collection.condensedMol).toBeCloseTo(0.004, 12);
  // The water takes what vapour holds above liquid of the distillate's warmth.
  expect(coolingJ).toBeCloseTo(400 - 0.01 * heatJPerMol, 9);
  const none = stepped(0).stack;
  expect([none.ethanolMol[top], none.waterMol[top], none.energyJ[top]]).toEqual([1, 2, 500]);
});

test('vapour as rich as the limit counts above it, poorer below', () => {
  const sorted = (limitY: number) => {
    const { aboveLimit, belowLimit } = stepped(0, limitY).collection;
    return [aboveLimit.ethanolMol, aboveLimit.waterMol, belowLimit.ethanolMol, belowLimit.waterMol];
  };
  const mol = [expect.closeTo(0.008, 12), expect.closeTo(0.002, 12)];
  expect(sorted(0.8)).toEqual([...mol, 0, 0]);
  expect(sorted(0.81)).toEqual([0, 0, ...mol]);
});

test('traces go with the vapour: half of them passed the head, two fifths of that are distillate', () => {
  const { stack, top, collection } = stepped(0.6);
  for (const [index, trace] of stack.traces.entries()) {
    const up = 1e-4 * (index + 1);
    const collected = up * 0.5 * 0.4;
    expect(trace.mol[top]).toBeCloseTo(up - collected, 15);
    expect(collection.running.traceMol[index]).toBeCloseTo(0.75 * collected, 15);
    expect(collection.receivers[0]?.traceMol[index]).toBeCloseTo(0.25 * collected, 15);
  }
  expect(stack.traces).toHaveLength(3);
});

test('the charge lies in the pot, the plates are dry, and a part of a plate stands on top', () => {
  const { rig, charge } = pear;
  const stack = chargedStack({ ...pear, rig: { ...rig, plates: 2.4 } }, 21, table);
  expect(stack.count).toBe(4);
  expect([...stack.efficiency].slice(1)).toEqual([1, 1, expect.closeTo(0.4, 12)]);
  expect(stack.holdUpMlPerPlate).toBeCloseTo(rig.column.holdUpMl / 3, 12);
  expect([...stack.glassJPerK]).toEqual([
    rig.flask.heatCapacityJPerK,
    ...Array(3).fill(expect.closeTo(rig.column.heatCapacityJPerK / 3, 9)),
  ]);
  expect([...stack.lossWPerK]).toEqual([
    rig.flask.lossWPerK,
    ...Array(3).fill(expect.closeTo(rig.column.lossWPerK / 3, 12)),
  ]);
  expect([...stack.ethanolMol].slice(1)).toEqual([0, 0, 0]);
  // As much ethanol as its strength says: 0.7892 g/mL, 46.07 g/mol.
  const expectedMol = (charge.volumeMl * charge.strengthAbv * 0.7892) / 100 / 46.07;
  expect(Math.abs((stack.ethanolMol[0] ?? 0) / expectedMol - 1)).toBeLessThan(0.001);
  expect([...stack.temperatureC]).toEqual([charge.temperatureC ?? 21, 21, 21, 21]);
  // Plates hold the heat of their glass alone, counted from 80 °C.
  expect(stack.energyJ[1]).toBeCloseTo((rig.column.heatCapacityJPerK / 3) * (21 - 80), 6);
  const { lightVolatiles: _, ...clean } = charge;
  expect(chargedStack({ ...pear, charge: clean }, 21, table).traces).toEqual([]);
  const warm = chargedStack({ ...pear, charge: { ...charge, temperatureC: 60 } }, 21, table);
  expect([warm.temperatureC[0], warm.temperatureC[1]]).toEqual([60, 21]);
});
