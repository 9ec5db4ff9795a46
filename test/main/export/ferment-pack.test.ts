import { mkdtempSync, rmSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { packZip } from '#main';
import { cautionsAt, cautionWords, judgeFerment } from '#shared-core';
import { fermentsOrder } from '../../../main/export/pack/ferment/ferments-order.ts';
import { parseCsv } from '../../../shared-core/csv/parse-csv.ts';
import { readFermentCsv } from '../../../shared-core/ferment/read-ferment-csv.ts';
import { pearWeek } from '../../shared-core/study/support/pear-week.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'still-head-ferment-pack-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let files: Readonly<Record<string, Uint8Array>> = {};
const text = (name: string) => strFromU8(files[name] ?? new Uint8Array());
const rows = (name: string) => [...parseCsv(text(name), ',')].map(({ cells }) => cells);

beforeAll(async () => {
  const second = pearWeek({
    fermentId: '20260309T090000Z',
    name: 'Pear juice, second group',
    sugarG: null,
    hasMass: false,
    hasWarmth: false,
    halfH: 60,
  });
  const { fileName, content } = await packZip(
    fermentsOrder({ ferments: [pearWeek(), second], createdMs: 0 }),
  );
  expect(fileName).toBe('20260308T080000Z-pear-juice-and-1-more.zip');
  const pieces: Uint8Array[] = [];
  for await (const piece of content) pieces.push(piece);
  files = unzipSync(Buffer.concat(pieces));
  for (const [name, bytes] of Object.entries(files)) {
    const target = path.join(folder, name);
    await mkdir(path.dirname(target), { recursive: true });
    await writeFile(target, bytes);
  }
});

test('a ferment’s pack is a valid Tabular Data Package: descriptor, keys, headers and every cell, by a general validator', async () => {
  const { Package } = createRequire(import.meta.url)('datapackage');
  const dataPackage = await Package.load(JSON.parse(text('datapackage.json')), {
    basePath: folder,
    strict: true,
  });
  expect(dataPackage.valid).toBe(true);
  const counted: Record<string, number> = {};
  for (const resource of dataPackage.resources) {
    counted[resource.name] = (
      await resource.read({ keyed: true, cast: true, relations: true })
    ).length;
  }
  expect(counted).toMatchObject({
    'data.runs': 2,
    'data.readings': 22,
    'data.judged': 20,
    'data.days': 7,
    'data.minutes': 167 * 60,
    'data.warmth': 167 * 6,
    // A ferment whose sugar nobody stated has it from its first gravity.
    'data.results': 12,
    'data-semicolon.raw.20260308t080000z-pear-juice': 10,
  });
  for (const { fields } of dataPackage.resources.map(
    ({ descriptor }: { descriptor: { schema: { fields: { description: string }[] } } }) =>
      descriptor.schema,
  )) {
    for (const field of fields)
      expect(field.description.length, JSON.stringify(field)).toBeGreaterThan(1);
  }
});

test('its week, read back by the analysis of tables, is judged as the pack says', () => {
  const table = readFermentCsv(text('data/raw/20260308T080000Z-pear-juice.csv'));
  if (!table.ok) throw new Error(table.error.kind);
  const verdict = judgeFerment(table.value.readings, { volumeMl: 1000, sugarG: 130 });
  const [head = [], first = []] = rows('data/runs.csv');
  const of = (name: string) => first[head.indexOf(name)];
  expect([of('state'), verdict.state]).toEqual(['finished', 'finished']);
  expect(Math.abs(Number(of('strength_abv')) - (verdict.strengthAbv?.value ?? 0))).toBeLessThan(
    0.02,
  );
});

test('no note leaves the laboratory, and nothing that was withdrawn is judged', () => {
  for (const [name, bytes] of Object.entries(files)) {
    expect(strFromU8(bytes), name).not.toMatch(/Kim Example|misread/);
  }
  const [head = [], ...entries] = rows('data/readings.csv');
  const stands = head.indexOf('stands');
  expect(entries.filter((row) => row[stands] === 'no')).toHaveLength(2);
  expect(rows('data/raw/20260309T090000Z-pear-juice-second-group.csv')).toHaveLength(1 + 10);
});

test('it says the cautions of ferments, what each file is, and the meaning of every column', () => {
  const readMe = text('README.txt');
  for (const caution of cautionsAt('ferment')) expect(readMe).toContain(cautionWords(caution));
  expect(readMe).toContain('  strength_abv [%{vol}]: Strength by the log, best value');
  expect(readMe).toContain('20260308T080000Z  Pear juice  (finished)');
  for (const name of Object.keys(files)) {
    if (name !== 'README.txt' && name !== 'datapackage.json') expect(readMe).toContain(name);
  }
});

test('it holds report, workbook, pictures, worksheets of both levels with keys, and the ferments over one another', () => {
  const names = Object.keys(files);
  for (const wanted of [
    'report.pdf',
    'report.docx',
    'workbook.xlsx',
    'figures/20260308T080000Z-pear-juice-1-week.svg',
    'figures/20260308T080000Z-pear-juice-2-strength.png',
    'figures/20260308T080000Z-pear-juice-3-sugar.svg',
    'figures/runs-over-one-another.svg',
    'worksheets/20260308T080000Z-pear-juice-school.pdf',
    'worksheets/all-groups-undergraduate.pdf',
    'marking/20260308T080000Z-pear-juice-key.pdf',
    'notebooks/start-python.ipynb',
  ]) {
    expect(names).toContain(wanted);
  }
});
