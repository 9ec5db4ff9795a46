import { beforeAll, describe, expect, test } from 'vitest';
import { type Mark, type MarkBody, type RunInput, type RunSettings, studyRun } from '#shared-core';
import { processedTable } from '../../../main/export/pack/run-tables.ts';
import { meanStrength } from '../../../shared-core/distillate/mean-strength.ts';
import type { RunStudy } from '../../../shared-core/study/study-run.ts';
import { simulatedRun } from '../../support/simulated-run.ts';

const simulated = simulatedRun({ name: 'one strength', pressureKPa: 97.2, seed: 7 });
const coldBy = (offK: number, inputs: readonly RunInput[]): readonly RunInput[] =>
  inputs.map((input) =>
    input.kind === 'reading' && input.channel === 'head'
      ? { ...input, value: input.value - offK }
      : input,
  );
/** Nothing but the heat, and what somebody did and read instead. */
const withMarks = (...marks: readonly (readonly [number, MarkBody])[]): readonly RunInput[] =>
  [
    ...simulated.inputs.filter(({ kind, ...input }) =>
      kind === 'mark' ? (input as Mark).mark.type.startsWith('heat') : true,
    ),
    ...marks.map(
      ([timeS, mark], index): Mark => ({ kind: 'mark', timeS, markId: 500 + index, mark }),
    ),
  ].toSorted((a, b) => a.timeS - b.timeS);
const study = (inputs: readonly RunInput[], changes: Partial<RunSettings> = {}): RunStudy =>
  studyRun({
    runId: 'one-strength',
    name: 'Pear-juice ferment',
    startedAtIso: '2026-03-18T09:15:00.000Z',
    rehearsal: false,
    settings: { ...simulated.settings, ...changes },
    appVersion: '0.1.0',
    modelVersion: '1',
    inputs,
    endS: simulated.endS,
  });
const { probe, pressure } = simulated.settings;

const runs = {
  'volumes read, a probe as good as stated': () => study(simulated.inputs),
  'a bulb that reads 1.5 K low': () => study(coldBy(1.5, simulated.inputs)),
  'an air pressure nobody entered': () =>
    study(simulated.inputs, {
      pressure: { ...pressure, pressureKPa: 101.325, standardUncertaintyKPa: 4, source: 'assumed' },
    }),
  'a calibrated probe': () =>
    study(coldBy(0.8, simulated.inputs), { probe: { ...probe, offsetK: 0.8 } }),
  'a receiver weighed once, at the end': () =>
    study(withMarks([simulated.endS - 60, { type: 'mass-read', massG: 40 }])),
  'receivers weighed as they are taken away': () =>
    study(
      withMarks(
        [1800, { type: 'mass-read', massG: 11 }],
        [1815, { type: 'receiver-changed', volumeMl: null }],
        [simulated.endS - 60, { type: 'mass-read', massG: 9 }],
      ),
    ),
};

describe.each(Object.keys(runs) as (keyof typeof runs)[])(
  'one strength is told everywhere after the lesson: %s',
  (name) => {
    let found: RunStudy;
    beforeAll(() => {
      found = runs[name]();
    });

    test('the rows of report and pack have at each minute what the monitor told, and none where it told none', () => {
      const { estimates } = found.verdicts;
      const known = estimates.filter(({ headVapourAbv }) => headVapourAbv !== null);
      expect(known.length).toBeGreaterThan(15);
      // A row a second: the one in whose second the minute falls.
      const rowAt = new Map(found.rows.map((row) => [Math.floor(row.timeS), row]));
      // Once a cool-down has set in, the fall that led to it counts as its beginning.
      const untilS = found.rows.findLast(({ vapourAbv }) => vapourAbv !== null)?.timeS ?? 0;
      const asked = estimates.filter(({ timeS }) => timeS <= untilS);
      expect(asked.length).toBeGreaterThan(15);
      expect(asked.map(({ timeS }) => rowAt.get(timeS)?.vapourAbv)).toEqual(
        asked.map(({ headVapourAbv }) => headVapourAbv),
      );
      const { header, rows } = tableOf(found);
      const column = (of: string) => header.indexOf(of);
      const told = rows.map((cells) =>
        ['head_vapour_abv', 'head_vapour_abv_low', 'head_vapour_abv_high'].map(
          (of) => cells[column(of)],
        ),
      );
      expect(told).toEqual(
        found.rows.map(({ vapourAbv }) => [
          vapourAbv?.value ?? null,
          vapourAbv?.low ?? null,
          vapourAbv?.high ?? null,
        ]),
      );
    });

    test('against the volume it is the strength that the books weigh, and all that came over is what they hold', () => {
      const { byVolume, books } = found;
      const points = books.distillate?.points ?? [];
      const differences = (byVolume?.course ?? []).flatMap(({ volumeMl, vapourAbv }) => {
        if (vapourAbv === null) return [];
        const weighed = meanStrength(points, volumeMl, volumeMl);
        return [
          Math.abs(vapourAbv.value - weighed.value),
          Math.abs(vapourAbv.low - weighed.low),
          Math.abs(vapourAbv.high - weighed.high),
        ];
      });
      expect(differences.length).toBeGreaterThan(300);
      // Half a second of a strength that changes by some % vol a minute.
      expect(Math.max(...differences)).toBeLessThan(0.1);
      const volumes = books.cuts.map(({ booked }) => booked?.volumeMl.value ?? Number.NaN);
      const sumMl = volumes.reduce((sum, one) => sum + one, 0);
      expect(Math.abs((byVolume?.collected?.volumeMl ?? 0) / sumMl - 1)).toBeLessThan(0.0005);
      // The contraction of the cuts with each other is left out by volume (OIML R 22: below 0.3 % vol).
      const { strengthAbv } = books.product ?? { strengthAbv: null };
      expect(
        Math.abs((byVolume?.collected?.abv.value ?? 0) - (strengthAbv?.value ?? 100)),
      ).toBeLessThan(0.3);
      expect(found.product).toBe(books.product);
      expect(books.product?.ethanolG.value).toBeCloseTo(books.balance?.ethanol.cutsG.value ?? 0, 9);
    });
  },
);

function tableOf(of: RunStudy) {
  const table = processedTable(of, 'processed');
  return { header: table.fields.map(({ name }) => name), rows: [...table.rows()] };
}
