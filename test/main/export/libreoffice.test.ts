import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { nodeFileLayer, writePack } from '#main';
import { offsetWords } from '#shared-core';
import { localIso } from '../../../main/run-library/local-iso.ts';
import { type CalcCell, openInCalc, requireCalc } from './support/open-in-calc.ts';
import { packRequest } from './support/pear-pack.ts';

const minutes = 300_000;
/** As the clock on the wall of this computer shows the start of the run, and 25 min of it. */
const began = localIso('2026-03-18T09:15:00.000Z');
const later = localIso('2026-03-18T09:40:00.000Z');
const zone = offsetWords(began);
const folder = mkdtempSync(path.join(tmpdir(), 'still-head-calc-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** German for the decimal comma and day-first dates, American for the point and month-first ones. */
const locales = ['de-DE', 'en-US'] as const;
const languages = { 'de-DE': 1031, 'en-US': 1033 } as const;
const dialects = { 'de-DE': 'data-semicolon', 'en-US': 'data' } as const;
const delimiters = { 'de-DE': ';', 'en-US': ',' } as const;

beforeAll(async () => {
  requireCalc();
  const pack = await writePack({ ...packRequest(), outDir: folder, files: nodeFileLayer });
  if (!pack.ok) throw new Error(pack.error.message);
}, minutes);

function column(rows: readonly (readonly CalcCell[])[], title: string): readonly CalcCell[] {
  const index = rows[0]?.findIndex((cell) => cell.value === title) ?? -1;
  return rows.slice(1).map((row) => row[index] ?? { type: null, value: '', isFormula: false });
}

describe.each(locales)('LibreOffice with the locale %s', (locale) => {
  test('opens the workbook with numbers as numbers, dates as dates and nothing as a formula', {
    timeout: minutes,
  }, () => {
    const { sheets, scatterCharts } = openInCalc(
      path.join(folder, 'workbook.xlsx'),
      locale,
      path.join(folder, locale),
    );
    expect([...sheets.keys()]).toEqual([
      'Runs',
      'Comparison',
      'Class',
      'Results',
      'Cuts',
      'Stages',
      'Calls',
      'Processed 1',
      'Processed 2',
      'Readings 1',
      'Readings 2',
    ]);
    // One for each run, each over its own sheet (LibreOffice names the class again for every series).
    expect(scatterCharts).toBeGreaterThanOrEqual(2);
    const runs = sheets.get('Runs') ?? [];
    expect(column(runs, 'began').slice(0, 1)).toEqual([
      { type: 'date', value: began.slice(0, 19), isFormula: false },
    ]);
    expect(column(runs, 'name')[1]).toEqual({
      type: 'string',
      value: '=1+1 &amp; &quot;Zweiter Lauf&quot;, grün',
      isFormula: false,
    });
    const processed = sheets.get('Processed 1') ?? [];
    // Row 300 holds the reading at 1500 s; a day has 86 400 s, so the clock must not be off by one.
    expect(column(processed, `time_local (${zone})`)[300]).toMatchObject({
      type: 'date',
      value: `${later.slice(0, 19)}.5`,
    });
    expect(column(processed, 'time_s')[300]).toEqual({
      type: 'float',
      value: '1500.5',
      isFormula: false,
    });
    const head = column(processed, 'head_degC').slice(0, 900);
    expect(
      head.every(({ type, value }) => type === 'float' && Number(value) > 15 && Number(value) < 90),
    ).toBe(true);
    const cells = [...sheets.values()].flat(2);
    expect(cells.filter(({ isFormula }) => isFormula)).toEqual([]);
  });

  test('opens its dialect of the CSV with numbers as numbers and dates as dates', {
    timeout: minutes,
  }, () => {
    const dialect = dialects[locale];
    const filter = `Text - txt - csv (StarCalc):${delimiters[locale].charCodeAt(0)},34,76,1,,${languages[locale]},false,true`;
    const processedFolder = path.join(folder, dialect, 'processed');
    const [first = ''] = readdirSync(processedFolder).sort();
    const opened = openInCalc(
      path.join(processedFolder, first),
      locale,
      path.join(folder, locale),
      filter,
    );
    const [rows = []] = opened.sheets.values();
    expect(column(rows, 'time_s')[300]).toEqual({
      type: 'float',
      value: '1500.5',
      isFormula: false,
    });
    expect(column(rows, 'time_local')[300]).toMatchObject({
      type: 'date',
      value: later.slice(0, 19),
    });
    const strengths = column(rows, 'head_vapour_abv').slice(250, 500);
    expect(
      strengths.every(
        ({ type, value }) => type === 'float' && Number(value) > 80 && Number(value) < 98,
      ),
    ).toBe(true);

    const cuts = openInCalc(
      path.join(folder, dialect, 'cuts.csv'),
      locale,
      path.join(folder, locale),
      filter,
    );
    const [cutRows = []] = cuts.sheets.values();
    expect(column(cutRows, 'strength_abv')[0]).toMatchObject({ type: 'float', value: '92.9' });
    expect(column(cutRows, 'volume_mL')[1]).toMatchObject({ type: 'float', value: '23.2' });
  });
});
