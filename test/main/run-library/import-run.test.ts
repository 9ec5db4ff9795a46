import { readdir } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import {
  createRunLibrary,
  emptyReport,
  type FileLayer,
  type ImportRequest,
  importRun,
  nodeFileLayer,
  readRunLog,
} from '#main';
import {
  createMonitor,
  defaultRunSettings,
  inputsOfRecord,
  type LogRecord,
  type MonitorChange,
  type RunInput,
} from '#shared-core';
import { failingFiles } from '../support/failing-files.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temperatureC } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

async function setUp(files: FileLayer = nodeFileLayer, mayWrite = true, create = createMonitor) {
  const runsFolder = await temporaryFolder();
  const { clock } = createManualTime();
  const given = { files, clock, runsFolder, mayWrite: () => mayWrite };
  const app = { version: '0.7.0', modelVersion: '12' };
  const setup = { ...given, library: createRunLibrary(given), createMonitor: create, app };
  const take = (table: string, says: Partial<ImportRequest> = {}) =>
    importRun(setup, {
      content: Buffer.from(table),
      encoding: 'auto',
      mapping: null,
      settings: defaultRunSettings,
      startedAtIso: null,
      ...says,
    });
  /** The same, of a table that is taken; answers the records of its run too. */
  async function taken(table: string, says: Partial<ImportRequest> = {}) {
    const answer = await take(table, says);
    if (!answer.ok) throw new Error(JSON.stringify(answer.error));
    const { runId } = answer.value;
    const records: LogRecord[] = [];
    const report = emptyReport();
    for await (const some of readRunLog(nodeFileLayer, path.join(runsFolder, runId), report)) {
      records.push(...some);
    }
    expect(report).toEqual(emptyReport());
    const header = records.flatMap(({ body }) => (body.kind === 'header' ? [body.header] : []))[0];
    if (header === undefined) throw new Error('no header');
    const known = await setup.library.summary(runId);
    if (!known.ok) throw new Error(JSON.stringify(known.error));
    return { ...answer.value, records, header, known: known.value };
  }
  return { runsFolder, clock, take, taken, library: setup.library };
}

const rows = (count: number, everyS = 1) =>
  Array.from({ length: count }, (_, row) => `${row * everyS},${temperatureC(row * everyS)},\n`);
const table = (...lines: readonly string[]) => `time_s,head_degC,marks\n${lines.join('')}`;

test('a monitor that fails is told of once, and costs no reading and no mark', async () => {
  const { taken } = await setUp(nodeFileLayer, true, () => ({
    ...createMonitor(defaultRunSettings),
    push() {
      throw new Error('a bug');
    },
  }));
  const marked = rows(1700);
  marked.splice(899, 0, '898,,receiver-changed volumeMl=35\n');
  const { records } = await taken(table(...marked));
  const failures = records.filter(({ body }) => body.kind === 'monitor-failed');
  expect(failures.map(({ body }) => body)).toEqual([
    { kind: 'monitor-failed', timeS: expect.any(Number), message: 'a bug' },
  ]);
  expect(records.flatMap((record) => inputsOfRecord(record))).toHaveLength(1701);
});

test('the record holds what a recording of the table would: readings, marks, the monitor’s conclusions, an end', async () => {
  const { taken, runsFolder } = await setUp();
  const marked = rows(1700);
  marked.splice(1, 0, '0,,heat-on\n');
  marked.splice(900, 0, '898,,receiver-changed volumeMl=35\n');
  const { runId, records, header } = await taken(table(...marked), {
    startedAtIso: '2026-03-04T09:00:00.000Z',
  });
  expect(header).toEqual({
    format: 'still-head-run-log',
    version: 1,
    runId,
    startedAtIso: '2026-03-04T09:00:00.000Z',
    settings: defaultRunSettings,
    appVersion: '0.7.0',
    modelVersion: '12',
    timeScale: 1,
    rehearsal: false,
    source: null,
    origin: 'imported',
  });
  expect(records.map(({ stamp }) => stamp.seq)).toEqual(records.map((_, index) => index));
  const expected: RunInput[] = rows(1700).map((_, timeS) => ({
    kind: 'reading',
    timeS,
    channel: 'head',
    value: temperatureC(timeS),
    unit: '°C',
    quality: 'good',
  }));
  expected.splice(1, 0, { kind: 'mark', timeS: 0, markId: 1, mark: { type: 'heat-on' } });
  expected.splice(900, 0, {
    kind: 'mark',
    timeS: 898,
    markId: 2,
    mark: { type: 'receiver-changed', volumeMl: 35 },
  });
  expect(records.flatMap(inputsOfRecord)).toEqual(expected);
  const monitor = createMonitor(defaultRunSettings);
  for (const input of expected) monitor.push(input);
  monitor.advanceTo(1699);
  const concluded: readonly MonitorChange[] = monitor.takeChanges();
  expect(concluded.length).toBeGreaterThan(2);
  const kept = records.flatMap(({ body }) => (body.kind === 'change' ? [body.change] : []));
  expect(kept).toEqual(JSON.parse(JSON.stringify(concluded)));
  expect(records.at(-1)?.body).toEqual({ kind: 'end', timeS: 1699, how: 'clean' });
  expect((await readdir(path.join(runsFolder, runId))).sort()).toEqual([
    'labels.jsonl',
    'run.jsonl',
    'summary.json',
  ]);
});

test('readings stand at most 400 to a record, and what the monitor concludes of them comes after them', async () => {
  const { taken } = await setUp();
  const sizesOf = (records: readonly LogRecord[]) =>
    records.flatMap(({ body }) => (body.kind === 'readings' ? [body.readings.length] : []));
  // No record of none.
  expect(sizesOf((await taken(table(...rows(800)))).records)).toEqual([400, 400]);
  const { records } = await taken(table(...rows(1001)));
  expect(sizesOf(records)).toEqual([400, 400, 201]);
  let readUpToS = 0;
  for (const { body } of records) {
    if (body.kind === 'readings') readUpToS = body.readings.at(-1)?.[0] ?? 0;
    if (body.kind === 'change') expect(body.change.timeS).toBeLessThanOrEqual(readUpToS);
  }
});

test('another run gets its turn between any two records', async () => {
  let turn = 0;
  let isOver = false;
  const count = () => {
    turn += 1;
    if (!isOver) setImmediate(count);
  };
  const turns: number[] = [];
  const createAppend: FileLayer['createAppend'] = async (at) => {
    const opened = await nodeFileLayer.createAppend(at);
    if (!opened.ok || path.basename(at) !== 'run.jsonl') return opened;
    const write: typeof opened.value.write = (bytes) => {
      turns.push(turn);
      return opened.value.write(bytes);
    };
    return { ok: true, value: { ...opened.value, write } };
  };
  const { taken } = await setUp({ ...nodeFileLayer, createAppend });
  count();
  const { records } = await taken(table(...rows(1001)));
  isOver = true;
  expect(turns.length).toBe(records.length);
  expect(new Set(turns).size).toBe(turns.length);
});

test('a run began when the person says, else when the file’s dates say, in the zone of this computer where they name none', async () => {
  const { taken } = await setUp();
  const dated = (zone: string) =>
    `time,head_degC\n2026-03-04 09:10:11${zone},20\n2026-03-04 09:10:41${zone},21\n`;
  const began = async (content: string, startedAtIso: string | null = null) =>
    (await taken(content, { startedAtIso })).header.startedAtIso;
  expect([
    await began(dated('Z')),
    await began(dated('+02:00')),
    await began(dated('')),
    await began(dated('Z'), '2020-01-01T00:00:00.000Z'),
    await began(table(...rows(3))),
  ]).toEqual([
    '2026-03-04T09:10:11.000Z',
    '2026-03-04T07:10:11.000Z',
    new Date(2026, 2, 4, 9, 10, 11).toISOString(),
    '2020-01-01T00:00:00.000Z',
    '',
  ]);
});

test('a slow logger’s pauses are no silence of its probe, and a longer patience that was asked for stays', async () => {
  const { taken } = await setUp();
  const settingsOf = async (everyS: number, silenceS: number) => {
    const { probe } = defaultRunSettings;
    const settings = { ...defaultRunSettings, probe: { ...probe, silenceS } };
    const { header } = await taken(table(...rows(5, everyS)), { settings });
    expect({ ...header.settings, probe }).toEqual(defaultRunSettings);
    expect({ ...header.settings.probe, silenceS: 0 }).toEqual({ ...probe, silenceS: 0 });
    return header.settings.probe.silenceS;
  };
  expect([await settingsOf(30, 5), await settingsOf(30, 300), await settingsOf(1, 5)]).toEqual([
    90, 300, 5,
  ]);
});

test('marks below the end of a table are kept as made after the run', async () => {
  const { taken, library } = await setUp();
  const after = '6,,run-ended\n6,,liquid-mass liquid=residue massG=310\n';
  const { runId, records } = await taken(table(...rows(5), after));
  expect(records.some(({ body }) => body.kind === 'mark')).toBe(false);
  const page = await library.page(runId, 0);
  expect(page.ok && page.value.lateMarks).toEqual([
    {
      kind: 'mark',
      timeS: 6,
      markId: 1,
      mark: { type: 'liquid-mass', liquid: 'residue', massG: 310 },
    },
  ]);
});

test('rows that could not be used are told by their line, two hundred of them, and then how many more there are', async () => {
  const { taken } = await setUp();
  const bad = (count: number) =>
    table(...rows(3), ...Array.from({ length: count }, () => '9,hot,\n'));
  const lineOf = (line: number) => `Line ${line}: "hot" in the column "head_degC" is not a number.`;
  const all = await taken(bad(200));
  const tooMany = await taken(bad(203));
  const told = Array.from({ length: 200 }, (_, place) => lineOf(place + 5));
  expect([all.rejectedRows, tooMany.rejectedRows]).toEqual([told, [...told, '… and 3 more.']]);
  expect((await taken(table(...rows(3)))).rejectedRows).toEqual([]);
  // Every sentence can be said in another language.
  expect(Object.keys(tooMany.wording ?? {})).toEqual(expect.arrayContaining(['… and 3 more.']));
});

test('a table that is none, and a folder that another program has, are refused and leave nothing behind', async () => {
  const none = await setUp();
  expect(await none.take('')).toEqual({
    ok: false,
    error: { kind: 'request-invalid', message: 'The file is empty.' },
  });
  const theirs = await setUp(nodeFileLayer, false);
  expect(await theirs.take(table(...rows(3)))).toEqual({
    ok: false,
    error: { kind: 'folder-in-use', path: theirs.runsFolder },
  });
  expect([await readdir(none.runsFolder), await readdir(theirs.runsFolder)]).toEqual([[], []]);
});

test('wherever the disk fails, the import is refused, no file stays open and no part of a run is left in the library', async () => {
  const content = table(
    ...rows(401),
    '402,,run-ended\n402,,liquid-mass liquid=residue massG=310\n',
  );
  const sound = failingFiles(-1);
  expect((await (await setUp(sound.files)).take(content)).ok).toBe(true);
  const operations = sound.done();
  expect(operations.length).toBeGreaterThan(15);
  for (const failure of ['refuses', 'takes half'] as const) {
    for (const [failAt, operation] of operations.entries()) {
      if (failure === 'takes half' && operation !== 'write') continue;
      const disk = failingFiles(failAt, failure);
      const { take, runsFolder } = await setUp(disk.files);
      const answer = await take(content);
      const kind = failure === 'refuses' ? 'folder-unavailable' : 'disk-full';
      expect([failAt, operation, answer]).toMatchObject([
        failAt,
        operation,
        { ok: false, error: { kind } },
      ]);
      expect(disk.stillOpen()).toBe(0);
      const { clock } = createManualTime();
      const files = nodeFileLayer;
      const next = createRunLibrary({ files, clock, runsFolder, mayWrite: () => true });
      expect(await next.list()).toEqual({ ok: true, value: [] });
    }
  }
});
