/**
 * Taking in a table of two million rows, and reading it for a replay: seconds of processor and clock, and the most memory. The table is two days
 * of a logger at ten readings a second.
 *
 * Usage: npx tsx scripts/bench/take-in.bench.ts [ROWS]
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { createRunLibrary, importRun, nodeFileLayer, systemClock } from '#main';
import { createMonitor, defaultRunSettings } from '#shared-core';
import { tidyMemory } from '../../main/session/desk/tidy-memory.ts';
import { isEntryPoint } from '../checks/is-entry-point.ts';

export async function run(rows = 2_000_000): Promise<void> {
  // As the process does that takes tables in.
  tidyMemory();
  const runsFolder = mkdtempSync(path.join(tmpdir(), 'still-head-bench-'));
  const library = createRunLibrary({
    files: nodeFileLayer,
    clock: systemClock,
    runsFolder,
    mayWrite: () => true,
  });
  const content = table(rows);
  const restedMb = process.memoryUsage().rss / 1e6;
  try {
    const taken = await timed(`Taking in ${rows} rows`, async () => {
      const answer = await importRun(
        {
          library,
          files: nodeFileLayer,
          clock: systemClock,
          mayWrite: () => true,
          runsFolder,
          createMonitor,
          app: { version: 'bench', modelVersion: 'bench' },
        },
        {
          content,
          encoding: 'auto',
          mapping: null,
          settings: { ...defaultRunSettings, attentionCheckS: null },
          startedAtIso: null,
        },
      );
      if (!answer.ok) throw new Error(JSON.stringify(answer.error));
      return answer.value;
    });
    await timed('Summary of it', () => library.summary(taken.runId));
    await timed('Reading it page by page for a replay', async () => {
      for (let from: number | null = 0; from !== null; ) {
        const page = await library.page(taken.runId, from);
        if (!page.ok) throw new Error(JSON.stringify(page.error));
        from = page.value.nextIndex;
      }
    });
    const mostMb = process.resourceUsage().maxRSS / 1e3;
    console.log(
      `  at most ${mostMb.toFixed(0)} MB, of them ${restedMb.toFixed(0)} MB before it began`,
    );
  } finally {
    rmSync(runsFolder, { recursive: true });
  }
}

async function timed<T>(what: string, act: () => Promise<T>): Promise<T> {
  const since = process.cpuUsage();
  const begunMs = performance.now();
  const answer = await act();
  const { user, system } = process.cpuUsage(since);
  console.log(
    `${what}: ${((user + system) / 1e6).toFixed(1)} s of processor, ${((performance.now() - begunMs) / 1000).toFixed(1)} s by the clock, ` +
      `at most ${(process.resourceUsage().maxRSS / 1e3).toFixed(0)} MB so far`,
  );
  return answer;
}

const longestRowBytes = 20;

/** Warm-up, plateau and tail, with the last digit of a probe; written into bytes row by row, so that the table takes no more memory than a file does. */
function table(rows: number): Uint8Array {
  const encoder = new TextEncoder();
  const bytes = new Uint8Array(longestRowBytes * (rows + 1));
  let length = 0;
  const write = (line: string) => {
    length += encoder.encodeInto(line, bytes.subarray(length)).written;
  };
  write('time_s,head_degC');
  for (let row = 0; row < rows; row += 1) {
    const share = row / rows;
    const risen = share < 0.1 ? 20 + 584 * share : share < 0.7 ? 78.4 : 78.4 + 60 * (share - 0.7);
    write(`\n${(row / 10).toFixed(1)},${(risen + ((row * 7919) % 13) / 160).toFixed(2)}`);
  }
  return bytes.slice(0, length);
}

if (isEntryPoint(import.meta.url)) await run(Number(process.argv[2] ?? 2_000_000));
