import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { drawSecondRun, type SecondKind } from '../../../scripts/second-still/draw-second-run.ts';
import { boils, moleFractionOf, strengthAbv } from '../../../scripts/second-still/mixture.ts';
import { runSecondDraw } from '../../../scripts/second-still/report-second-run.ts';
import { runSecondStill } from '../../../scripts/second-still/second-still.ts';

const folder = path.join(import.meta.dirname, '../../../scripts/second-still');

/** The draw with this much changed: a still that is easy to reckon with. */
function stillOf(seed: string, kind: SecondKind) {
  return drawSecondRun(seed, [kind]);
}

describe('the second still', () => {
  test('boils pure ethanol at 78.3 °C, pure water at 100.0 °C and an azeotrope between 88 and 91 mol %', () => {
    // Boiling points at 101.325 kPa: NIST Chemistry WebBook, values from memory.
    expect(boils(1, 101.325).temperatureC).toBeCloseTo(78.3, 0);
    expect(boils(0, 101.325).temperatureC).toBeCloseTo(100, 0);
    const gap = (x: number): number => boils(x, 101.325).y - x;
    expect(gap(0.86)).toBeGreaterThan(0);
    expect(gap(0.92)).toBeLessThan(0);
  });

  test.each([5, 12, 40, 80, 95])('knows the mole fraction of %f % vol', (abv) => {
    expect(strengthAbv(moleFractionOf(abv))).toBeCloseTo(abv, 6);
  });

  test.each(['1', '2', '3', '4'])('keeps its ethanol: pot, column and receiver, run %s', (seed) => {
    const { still, heat } = stillOf(seed, 'removals-unmarked');
    const { ethanolGainMol, samples } = runSecondStill(still, heat);
    const charged = still.chargedMol * still.ethanolMoleFraction;
    expect(Math.abs(ethanolGainMol) / charged).toBeLessThan(1e-9);
    expect(samples.at(-1)?.distillateVolumeMl).toBeGreaterThan(0.1 * 0.05 * still.chargeMl);
  });

  test('with one stage and no reflux gives what boils off the pot, with many stages nearly the azeotrope', () => {
    const { still, heat } = stillOf('5', 'plain');
    const [stage] = still.stages;
    if (stage === undefined) throw new Error('no stage');
    const lossless = { ...stage, lossWPerK: 0, heldMol: 0.002 };
    const strongest = (stages: number, refluxRatio: number): number => {
      const { samples } = runSecondStill(
        { ...still, refluxRatio, lightMoleFraction: 0, stages: Array(stages).fill(lossless) },
        { ...heat, shares: [], removals: [] },
      );
      const bathed = samples.filter(({ bathedFraction }) => bathedFraction >= 1);
      return bathed[300]?.headVapourStrengthAbv ?? 0;
    };
    const overPot = strengthAbv(boils(still.ethanolMoleFraction, still.pressureKPa).y);
    const twice = strengthAbv(
      boils(boils(still.ethanolMoleFraction, still.pressureKPa).y, still.pressureKPa).y,
    );
    expect(strongest(1, 0)).toBeGreaterThan(overPot - 6);
    expect(strongest(1, 0)).toBeLessThan(twice);
    expect(strongest(8, 10)).toBeGreaterThan(93);
    expect(strongest(8, 10)).toBeLessThan(97.5);
  });

  test('draws the same run for the same seed, and another for another', () => {
    const inputs = (seed: string) => runSecondDraw(stillOf(seed, 'probe-faults')).inputs;
    expect(inputs('6')).toEqual(inputs('6'));
    expect(inputs('6')).not.toEqual(inputs('7'));
  });

  /** From the layer's face or a room's. */
  const fromSharedCore =
    /import (?:type )?\{([^}]*)\} from '(?:#shared-core|\.\.\/\.\.\/shared-core\/[\w-]+\/index\.ts)'/g;

  test('takes of shared-core the seeded chance, units and settings only: no physics', () => {
    const allowed = /^(createRandom|defaultRunSettings|Random|RunSettings|RunInput|MarkBody)$/;
    const taken = readdirSync(folder).flatMap((file) => {
      const text = readFileSync(path.join(folder, file), 'utf8');
      expect(text).not.toMatch(/'[^']*\/shared-core\/(?![\w-]+\/index\.ts')/);
      return [...text.matchAll(fromSharedCore)].flatMap(([, names = '']) =>
        names.split(',').map((name) => name.replace('type ', '').trim()),
      );
    });
    expect(taken.length).toBeGreaterThan(3);
    expect(taken.filter((name) => name !== '' && !allowed.test(name))).toEqual([]);
  });
});
