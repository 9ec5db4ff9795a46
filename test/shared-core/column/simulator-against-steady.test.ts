import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  createBatchSimulation,
  equilibriumCurve,
  pearFermentSetup,
  saturationPressureKPa,
  simulateBatch,
} from '#shared-core';
import type { BatchSetup } from '../../../shared-core/column/batch-setup.ts';
import { lightVolatiles, volatilityRatio } from '../../../shared-core/column/light-volatile.ts';
import { simpleBatch } from '../../../shared-core/column/steady/simple-batch.ts';
import { stepPlates } from '../../../shared-core/column/steady/step-plates.ts';

const pear = pearFermentSetup();

/** A still that loses no heat above the pot and returns its reflux hot: the assumptions of McCabe and Thiele. */
function idealStill(plates: number, returnedFraction: number): BatchSetup {
  return {
    charge: { volumeMl: 3000, strengthAbv: 12 },
    pressureKPa: 101.325,
    rig: {
      ...pear.rig,
      plates,
      returnedFraction,
      column: { heatCapacityJPerK: 20, lossWPerK: 0, holdUpMl: 0.5, drainS: 3 },
      head: { ...pear.rig.head, lossWPerK: 0 },
      condenser: { distillateTemperatureC: 60, drainS: 1 },
    },
    schedule: [{ timeS: 0, kind: 'heat-on', powerW: 300 }],
  };
}

describe('the simulator and the McCabe–Thiele construction', () => {
  test.each([2, 5, 8])('agree on %i plates at total reflux', (plates) => {
    const still = createBatchSimulation(idealStill(plates, 1));
    still.advance(9000);
    const { potEthanolMoleFraction, headVapourMoleFraction } = still.state;
    const { stages } = stepPlates({
      equilibrium: equilibriumCurve(101.325),
      distillateMoleFraction: headVapourMoleFraction,
      potMoleFraction: potEthanolMoleFraction,
      refluxRatio: 1e6,
    });
    expect(stages).toBeCloseTo(plates + 1, 1);
  });

  test('agree on 5 plates at a reflux ratio of 4, but for unequal heats and cool reflux', () => {
    const still = createBatchSimulation(idealStill(5, 0.8));
    still.advance(5400);
    const { potEthanolMoleFraction, headVapourMoleFraction, refluxRatio } = still.state;
    expect(refluxRatio).toBeGreaterThan(4);
    const { stages } = stepPlates({
      equilibrium: equilibriumCurve(101.325),
      distillateMoleFraction: headVapourMoleFraction,
      potMoleFraction: potEthanolMoleFraction,
      refluxRatio: refluxRatio ?? 0,
    });
    expect(Math.abs((stages ?? 0) - 6)).toBeLessThan(0.3);
  });

  test('a pot without a column distils along the Rayleigh curve', () => {
    const run = simulateBatch(idealStill(0, 0), { durationS: 12_000, sampleEveryS: 10 });
    const [start, ...rest] = run.samples.filter(({ distillateVolumeMl }) => distillateVolumeMl > 5);
    const end = rest.find((sample) => sample.potStrengthAbv < 5);
    if (start === undefined || end === undefined) throw new Error('the run is too short');
    const rayleigh = simpleBatch({
      equilibrium: equilibriumCurve(101.325),
      chargeMol: 1,
      potMoleFraction: start.potEthanolMoleFraction,
      endPotMoleFraction: end.potEthanolMoleFraction,
    });
    const potMol = (sample: typeof start) =>
      // Volume of the pot over its molar volume; both poor in ethanol, so nearly water's.
      sample.potVolumeMl / (18.05 + 36 * sample.potEthanolMoleFraction);
    expect(potMol(end) / potMol(start) / rayleigh.residueMol).toBeCloseTo(1, 2);
  });
});

describe('light volatiles', () => {
  test("methanol's volatility against ethanol lies within 12 % of measurements at 60 °C", () => {
    // Kurihara et al., J. Chem. Eng. Data 40 (1995) 679, rows poor in methanol.
    const file = path.join(
      import.meta.dirname,
      '../../reference/trace_methanol_measured_kurihara_60C.csv',
    );
    const rows = readFileSync(file, 'utf8')
      .split('\n')
      .filter((line) => /^\d/.test(line))
      .map((line) => line.split(',').map(Number));
    const methanol = lightVolatiles.find(({ name }) => name === 'methanolMgPerL');
    if (methanol === undefined) throw new Error('methanol is missing');
    expect(rows).toHaveLength(10);
    for (const row of rows) {
      const [pressureKPa = 0, xMethanol = 0, xEthanol = 0] = row;
      const [gammaEthanol = 0, measured = 0] = row.slice(6);
      const x = xEthanol / (1 - xMethanol);
      const ethanolRatio = (gammaEthanol * saturationPressureKPa('ethanol', 60)) / pressureKPa;
      const computed = volatilityRatio(methanol, x, 60, pressureKPa) / ethanolRatio;
      expect(Math.abs(computed / measured - 1)).toBeLessThan(0.12);
    }
  });
});
