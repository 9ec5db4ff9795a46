import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import {
  distillationsOrder,
  type FileLayer,
  nodeFileLayer,
  type PackProgress,
  packZip,
  writePack,
} from '#main';
import { fail, readReadingsCsv } from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { packRequest, pearPackRun } from './support/pear-pack.ts';

const packMinutes = 180_000;
const folder = mkdtempSync(path.join(tmpdir(), 'still-head-pack-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const request = packRequest();
const progress: PackProgress[] = [];
let written: readonly string[] = [];
let wasDescribed: boolean | null = null;
const read = (name: string) => readFileSync(path.join(folder, name));
const text = (name: string) => read(name).toString('utf8');

beforeAll(async () => {
  // What an earlier pack left behind.
  writeFileSync(path.join(folder, 'datapackage.json'), '{}');
  const onProgress = (step: PackProgress) => {
    progress.push(step);
    if (step.filesDone === 3) wasDescribed = existsSync(path.join(folder, 'datapackage.json'));
  };
  const pack = await writePack({ ...request, outDir: folder, files: nodeFileLayer, onProgress });
  if (!pack.ok) throw new Error(pack.error.message);
  written = pack.value;
}, packMinutes);

describe('a pack of two runs', () => {
  test('holds for every run both dialects raw and processed, figures, report, workbook and work sheets', () => {
    const kinds = (name: string) =>
      name.replace(/2026031[89][\w-]*?(-\d|-school|-undergraduate)?(?=-|\.)/, 'RUN');
    const onDisk = readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)));
    expect(onDisk.toSorted()).toEqual([...written].sort());
    expect(written).toHaveLength(79);
    expect(written.at(-1)).toBe('datapackage.json');
    expect(written.slice(0, -2)).toEqual(written.slice(0, -2).toSorted());
    expect(written.every((name) => /^[\w./-]+$/.test(name))).toBe(true);
    expect(new Set(written.map(kinds)).size).toBeGreaterThan(20);
  });

  test('has no description of an earlier pack while it is being written', () => {
    expect(wasDescribed).toBe(false);
  });

  test('tells its progress file by file up to the last', () => {
    expect(progress.map(({ filesDone }) => filesDone)).toEqual(
      Array.from({ length: written.length + 1 }, (_, index) => index),
    );
    expect(progress.every(({ filesTotal }) => filesTotal === written.length)).toBe(true);
  });

  test(
    'is a valid Tabular Data Package: descriptor, headers and every cell, by a general validator',
    async () => {
      // The reference implementation in JavaScript, with the published profiles inside.
      const { Package } = createRequire(import.meta.url)('datapackage');
      const descriptor = JSON.parse(text('datapackage.json'));
      const dataPackage = await Package.load(descriptor, { basePath: folder, strict: true });
      expect(dataPackage.valid).toBe(true);
      for (const resource of dataPackage.resources) {
        const rows = await resource.read({ keyed: true, cast: true });
        expect(rows.length, resource.name).toBeGreaterThan(0);
      }
      const [processed] = dataPackage.resources.filter(({ name }: { name: string }) =>
        name.startsWith('data-semicolon.processed'),
      );
      const rows = await processed.read({ keyed: true });
      // Row 300 is the 5 s reading at 1500 s, on the plateau; the clock stands at 09:40:00.
      expect(rows[300]).toMatchObject({
        time_s: 1500.5,
        stage: 'main-fraction',
      });
      expect(Math.abs(rows[300].head_degC - 78.3)).toBeLessThan(0.3);
    },
    packMinutes,
  );

  test('describes every CSV with its size, hash and units', () => {
    const { resources } = z
      .object({
        resources: z.array(
          z.object({
            path: z.string(),
            bytes: z.number(),
            hash: z.string(),
            schema: z.object({
              fields: z.array(z.object({ name: z.string(), unit: z.string().optional() })),
            }),
          }),
        ),
      })
      .parse(JSON.parse(text('datapackage.json')));
    expect(resources.map((resource) => resource.path)).toEqual(
      written.filter((name) => name.endsWith('.csv')),
    );
    for (const { path: name, bytes, hash } of resources) {
      expect(statSync(path.join(folder, name)).size).toBe(bytes);
      expect(`sha256:${createHash('sha256').update(read(name)).digest('hex')}`).toBe(hash);
    }
    const raw = resources.find(({ path: name }) => name.startsWith('data/raw/'));
    expect(raw?.schema.fields.find(({ name }) => name === 'head_degC')?.unit).toBe('Cel');
  });

  test('has one table of all runs and one to compare them by, with a name that no spreadsheet runs', () => {
    const rows = text('data/all-runs.csv').trimEnd().split('\r\n');
    const column = (index: number) => new Set(rows.slice(1).map((row) => row.split(',')[index]));
    expect(rows[0]).toMatch(/^run,run_id,kind,since_vapour_s,time_s,head_degC,/);
    expect([...column(0)]).toEqual(['1', '2']);
    expect([...column(1)]).toEqual(['20260318-0915', '20260319T100000Z']);
    const compared = text('data/comparison.csv').trimEnd().split('\r\n');
    expect(compared).toHaveLength(3);
    expect(compared[2]).toContain(`"'=1+1 & ""Zweiter Lauf"", grün"`);
    expect(text('data-semicolon/comparison.csv')).toMatch(/;99,4;/);
  });

  test('gives, read back from either dialect, the verdicts of the run itself', () => {
    const { run } = request.runs[0] ?? pearPackRun();
    const live = analyseRun(run.settings, run.inputs, run.endS);
    for (const dialect of ['data', 'data-semicolon']) {
      const [first = ''] = readdirSync(path.join(folder, dialect, 'raw')).sort();
      const back = readReadingsCsv(text(`${dialect}/raw/${first}`));
      if (!back.ok) throw new Error(back.error.kind);
      expect(back.value.rejectedRows).toEqual([]);
      expect(analyseRun(run.settings, back.value.inputs, back.value.endS)).toEqual(live);
    }
  });

  test('has one decimal sign in the dialect with decimal commas, in reasons and marks too', () => {
    const tables = written.filter((name) =>
      /^data-semicolon\/(raw\/.*|stages|calls)\.csv$/.test(name),
    );
    expect(tables.length).toBeGreaterThan(3);
    for (const name of tables) expect(text(name), name).not.toMatch(/\d\.\d/);
  });

  test('carries no note, no label text and no name of a person, in any file', () => {
    for (const name of written.filter((file) => !/\.(pdf|png|xlsx)$/.test(file))) {
      expect(text(name), name).not.toMatch(/Kim|Example stood|smells of pear/);
    }
    const workbook = unzipSync(read('workbook.xlsx'));
    for (const part of Object.values(workbook)) {
      expect(Buffer.from(part).toString('utf8')).not.toMatch(/Kim|smells of pear/);
    }
  });

  test('prints tagged PDFs with embedded fonts, and pictures as PNG at 288 dots an inch', () => {
    for (const name of written.filter((file) => file.endsWith('.pdf'))) {
      const pdf = read(name).toString('latin1');
      expect(pdf.startsWith('%PDF-')).toBe(true);
      expect(pdf.match(/\/FontFile2/g)?.length).toBeGreaterThanOrEqual(2);
      // Tagged, with its language: what assistive programs read.
      expect(pdf).toMatch(/\/Marked true/);
      expect(pdf).toMatch(/\/Lang \(en\)/);
      expect(pdf.match(/\/S \/H1\n/g)?.length).toBeGreaterThanOrEqual(1);
      // Every figure is there with its words.
      expect(pdf.match(/\/Alt /g)?.length ?? 0).toBe(pdf.match(/\/S \/Figure\n/g)?.length ?? 0);
    }
    const report = read('report.pdf').toString('latin1');
    for (const type of ['Figure', 'Table', 'TH', 'TD', 'L', 'LBody', 'Caption']) {
      expect(report, type).toMatch(new RegExp(`/S /${type}\\n`));
    }
    const png = read(written.find((file) => file.endsWith('1-temperature.png')) ?? '');
    // Width in the header chunk: 482 pt of 1/72 inch, 288 dots each inch.
    expect([png.subarray(1, 4).toString('latin1'), png.readUInt32BE(16)]).toEqual(['PNG', 1928]);
  });

  test('withholds answers from the worksheet: the marking sheet alone is longer by them', () => {
    const sheets = written.filter(
      (file) => /^worksheets\/.*\.pdf$/.test(file) && !file.includes('all-groups'),
    );
    expect(sheets.length).toBe(4);
    for (const sheet of sheets) {
      const marking = sheet.replace('worksheets/', 'marking/');
      expect(read(marking).length, marking).toBeGreaterThan(read(sheet).length);
    }
  });
});

test('a full disk leaves no half file and no description, and is reported', {
  timeout: packMinutes,
}, async () => {
  const target = await temporaryFolder();
  let room = 40_000;
  const files: FileLayer = {
    ...nodeFileLayer,
    async createAppend(name) {
      const opened = await nodeFileLayer.createAppend(name);
      if (!opened.ok) return opened;
      return {
        ok: true,
        value: {
          ...opened.value,
          write(bytes) {
            room -= bytes.length;
            if (room < 0) return fail({ kind: 'full', path: name, message: 'ENOSPC' });
            return opened.value.write(bytes);
          },
        },
      };
    },
  };
  const pack = await writePack({
    ...request,
    runs: request.runs.slice(0, 1),
    outDir: target,
    files,
  });
  expect(pack.ok ? null : pack.error.kind).toBe('full');
  const names = readdirSync(target, { recursive: true }).map(String);
  expect(names.filter((name) => name.endsWith('.part') || name === 'datapackage.json')).toEqual([]);
});

test('the ZIP for the window holds the same files, byte for byte', {
  timeout: packMinutes,
}, async () => {
  const { fileName, content } = await packZip(distillationsOrder(request));
  expect(fileName).toBe('20260318-0915-pear-juice-ferment-and-1-more.zip');
  const pieces: Uint8Array[] = [];
  for await (const piece of content) pieces.push(piece);
  const files = unzipSync(Buffer.concat(pieces));
  expect(Object.keys(files)).toEqual(written);
  for (const name of written)
    expect(Buffer.from(files[name] ?? []).equals(read(name)), name).toBe(true);
});
