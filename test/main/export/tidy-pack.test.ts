import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { nodeFileLayer, writePack } from '#main';
import { csvDialects, parseCsv } from '#shared-core';
import { findTool, systemTools } from '../../../scripts/testing/system-tools.ts';
import { packRequest } from './support/pear-pack.ts';

const packMinutes = 180_000;
const folder = mkdtempSync(path.join(tmpdir(), 'still-head-tidy-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let written: readonly string[] = [];
const text = (name: string) => readFileSync(path.join(folder, name), 'utf8');

/** A table by its columns' names. */
function rowsOf(name: string): readonly Readonly<Record<string, string>>[] {
  const [titles, ...rows] = [...parseCsv(text(name), csvDialects.csv.delimiter)];
  return rows.map(({ cells }) =>
    Object.fromEntries((titles?.cells ?? []).map((title, index) => [title, cells[index] ?? ''])),
  );
}

beforeAll(async () => {
  const request = packRequest();
  const [first, ...others] = request.runs;
  if (first === undefined) throw new Error('no run');
  // A pot probe beside the head, every ten seconds.
  const pot = first.run.inputs.flatMap((input) =>
    input.kind === 'reading' && input.timeS % 10 === 0
      ? [{ ...input, channel: 'pot', value: 50 + input.timeS / 200 }]
      : [],
  );
  const inputs = [...first.run.inputs, ...pot].sort((a, b) => a.timeS - b.timeS);
  const runs = [{ ...first, run: { ...first.run, inputs } }, ...others];
  const pack = await writePack({ ...request, runs, outDir: folder, files: nodeFileLayer });
  if (!pack.ok) throw new Error(pack.error.message);
  written = pack.value;
}, packMinutes);

describe('the tables of a pack', () => {
  test('have each reading in one row, of every run and channel', () => {
    const readings = rowsOf('data/readings.csv');
    expect(new Set(readings.map(({ run_id: id, channel }) => `${id} ${channel}`))).toEqual(
      new Set(['20260318-0915 head', '20260318-0915 pot', '20260319T100000Z head']),
    );
  });

  test('have the pot beside the head in the means, and in those of all runs', () => {
    const stem = written.find((name) => /^data\/processed\/.*0915/.test(name)) ?? '';
    const at = rowsOf(stem).filter(({ pot_degC: pot }) => pot !== '');
    expect(at.length).toBeGreaterThan(400);
    for (const { time_s: timeS, pot_degC: pot } of at) {
      expect(Number(pot)).toBeCloseTo(50 + (Number(timeS) - 0.5) / 200, 2);
    }
    expect(rowsOf('data/all-runs.csv')[0]).toHaveProperty('pot_degC');
  });

  test('have each mark in one row, and no note’s words', () => {
    const marks = rowsOf('data/marks.csv').filter(({ run_id: id }) => id === '20260318-0915');
    expect(marks.map(({ mark, made, stands }) => `${mark} ${made} ${stands}`)).toEqual([
      'heat-on during yes',
      'heat-eased during yes',
      'receiver-changed during yes',
      'note during yes',
      'receiver-changed during yes',
      'heat-off during yes',
      'volume-read during yes',
    ]);
    expect(text('data/marks.csv')).not.toMatch(/smells of pear|HYPERLINK/);
  });

  test('have each measurement in one row with its standard uncertainty', () => {
    const measured = rowsOf('data/measurements.csv').filter(
      ({ run_id: id }) => id === '20260318-0915',
    );
    const of = new Set(measured.map((row) => row.of));
    expect(of).toEqual(new Set(['air', 'charge', 'cut 1', 'cut 2', 'cut 3', 'residue', 'sugar']));
    expect(measured.filter(({ standard_uncertainty: u }) => !(Number(u) > 0))).toEqual([]);
  });

  test('are described with keys that hold, sources and a licence', () => {
    const { resources, sources, licenses } = z
      .object({
        sources: z.array(z.object({ title: z.string() })),
        licenses: z.array(z.object({ name: z.string() })),
        resources: z.array(
          z.object({
            name: z.string(),
            path: z.string(),
            schema: z.object({
              primaryKey: z.array(z.string()).optional(),
              foreignKeys: z
                .array(z.object({ reference: z.object({ resource: z.string() }) }))
                .optional(),
            }),
          }),
        ),
      })
      .parse(JSON.parse(text('datapackage.json')));
    expect([sources.length, licenses.length]).toEqual([3, 1]);
    const names = new Set(resources.map(({ name }) => name));
    const keyed = resources.filter(({ schema }) => schema.primaryKey !== undefined);
    expect(keyed.length).toBeGreaterThan(3);
    for (const { path: file, schema } of keyed.filter(({ path: at }) => at.startsWith('data/'))) {
      const keys = rowsOf(file).map((row) => schema.primaryKey?.map((key) => row[key]).join(' '));
      expect(new Set(keys).size).toBe(keys.length);
    }
    const targets = resources.flatMap(({ schema }) =>
      (schema.foreignKeys ?? []).map(({ reference }) => reference.resource),
    );
    expect(targets.length).toBeGreaterThan(10);
    expect(targets.every((name) => names.has(name))).toBe(true);
    const runIds = new Set(rowsOf('data/runs.csv').map(({ run_id: id }) => id));
    for (const { path: file, schema } of resources) {
      if (schema.foreignKeys === undefined || !file.startsWith('data/')) continue;
      expect(rowsOf(file).every(({ run_id: id }) => runIds.has(id ?? ''))).toBe(true);
    }
  });

  test('have the results of the class with their spread, over the runs that have them', () => {
    const compared = rowsOf('data/comparison.csv').map(({ plateau_degC: plateau }) =>
      Number(plateau),
    );
    const rows = new Map(rowsOf('data/class.csv').map((row) => [row.quantity, row]));
    const [a = 0, b = 0] = compared;
    expect(rows.get('plateau_degC')).toMatchObject({ unit: 'Cel', runs: '2' });
    expect(Number(rows.get('plateau_degC')?.mean)).toBeCloseTo((a + b) / 2, 3);
    expect(Number(rows.get('plateau_degC')?.standard_deviation)).toBeCloseTo(
      Math.abs(a - b) / Math.SQRT2,
      3,
    );
    // Marks give both runs volumes; only the first has a strength of its residue.
    expect(rows.get('ethanol_closure')).toMatchObject({ runs: '1', standard_deviation: '' });
  });

  test('have every column explained in README.txt', () => {
    const readMe = text('README.txt');
    for (const name of written.filter((file) => /^data\/.*\.csv$/.test(file))) {
      const [titles] = [...parseCsv(text(name), csvDialects.csv.delimiter)];
      for (const title of titles?.cells ?? [])
        expect(readMe).toMatch(new RegExp(`^ {2}${title}( \\[|:)`, 'm'));
    }
  });
});

describe('the notebooks', () => {
  const notebookSchema = z.object({
    nbformat: z.literal(4),
    cells: z.array(z.object({ cell_type: z.string(), source: z.array(z.string()) })),
  });
  const pythonOf = () =>
    notebookSchema
      .parse(JSON.parse(text('notebooks/start-python.ipynb')))
      .cells.filter(({ cell_type: type }) => type === 'code')
      .map(({ source }) => source.join(''))
      .join('\n');
  const rOf = () =>
    [...text('notebooks/start-r.Rmd').matchAll(/```\{r\}\n([\s\S]*?)```/g)]
      .map(([, code]) => code)
      .join('\n');

  test('name only files and columns that the pack has', () => {
    const columns = new Set(
      written
        .filter((name) => /^data\/.*\.csv$/.test(name))
        .flatMap((name) => Object.keys(rowsOf(name)[0] ?? {})),
    );
    for (const code of [pythonOf(), rOf()]) {
      const files = [...code.matchAll(/"([\w-]+\.csv)"/g)].map(([, name]) => name);
      expect(files.length).toBeGreaterThan(3);
      for (const name of files) expect(written).toContain(`data/${name}`);
      const quoted = [...code.matchAll(/\["(\w+)"\]|(?<=[[(,] ?)"(\w+)"(?=[,)\]])/g)];
      const bare = [...code.matchAll(/\b\w+_(?:s|degC|mL|id)\b/g)];
      const named = [
        ...quoted.map(([, one, other]) => one ?? other),
        ...bare.map(([word]) => word),
      ];
      expect(named.length).toBeGreaterThan(8);
      for (const name of named)
        if (!/^(processed|data|\.\.)$/.test(name ?? '')) expect(columns).toContain(name);
    }
  });

  // A computer without the interpreter fails here, as it fails without a browser: `npm test` says what to install.
  test.each([
    { name: 'Python', program: 'python3', code: pythonOf },
    { name: 'R', program: 'Rscript', code: rOf },
  ])(
    'run on the pack as it is in $name',
    async ({ program, code }) => {
      const tool = systemTools.find((one) => one.program === program);
      if (tool === undefined) throw new Error(`${program} is no tool of the checks.`);
      const run = (command: string, words: readonly string[]) =>
        spawnSync(command, words, {
          cwd: path.join(folder, 'notebooks'),
          encoding: 'utf8',
          env: { ...process.env, MPLBACKEND: 'Agg' },
        });
      const found = await findTool(
        tool,
        process.env.PATH ?? '',
        async (command, proof) => run(command, proof).status === 0,
      );
      const file = path.join(folder, 'notebooks', `run-${program}`);
      writeFileSync(file, code());
      const { status, stderr } = run(found ?? program, [file]);
      rmSync(file);
      expect({ status, failed: status === 0 ? '' : stderr }).toEqual({ status: 0, failed: '' });
    },
    packMinutes,
  );
});
