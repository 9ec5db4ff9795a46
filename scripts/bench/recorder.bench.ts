/**
 * The run log beside SQLite (the system's `sqlite3` program, write-ahead log, full sync) with the same
 * readings on the same disk, and what a week at 1 Hz costs. Ratios, so the computer does not matter.
 *
 * Usage: npx tsx scripts/bench/recorder.bench.ts
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { createRunLibrary, nodeFileLayer, type RunLibrary, systemClock } from '#main';
import { isEntryPoint } from '../checks/is-entry-point.ts';
import { writeSyntheticRun } from './synthetic-run.ts';

const syncedRecords = 400;
const batchedRecords = 40_000;
const recordsPerSync = 100;
const weekS = 7 * 24 * 3600;

interface Timing {
  readonly seconds: number;
}

async function timed(work: () => Promise<unknown> | unknown): Promise<Timing> {
  const from = performance.now();
  await work();
  return { seconds: (performance.now() - from) / 1000 };
}

const table =
  'CREATE TABLE reading(time_s REAL, channel TEXT, value REAL, unit TEXT, quality TEXT);';
const durable = 'PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;';

function insert(second: number): string {
  return `INSERT INTO reading VALUES(${second}.125,'head',${78 + (second % 16) / 16},'°C','good');`;
}

function sqlite(database: string, script: string): string {
  const run = spawnSync('sqlite3', ['-batch', database], {
    input: script,
    encoding: 'utf8',
    maxBuffer: 1e9,
  });
  if (run.error !== undefined) throw new Error('sqlite3 is needed: apt-get install sqlite3');
  if (run.status !== 0) throw new Error(run.stderr);
  return run.stdout;
}

function sqliteRows(database: string): readonly unknown[] {
  const text = sqlite(database, 'SELECT * FROM reading ORDER BY rowid;');
  return text
    .trimEnd()
    .split('\n')
    .map((line) => {
      const [timeS, channel, value, unit, quality] = line.split('|');
      return { timeS: Number(timeS), channel, value: Number(value), unit, quality };
    });
}

async function wholeRun(library: RunLibrary, runId: string): Promise<number> {
  const run = await library.whole(runId);
  if (!run.ok) throw new Error(JSON.stringify(run.error));
  return run.value.inputs.length;
}

export async function run(): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), 'still-head-bench-'));
  try {
    await againstSqlite(folder);
    await aWeek(folder);
    await thousandsOfRuns(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function againstSqlite(folder: string): Promise<void> {
  const oneEach = await timed(() => writeSyntheticRun(folder, 'each', syncedRecords, 1));
  const script = `${durable}${table}${Array.from({ length: syncedRecords }, (_, s) => insert(s)).join('\n')}`;
  const sqliteEach = await timed(() => sqlite(path.join(folder, 'each.db'), script));
  report('append, sync after each', syncedRecords, oneEach, sqliteEach);

  const batches = await timed(() =>
    writeSyntheticRun(folder, 'batched', batchedRecords, recordsPerSync),
  );
  const batched: string[] = [durable, table];
  for (let start = 0; start < batchedRecords; start += recordsPerSync) {
    const rows = Array.from({ length: recordsPerSync }, (_, index) => insert(start + index));
    batched.push('BEGIN;', ...rows, 'COMMIT;');
  }
  const database = path.join(folder, 'batched.db');
  const sqliteBatches = await timed(() => sqlite(database, batched.join('\n')));
  report(`append, sync every ${recordsPerSync}`, batchedRecords, batches, sqliteBatches);

  // Once to warm up: a program that opens runs has been running for a while.
  await wholeRun(libraryOf(folder), 'batched');
  const open = await timed(() => wholeRun(libraryOf(folder), 'batched'));
  const sqliteOpen = await timed(() => sqliteRows(database));
  report('open and read all', batchedRecords, open, sqliteOpen);
  const sizes = [path.join(folder, 'batched', 'run.jsonl'), database].map((f) => statSync(f).size);
  console.log(`  size: ${((sizes[0] ?? 0) / (sizes[1] ?? 1)).toFixed(2)} × the database's`);
}

function report(what: string, records: number, ours: Timing, sqlites: Timing): void {
  const ratio = sqlites.seconds / ours.seconds;
  const perS = Math.round(records / ours.seconds);
  console.log(`  ${what}: ${ratio.toFixed(2)} × SQLite's speed (${perS} records/s here)`);
}

function libraryOf(folder: string): RunLibrary {
  const setup = { files: nodeFileLayer, clock: systemClock, mayWrite: () => true };
  return createRunLibrary({ ...setup, runsFolder: folder });
}

async function aWeek(folder: string): Promise<void> {
  await writeSyntheticRun(folder, 'week', weekS, 100_000);
  const megabytes = statSync(path.join(folder, 'week', 'run.jsonl')).size / 1e6;
  const before = process.memoryUsage().rss;
  const summarising = await timed(() => libraryOf(folder).summary('week'));
  const page = await timed(() => libraryOf(folder).page('week', 0));
  const whole = await timed(() => wholeRun(libraryOf(folder), 'week'));
  const grownMb = (process.memoryUsage().rss - before) / 1e6;
  console.log(
    `  a week at 1 Hz: ${megabytes.toFixed(0)} MB; summary from the log ${summarising.seconds.toFixed(2)} s, ` +
      `first page ${page.seconds.toFixed(3)} s, all ${weekS} readings ${whole.seconds.toFixed(2)} s, ` +
      `memory +${grownMb.toFixed(0)} MB`,
  );
}

async function thousandsOfRuns(folder: string): Promise<void> {
  const library = path.join(folder, 'library');
  const count = 3000;
  for (let number = 0; number < count; number += 1) {
    await writeSyntheticRun(library, `run-${number}`, 20, 100_000);
  }
  const first = await timed(() => libraryOf(library).list());
  const again = await timed(() => libraryOf(library).list());
  const plain = await timed(() => {
    for (const name of readdirSync(library)) statSync(path.join(library, name, 'run.jsonl'));
  });
  console.log(
    `  ${count} runs listed in ${again.seconds.toFixed(2)} s (first time ${first.seconds.toFixed(2)} s), ` +
      `${(again.seconds / plain.seconds).toFixed(1)} × a plain look at each file`,
  );
}

if (isEntryPoint(import.meta.url)) await run();
