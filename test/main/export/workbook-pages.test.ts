import { strFromU8, unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { studyRun } from '#shared-core';
import { distillationSheets } from '../../../main/export/pack/pack-workbook.ts';
import { writeWorkbook } from '../../../main/export/workbook/write-workbook.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';

const parts: Uint8Array[] = [];
const sheetsOfRun = distillationSheets([studyRun(pearRun().run)]);
for await (const part of writeWorkbook({ title: 'Pear', createdMs: 0, sheets: sheetsOfRun }))
  parts.push(part);
const files = unzipSync(Buffer.concat(parts));
const named = (pattern: RegExp) =>
  Object.entries(files).flatMap(([name, bytes]) => (pattern.test(name) ? [strFromU8(bytes)] : []));

test('every sheet is printed as wide as a page, however long it is', () => {
  const sheets = named(/^xl\/worksheets\/sheet\d+\.xml$/);
  expect(sheets.length).toBeGreaterThan(6);
  for (const xml of sheets) {
    expect(xml).toMatch(/<sheetPr><pageSetUpPr fitToPage="1"\/><\/sheetPr><sheetViews>/);
    expect(xml).toMatch(/<pageSetup [^>]*fitToWidth="1" fitToHeight="0"\/>/);
  }
});

test('its chart has an axis of its own for each unit, with a title, and one title in all', () => {
  const [chart = ''] = named(/^xl\/charts\/chart\d+\.xml$/);
  const titles = [...chart.matchAll(/<a:t>([^<]*)<\/a:t>/g)].map(([, words]) => words);
  expect(titles).toEqual([
    'Pear-juice ferment',
    'Time / s',
    'Head temperature / °C',
    'Time / s',
    'Strength of the vapour / % vol',
  ]);
  const plots = [...chart.matchAll(/<c:scatterChart>.*?<\/c:scatterChart>/g)].map(([xml]) => ({
    lines: xml.match(/<c:ser>/g)?.length,
    axes: [...xml.matchAll(/<c:axId val="(\d)"\/>/g)].map(([, id]) => id),
  }));
  expect(plots).toEqual([
    { lines: 1, axes: ['1', '2'] },
    { lines: 1, axes: ['3', '4'] },
  ]);
  // Of the two axes along the bottom one is seen.
  expect(chart.match(/<c:delete val="1"\/>/g)).toHaveLength(1);
});
