/**
 * Time to write ten hours at ten readings a second (360 000 rows) to disk as CSV, beside a plain join of the same
 * numbers; then the raw workbook, with the most memory it took.
 *
 * Usage: npx tsx scripts/bench/export.bench.ts
 */
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { nodeFileLayer } from '#main';
import { createRandom, type RunInput, writeReadingsCsv } from '#shared-core';
import { replaceFileStream } from '../../main/export/pack/replace-file-stream.ts';
import { writeWorkbook } from '../../main/export/workbook/write-workbook.ts';
import { isEntryPoint } from '../checks/is-entry-point.ts';

const count = 360_000;

export async function run(): Promise<void> {
  const random = createRandom('export bench');
  const inputs = Array.from(
    { length: count },
    (_, index): RunInput => ({
      kind: 'reading',
      timeS: index / 10,
      channel: 'head',
      value: Math.round(16 * (78.2 + 0.1 * random.normal())) / 16,
      unit: '°C',
      quality: 'good',
    }),
  );
  const folder = mkdtempSync(path.join(tmpdir(), 'still-head-bench-'));
  const target = (name: string) => path.join(folder, name);
  try {
    const plain = await median(async () => {
      const rows = inputs.map((input) =>
        input.kind === 'reading' ? `${input.timeS},${input.value},${input.quality},` : '',
      );
      writeFileSync(target('plain.csv'), rows.join('\r\n'));
    });
    const table = { inputs, stages: null, endS: count / 10 };
    const whole = await median(async () => {
      writeFileSync(target('whole.csv'), [...writeReadingsCsv(table, 'csv')].join(''));
    });
    const streamed = await median(async () => {
      const pieces = writeReadingsCsv(table, 'csv');
      const written = await replaceFileStream(nodeFileLayer, target('streamed.csv'), pieces);
      if (!written.ok) throw new Error(written.error.message);
    });
    console.log(`CSV of ${count.toLocaleString('en')} readings on disk`);
    report('plain join of the same numbers', plain, plain);
    report('CSV with quoting and neutralised formulas, at once', whole, plain);
    report('the same streamed, synced, renamed, giving way to a recording', streamed, plain);
    const bytes = statSync(target('streamed.csv')).size;
    console.log(`  ${(bytes / 1e6).toFixed(1)} MB; ${(streamed / 1000).toFixed(2)} s`);
    await workbook(inputs, target('readings.xlsx'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function workbook(inputs: readonly RunInput[], target: string): Promise<void> {
  const before = process.memoryUsage().rss;
  let most = before;
  async function* watched(pieces: AsyncIterable<Uint8Array>) {
    for await (const piece of pieces) {
      most = Math.max(most, process.memoryUsage().rss);
      yield piece;
    }
  }
  const started = performance.now();
  const pieces = writeWorkbook({
    title: 'Bench',
    createdMs: 0,
    sheets: [
      {
        name: 'Readings',
        columns: [
          { title: 'time_s', type: 'number' },
          { title: 'head_degC', type: 'number' },
          { title: 'quality', type: 'text' },
        ],
        rows: {
          *[Symbol.iterator]() {
            for (const input of inputs) {
              if (input.kind === 'reading') yield [input.timeS, input.value, input.quality];
            }
          },
        },
      },
    ],
  });
  await replaceFileStream(nodeFileLayer, target, watched(pieces));
  const seconds = (performance.now() - started) / 1000;
  const megabytes = (statSync(target).size / 1e6).toFixed(1);
  console.log(
    `Workbook of the same rows: ${seconds.toFixed(2)} s, ${megabytes} MB, ` +
      `${((most - before) / 1e6).toFixed(0)} MB more memory than before at the most`,
  );
}

function report(name: string, ms: number, plain: number): void {
  console.log(
    `  ${name.padEnd(62)} ${ms.toFixed(0).padStart(6)} ms   × ${(ms / plain).toFixed(2)}`,
  );
}

/** Median of three passes [ms]. */
async function median(of: () => Promise<void>): Promise<number> {
  const times: number[] = [];
  for (let pass = 0; pass < 3; pass++) {
    const started = performance.now();
    await of();
    times.push(performance.now() - started);
  }
  return times.sort((a, b) => a - b)[1] ?? Number.NaN;
}

if (isEntryPoint(import.meta.url)) await run();
