/**
 * How long a reading waits for the disk while the same services do their heaviest work: from the moment at which a probe wrote its line
 * to the moment at which another process finds its bytes in the log.
 *
 * Usage: npx tsx scripts/recorder-gaps.ts [ROWS-OF-THE-LARGE-IMPORT] [RUNS-IN-THE-PACK]
 *
 * With --goes-on [KILLS], the same of a run whose program is killed again and again, at any moment, and gone on with.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { contractLimits, defaultRunSettings } from '#shared-core';
import { linesPerKelvin, startCountingProbe } from './attack/counting-probe.ts';
import { startRecordingServices } from './gaps/recording-services.ts';
import { goingOnWords, measureGoingOn } from './gaps/run-that-goes-on.ts';
import { watchLog } from './gaps/watch-log.ts';
import { quantile } from './measuring/quantile.ts';

const isGoneOnWith = process.argv.includes('--goes-on');
const words = process.argv.slice(2).filter((word) => word !== '--goes-on');
const linesPerS = 20;
const dayRows = 36_000;

const folder = await mkdtemp(path.join(tmpdir(), 'gaps-'));
try {
  const [first, second] = words.map(Number);
  await (isGoneOnWith ? besideKills(first) : besideWork(first, second));
} finally {
  await rm(folder, { recursive: true, force: true });
}

async function besideKills(kills = 10): Promise<void> {
  const livesS = Array.from({ length: kills + 1 }, () => 2 + 6 * Math.random());
  const found = await measureGoingOn(folder, {
    linesPerS,
    livesS,
    killedAfterS: () => 0.1 * Math.random(),
    onLife: console.log,
  });
  console.log(goingOnWords(found));
}

async function besideWork(rows = 2_000_000, packed = 30): Promise<void> {
  const [short, ofDay, large] = [fileOf(5000), fileOf(dayRows), fileOf(rows)];
  const probe = startCountingProbe(linesPerS);
  const services = await startRecordingServices(folder);
  try {
    const runId = await services.record(probe.path);
    await pause(2000);
    const log = watchLog(path.join(folder, runId, 'run.jsonl'));

    await measured('nothing else', () => pause(10_000));
    const runIds: string[] = [];
    await measured(`${packed} imports of 5000 rows`, async () => {
      for (let run = 0; run < packed; run += 1) runIds.push(await takeIn(short));
    });
    await measured('the list of runs', () => services.ask('runs/list', {}));
    await measured(`a pack of ${packed} runs`, () =>
      services.ask('packs/make', { packId: 'gaps', runIds }),
    );
    const day = await measured('an import of 10 h', () => takeIn(ofDay));
    await measured('the reading of 10 h for a replay', () => readWhole(day));
    await measured(`an import of ${rows} rows`, () => takeIn(large));

    async function measured<T>(what: string, act: () => Promise<T>): Promise<T> {
      const from = probe.writtenS.length;
      await services.longestPieceMs();
      const begunMs = performance.now();
      const answer = await act();
      const tookS = (performance.now() - begunMs) / 1000;
      const to = probe.writtenS.length;
      const pieceMs = await services.longestPieceMs();
      await pause(3000);
      const waitsS = probe.writtenS
        .slice(from, to)
        .map((atS, index) => (log.seenS.get((from + index) / linesPerKelvin) ?? Number.NaN) - atS);
      const inMs = (share: number) => (1000 * quantile(waitsS, share)).toFixed(0);
      const missing = waitsS.filter(Number.isNaN).length;
      console.log(
        `${what}: took ${tookS.toFixed(1)} s; from probe to disk ${inMs(0.5)} ms (median), ${inMs(1)} ms (longest) of ${waitsS.length} lines, ${missing} missing; ` +
          `the services' longest piece of work ${pieceMs.toFixed(0)} ms`,
      );
      return answer;
    }
    log.stop();
  } finally {
    await services.close();
    probe.close();
  }

  /** Made before anything is measured: the watcher of the log lives in this process. */
  function fileOf(count: number): Buffer {
    const lines = Array.from(
      { length: count },
      (_, row) => `${row},${(20 + (60 * row) / count).toFixed(2)}`,
    );
    return Buffer.from(`time_s,head_c\n${lines.join('\n')}\n`);
  }

  async function takeIn(bytes: Buffer): Promise<string> {
    const { importId } = await services.ask('imports/begin', { bytes: bytes.length });
    for (let at = 0; at < bytes.length; at += contractLimits.pieceBytes) {
      const base64 = bytes.subarray(at, at + contractLimits.pieceBytes).toString('base64');
      await services.ask('imports/add', { importId, base64 });
    }
    const { runId } = await services.ask('imports/finish', {
      importId,
      encoding: 'auto',
      mapping: null,
      settings: defaultRunSettings,
    });
    return runId;
  }

  async function readWhole(runId: string): Promise<void> {
    let fromIndex: number | null = 0;
    while (fromIndex !== null) {
      const page: { readonly nextIndex: number | null } = await services.ask('runs/read', {
        runId,
        fromIndex,
      });
      fromIndex = page.nextIndex;
    }
    await services.ask('runs/changes', { runId });
  }
}
