import { readdirSync } from 'node:fs';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import {
  checkRuns,
  exportRunAsCsv,
  nodeFileLayer,
  type RunLibrary,
  segmentFile,
  segmentNumber,
  systemClock,
  writePack,
} from '#main';
import { createMonitor, modelVersion } from '#shared-core';
import { countedReadings, linesPerKelvin, startCountingProbe } from '../attack/counting-probe.ts';
import { quantile } from '../measuring/quantile.ts';
import { libraryToRead } from '../measuring/recorded-run.ts';
import { type Saved, startRecordingServices } from './recording-services.ts';
import { watchLog } from './watch-log.ts';

/** One program of several that recorded the same run, one after the other; all moments by the computer's monotonic clock [s]. */
interface Life {
  /** When its record was begun or gone on with. */
  readonly beganS: number;
  readonly killedS: number;
  readonly saved: readonly Saved[];
  readonly seenS: ReadonlyMap<number, number>;
}

/** The longest of some times [s], and how long after its program began to record it was [s]. */
interface Longest {
  readonly lastsS: number;
  readonly afterS: number;
}

/** What became of the lines that a probe wrote into a run whose program was killed again and again. */
export interface GoingOn {
  readonly kills: number;
  readonly sent: number;
  readonly recorded: number;
  /** Lines on record more than once, in whatever order. */
  readonly twice: number;
  /** Written while a program recorded, and on record nowhere. */
  readonly missing: number;
  /** Of those on their way into the record when a program was killed, how long before that the earliest was written [s]. */
  readonly missingBeforeKillS: number;
  /** The others: how long after its program said that it records each was written [s]. */
  readonly missingOtherwiseS: readonly number[];
  /** From when a program was killed until the next was heard [s], for each. */
  readonly closedS: readonly number[];
  /** From the moment a line was written until its bytes were seen in the log [s]. */
  readonly usualWaitS: number;
  readonly longestWait: Longest;
  readonly longestUnsaved: Longest;
  readonly files: number;
  /** Lines by each reader: the pages of a replay, the table, the pack, the check. */
  readonly inPages: number;
  readonly inTable: number;
  readonly inPack: number;
  readonly inCheck: number;
  readonly state: string;
}

export interface GoingOnPlan {
  readonly linesPerS: number;
  /** How long each program records before it is killed, and the last one before its run is stopped [s]. */
  readonly livesS: readonly number[];
  /** Before each program that goes on, another is killed so long after it began its file [s]. */
  readonly killedAfterS: () => number;
  readonly onLife: (text: string) => void;
}

const askSavedEveryMs = 100;
/** From a line on its way to the record: the batches of the serial process, and a busy computer [s]. */
const onTheWayS = 1;

/** Records a counting probe over a real pseudo-terminal on a real disk, in programs that are killed at any moment. */
export async function measureGoingOn(folder: string, plan: GoingOnPlan): Promise<GoingOn> {
  const probe = startCountingProbe(plan.linesPerS);
  const lives: Life[] = [];
  try {
    let runId: string | null = null;
    for (const [index, lifeS] of plan.livesS.entries()) {
      const number = index + 1;
      if (runId !== null) await killWhileGoingOn(folder, runId, plan.killedAfterS());
      const services = await startRecordingServices(folder);
      const askedS = systemClock.monotonicS();
      if (runId === null) runId = await services.record(probe.path);
      else await services.ask('run/continue', { runId });
      const beganS = systemClock.monotonicS();
      const log = watchLog(path.join(folder, runId, segmentFile(newestSegment(folder, runId))));
      const saved: Saved[] = [];
      const asking = setInterval(() => {
        void services.saved().then((answer) => saved.push(answer));
      }, askSavedEveryMs);
      await pause(1000 * lifeS);
      clearInterval(asking);
      const killedS = systemClock.monotonicS();
      const isLast = number === plan.livesS.length;
      if (isLast) {
        await pause(1000);
        await services.ask('run/stop', {});
        await services.close();
      } else await services.kill();
      await pause(50);
      log.stop();
      lives.push({ beganS, killedS, saved, seenS: log.seenS });
      plan.onLife(
        `program ${number}: ${isLast ? 'stopped' : 'killed'} after ${(killedS - beganS).toFixed(1)} s; it began to record within ${(beganS - askedS).toFixed(2)} s`,
      );
    }
    return await account(folder, runId ?? '', lives, probe.writtenS);
  } finally {
    probe.close();
  }
}

function newestSegment(folder: string, runId: string): number {
  return Math.max(
    1,
    ...readdirSync(path.join(folder, runId)).flatMap((name) => segmentNumber(name) ?? []),
  );
}

/** A program that is killed while it writes again what its record does not tell to be saved, or just before or after. */
async function killWhileGoingOn(folder: string, runId: string, afterS: number): Promise<void> {
  const services = await startRecordingServices(folder);
  const before = newestSegment(folder, runId);
  void services.ask('run/continue', { runId });
  while (newestSegment(folder, runId) === before) await pause(1);
  await pause(1000 * afterS);
  await services.kill();
}

async function account(
  runsFolder: string,
  runId: string,
  lives: readonly Life[],
  writtenS: readonly number[],
): Promise<GoingOn> {
  const library = libraryToRead(runsFolder);
  const whole = await library.whole(runId);
  if (!whole.ok) throw new Error(JSON.stringify(whole.error));
  const inPages = await linesInPages(library, runId);
  const table = await exportRunAsCsv(whole.value, 'csv', createMonitor);
  const readings = countedReadings(whole.value.inputs);
  const lines = new Set(readings.map(({ line }) => line));

  /** Of each program: its lines, and where the run's time began by the clock. */
  const parts = lives.map(({ beganS, killedS }) => {
    const own = [...writtenS.keys()].filter((line) => {
      const atS = writtenS[line] ?? 0;
      return atS > beganS && atS < killedS;
    });
    const zerosS = readings.flatMap(({ line, timeS }) => {
      const atS = writtenS[line] ?? 0;
      return atS > beganS && atS < killedS ? [atS - timeS] : [];
    });
    return { own, missing: own.filter((line) => !lines.has(line)), zeroS: quantile(zerosS, 0.5) };
  });
  const waits = lives.flatMap(({ beganS, seenS }) =>
    [...seenS].flatMap(([value, atS]) => {
      const wroteS = writtenS[Math.round(value * linesPerKelvin)] ?? Number.NaN;
      return wroteS > beganS ? [{ lastsS: atS - wroteS, afterS: wroteS - beganS }] : [];
    }),
  );
  const unsaved = lives.flatMap(({ beganS, saved }, index) => {
    const zeroS = parts[index]?.zeroS ?? Number.NaN;
    return saved.map(({ savedToS, atS }) => {
      const lastsS = atS - Math.max(beganS, zeroS + (savedToS ?? 0));
      return { lastsS, afterS: atS - beganS };
    });
  });
  const missing = lives.flatMap(({ beganS, killedS }, index) =>
    (parts[index]?.missing ?? []).map((line) => {
      const atS = writtenS[line] ?? 0;
      return { beforeKillS: killedS - atS, afterBeginningS: atS - beganS };
    }),
  );
  const onTheWay = missing.filter(({ beforeKillS }) => beforeKillS <= onTheWayS);
  const closedS = lives.slice(1).map(({ beganS }, index) => {
    const firstS = readings.map(({ line }) => writtenS[line] ?? 0).find((atS) => atS > beganS);
    return (firstS ?? Number.NaN) - (lives[index]?.killedS ?? Number.NaN);
  });
  const checks = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  const [check] = checks;
  return {
    kills: 2 * (lives.length - 1),
    sent: parts.reduce((sum, { own }) => sum + own.length, 0),
    recorded: lines.size,
    twice: readings.length - lines.size,
    missing: missing.length,
    missingBeforeKillS: Math.max(0, ...onTheWay.map(({ beforeKillS }) => beforeKillS)),
    missingOtherwiseS: missing
      .filter((one) => !onTheWay.includes(one))
      .map(({ afterBeginningS }) => afterBeginningS),
    closedS,
    usualWaitS: quantile(
      waits.map(({ lastsS }) => lastsS),
      0.5,
    ),
    longestWait: longestOf(waits),
    longestUnsaved: longestOf(unsaved),
    files: readdirSync(path.join(runsFolder, runId)).filter((name) => /^run.*\.jsonl$/.test(name))
      .length,
    inPages,
    inTable: await headCells(table.content),
    inPack: await linesInPack(whole.value),
    inCheck: check?.readings ?? 0,
    state: `${check?.state ?? 'none'}, ${check?.missingRecords ?? 0} records missing, ${check?.timeDoubts.length ?? 0} doubtful moments, closed ${check?.closed.length ?? 0} times`,
  };
}

function longestOf(times: readonly Longest[]): Longest {
  const none = { lastsS: 0, afterS: 0 };
  return times.reduce((longest, one) => (one.lastsS > longest.lastsS ? one : longest), none);
}

async function linesInPages(library: RunLibrary, runId: string): Promise<number> {
  let found = 0;
  let fromIndex: number | null = 0;
  while (fromIndex !== null) {
    const page: Awaited<ReturnType<typeof library.page>> = await library.page(runId, fromIndex);
    if (!page.ok) throw new Error(JSON.stringify(page.error));
    found += countedReadings(page.value.inputs).length;
    fromIndex = page.value.nextIndex;
  }
  return found;
}

type Whole = Parameters<typeof exportRunAsCsv>[0];

/** Rows of the long table of readings. */
async function linesInPack(run: Whole): Promise<number> {
  const outDir = await mkdtemp(path.join(tmpdir(), 'gone-on-pack-'));
  try {
    const madeBy = { version: '0.1.0', modelVersion };
    const order = { runs: [{ run }], createMonitor, madeBy, createdMs: systemClock.wallMs() };
    const pack = await writePack({ ...order, outDir, files: nodeFileLayer });
    if (!pack.ok) throw new Error(pack.error.message);
    const file = pack.value.find((name) => path.basename(name) === 'readings.csv') ?? '';
    const rows = (await readFile(path.join(outDir, file), 'utf8')).trimEnd().split(/\r?\n/);
    return rows.length - 1;
  } finally {
    await rm(outDir, { recursive: true, force: true });
  }
}

/** Rows of the table that hold a reading of the head, in its second column. */
async function headCells(content: AsyncIterable<unknown> | Iterable<unknown>): Promise<number> {
  let text = '';
  for await (const piece of content) text += String(piece);
  const [, ...rows] = text.split(/\r?\n/).filter((row) => row !== '' && !row.startsWith('#'));
  return rows.filter((row) => /^[^,]*,-?[\d.]+/.test(row)).length;
}

/** The figures in a few lines for people. */
export function goingOnWords(found: GoingOn): string {
  const ms = (timeS: number) => `${(1000 * timeS).toFixed(0)} ms`;
  const otherwise = found.missingOtherwiseS
    .map((afterS) => `, one ${ms(afterS)} after a program began to record`)
    .join('');
  return [
    `${found.kills} programs killed in one run, every second while it went on with it; ${found.files} files; ${found.state}`,
    `${found.sent} lines sent while a program recorded; on record ${found.recorded}, twice ${found.twice}; missing ${found.missing}: ${found.missing - found.missingOtherwiseS.length} within ${ms(found.missingBeforeKillS)} before a kill${otherwise}`,
    `by reader: pages ${found.inPages}, table ${found.inTable}, pack ${found.inPack}, check ${found.inCheck}`,
    `from probe to disk ${ms(found.usualWaitS)} (median), ${ms(found.longestWait.lastsS)} (longest, ${found.longestWait.afterS.toFixed(1)} s after its program began to record); longest time unsaved ${found.longestUnsaved.lastsS.toFixed(2)} s (after ${found.longestUnsaved.afterS.toFixed(1)} s)`,
    `from a kill to the first line of the next program ${found.closedS.map((timeS) => `${timeS.toFixed(1)} s`).join(', ')}`,
  ].join('\n');
}
