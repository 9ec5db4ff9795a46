import { expect, test } from 'vitest';
import { azeotrope, bubblePoint, dewPoint } from '#shared-core';
import { molarVolumeMlPerMol } from '../../../shared-core/thermo/molar-volume.ts';
import { equilibriumTables, readTable } from '../../../shared-core/twin/equilibrium-tables.ts';

const pressureKPa = 90;

test('at a node stands what the equilibrium says at 90 kPa, and between nodes nearly so', () => {
  const curve = equilibriumTables();
  const peak = azeotrope(pressureKPa);
  expect(curve.azeotropeMoleFraction).toBeCloseTo(peak.ethanolMoleFraction, 9);
  for (const [share, digits] of [
    [0, 9],
    [1 / 1024, 9],
    [0.25, 9],
    [0.700_3, 4],
    [1, 9],
  ] as const) {
    const ethanolMoleFraction = share * peak.ethanolMoleFraction;
    const bubble = bubblePoint({ ethanolMoleFraction, pressureKPa });
    const dew = dewPoint({ ethanolMoleFraction, pressureKPa });
    const read = (table: Float64Array) => readTable(curve, table, ethanolMoleFraction);
    expect(read(curve.vapour)).toBeCloseTo(bubble.vapourEthanolMoleFraction, digits);
    expect(read(curve.boilingHeightK)).toBeCloseTo(
      bubble.temperatureC - peak.temperatureC,
      digits - 1,
    );
    expect(read(curve.dewHeightK)).toBeCloseTo(dew.temperatureC - peak.temperatureC, digits - 1);
    expect(read(curve.molarVolumeMl)).toBeCloseTo(
      molarVolumeMlPerMol(ethanolMoleFraction),
      digits - 1,
    );
  }
});

test('the chord of a cell goes through both its ends', () => {
  const { cells, azeotropeMoleFraction, vapour, vapourSlope, vapourOffset } = equilibriumTables();
  for (const cell of [0, 1, 511, cells - 1]) {
    const at = (node: number): number =>
      (vapourOffset[cell] as number) +
      ((vapourSlope[cell] as number) * azeotropeMoleFraction * node) / cells;
    expect([at(cell), at(cell + 1)]).toEqual([
      expect.closeTo(vapour[cell] as number, 9),
      expect.closeTo(vapour[cell + 1] as number, 9),
    ]);
  }
});

test('beyond either end a table stays at what stands there', () => {
  const curve = equilibriumTables();
  expect(readTable(curve, curve.dewHeightK, -0.1)).toBe(curve.dewHeightK[0]);
  expect(readTable(curve, curve.dewHeightK, 1)).toBe(curve.dewHeightK[curve.cells]);
});
