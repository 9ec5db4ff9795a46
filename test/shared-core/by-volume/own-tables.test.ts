import { describe, expect, test } from 'vitest';
import {
  keyOf,
  markingSheetOf,
  worksheetOf,
} from '../../../shared-core/report/distillation-sheets.ts';
import type { PrintedDocument } from '../../../shared-core/report/document.ts';
import { reportOf } from '../../../shared-core/report/report-of.ts';
import {
  type TableStill,
  trueAt,
  trueCourse,
  trueCutMl,
  writtenDown,
} from './support/own-tables.ts';
import { probeDoubtK, studyTable } from './support/study-table.ts';

/** A table as a group of pupils hands it in, and what its own physics say of it. */
interface HandedIn extends TableStill {
  readonly titles: string;
  readonly decimalComma: boolean;
  readonly leastAbv: number;
  readonly firstMl: number;
}

const steps = (from: number, to: number, by = 1) =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, index) => from + index * by);

const tables: Readonly<Record<string, HandedIn>> = {
  'a simple still, 12 mL from 30 mL of 40 % vol': {
    chargeMl: 30,
    chargeAbv: 40,
    pressureKPa: 101.3,
    column: null,
    readAtMl: steps(1, 12),
    noiseK: 0.3,
    seed: 'bench 1',
    titles: 'Volumen Destillat (mL);Kopftemperatur (°C)',
    decimalComma: true,
    leastAbv: 76,
    firstMl: 0,
  },
  'a column, pear juice, volumes in cm³ at odd steps': {
    chargeMl: 300,
    chargeAbv: 10.5,
    pressureKPa: 99.4,
    column: { plates: 4, refluxRatio: 3 },
    readAtMl: [0.5, 2, 4, 7, 11, 12.5, 16, 20, 22, 23.5, 25, 26.5, 28, 29.5, 31, 33, 36, 40],
    noiseK: 0.3,
    seed: 'bench 2',
    titles: 'Destillat in cm³;T(Kopf) in °C',
    decimalComma: true,
    leastAbv: 70,
    firstMl: 2,
  },
  'a still that never holds, pear juice of 6 % vol': {
    chargeMl: 250,
    chargeAbv: 6,
    pressureKPa: 98.6,
    column: null,
    readAtMl: [1, 2, 3.5, 5, 8, 10.5, 14, 19, 25, 32],
    noiseK: 0.4,
    seed: 'bench 3',
    titles: 'distillate (cm3),head temperature (°C)',
    decimalComma: false,
    leastAbv: 60,
    firstMl: 0,
  },
  'a weak column, 40 % vol in a larger flask': {
    chargeMl: 120,
    chargeAbv: 40,
    pressureKPa: 101.3,
    column: { plates: 1, refluxRatio: 2 },
    readAtMl: [2, 5, 8, 12.5, 17.5, 22, 26, 31, 35, 39, 42.5, 46, 50, 54],
    noiseK: 0.3,
    seed: 'bench 4',
    titles: 'V / ml\tT / °C',
    decimalComma: true,
    leastAbv: 80,
    firstMl: 5,
  },
};

function textOf(table: HandedIn): string {
  const separator = /[;\t,]/.exec(table.titles)?.[0] ?? ';';
  const rows = writtenDown(table).map((row) =>
    row
      .map((value) => (table.decimalComma ? String(value).replace('.', ',') : String(value)))
      .join(separator),
  );
  return [table.titles, ...rows].join('\n');
}

const studied = (table: HandedIn) =>
  studyTable(textOf(table), { ...table, plates: table.column?.plates ?? 0 });

describe.each(Object.entries(tables))('%s', (_, table) => {
  const course = trueCourse(table);
  const { read, study } = studied(table);
  const { byVolume } = study;
  const cutMl = trueCutMl(course, table.leastAbv);

  test('is taken in by volume, and has no time anywhere', () => {
    expect(read.inputs.every((input) => input.timeS === 0)).toBe(true);
    expect(read.endS).toBe(0);
    expect(read.remarks.join(' ')).toMatch(/The table has no times; it is taken by the volume/);
    const { stages, alarms, forecasts, estimates, events } = study.verdicts;
    expect({ stages, alarms, forecasts, estimates, events, rows: study.rows }).toEqual({
      stages: [],
      alarms: [],
      forecasts: [],
      estimates: [],
      events: [],
      rows: [],
    });
    expect([study.plateau, byVolume?.basis]).toEqual([null, 'table']);
  });

  test('gives T(V) as written, and strength(V) with the true one in its interval', () => {
    expect(byVolume?.course.map(({ volumeMl, headC }) => [volumeMl, headC])).toEqual(
      writtenDown(table),
    );
    // A 95 % interval may miss one reading in a short table.
    const missed = byVolume?.course.filter(({ volumeMl, vapourAbv }) => {
      const { abv } = trueAt(course, volumeMl);
      // The two models of the mixture differ by up to 0.6 % vol.
      return vapourAbv !== null && (abv < vapourAbv.low - 0.6 || abv > vapourAbv.high + 0.6);
    });
    expect(missed?.length).toBeLessThanOrEqual(1);
    const last = byVolume?.course.findLast(({ collectedAbv }) => collectedAbv !== null);
    const truth = trueAt(course, last?.volumeMl ?? 0).collectedAbv;
    expect(Math.abs((last?.collectedAbv?.value ?? 0) - truth)).toBeLessThan(2);
  });

  test('has the verdict and the cuts of its own physics', () => {
    const { mainFraction, cuts } = byVolume?.verdict ?? { mainFraction: null, cuts: [] };
    const isStrong = cutMl !== null && cutMl > table.firstMl;
    expect(mainFraction).toBe(isStrong);
    expect(study.verdicts.verdict.mainFraction).toBe(isStrong);
    expect(cuts.map(({ cut }) => cut)).toEqual([
      ...(isStrong && table.firstMl > 0 ? ['first'] : []),
      ...(isStrong ? ['as-wanted'] : []),
      'weaker',
    ]);
    const first = cuts.find(({ cut }) => cut === 'first');
    if (first !== undefined) expect([first.fromMl, first.toMl]).toEqual([0, table.firstMl]);
    const main = cuts.find(({ cut }) => cut === 'as-wanted');
    if (main === undefined || cutMl === null) return;
    // As far as the head climbs by what the thermometer may be off (k = 2), and half a step of the table.
    const offK = 2 * probeDoubtK(table);
    const cutC = trueAt(course, cutMl).headC;
    const wide = course.filter(({ headC }) => Math.abs(headC - cutC) <= offK);
    const reach = Math.max(cutMl - (wide[0]?.volumeMl ?? 0), (wide.at(-1)?.volumeMl ?? 0) - cutMl);
    expect(Math.abs(main.toMl - cutMl)).toBeLessThan(reach + 1);
    expect(reach).toBeLessThan(0.3 * (table.readAtMl.at(-1) ?? 0));
  });

  test('agrees with the charge that was stated, and says nothing else', () => {
    expect([byVolume?.doubt, study.verdicts.problems]).toEqual([null, []]);
  });
});

test('a table by volume is asked what it can answer, in sheets, keys and discussion', () => {
  const { study } = studied(tables['a weak column, 40 % vol in a larger flask'] as HandedIn);
  const words = (document: PrintedDocument) => JSON.stringify(document.blocks);
  expect(words(reportOf([study]))).toContain(
    'At which volume would you have changed the receiver?',
  );
  expect(words(reportOf([study]))).not.toMatch(/show no plateau|heat taken off/);
  for (const sheet of [
    worksheetOf(study, 'undergraduate'),
    markingSheetOf(study, 'undergraduate'),
  ]) {
    expect(words(sheet)).toContain('There is no question at this level');
  }
  expect(words(worksheetOf(study, 'school'))).not.toContain('There is no question');
  const captions = keyOf(study).blocks.map((block) =>
    block.kind === 'table' ? block.caption : '',
  );
  expect(captions).toEqual(['School level: 4 marks']);
});

test('the simple stills follow Rayleigh, and those with a column lie below', () => {
  const above = Object.values(tables).map(
    (table) => studied(table).study.byVolume?.aboveRayleighK?.mean ?? Number.NaN,
  );
  expect(
    above.map((meanK) => (Math.abs(meanK) < 0.5 ? 'on it' : meanK < 0 ? 'below' : 'above')),
  ).toEqual(['on it', 'below', 'on it', 'below']);
});

test('the first fraction that takes all that is strong leaves no main fraction', () => {
  const table = tables['a simple still, 12 mL from 30 mL of 40 % vol'] as HandedIn;
  const { verdict } = studied({ ...table, leastAbv: 78.5, firstMl: 8 }).study.byVolume ?? {};
  expect(verdict).toMatchObject({
    mainFraction: false,
    because: expect.stringMatching(/within the 8\.0 mL of the first fraction that were set/),
    cuts: [
      { cut: 'first', fromMl: 0, toMl: 8 },
      { cut: 'weaker', fromMl: 8, toMl: 12 },
    ],
  });
});
