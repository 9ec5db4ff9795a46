/**
 * Reads every byte of every recorded run and says which are whole, and whether their moments are plausible. With --repair, cut-off ends are put
 * aside and summaries derived anew; what was recorded is never changed.
 *
 * Usage: npm run check-runs -- RUNS_FOLDER [--repair]
 */
import { statSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import {
  checkRuns,
  createRunLibrary,
  lockFolder,
  nodeFileLayer,
  type RunCheck,
  systemClock,
  systemScheduler,
  type TimeDoubt,
} from '#main';
import { assertNever } from '#shared-core';

const words = process.argv.slice(2);
const repair = words.includes('--repair');
const [folder, stranger] = words.filter((word) => word !== '--repair').toSorted(optionsLast);
if (folder === undefined || stranger !== undefined || folder.startsWith('--')) {
  stop(stranger ?? folder ?? null);
}
if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) {
  console.error(`There is no folder "${folder}".`);
  process.exit(2);
}
process.exitCode = await check(path.resolve(folder));

function optionsLast(a: string, b: string): number {
  return Number(a.startsWith('--')) - Number(b.startsWith('--'));
}

function stop(stranger: string | null): never {
  const what =
    stranger === null ? 'Say which folder holds the runs.' : `"${stranger}" is not known here.`;
  console.error(`${what} Usage: npm run check-runs -- RUNS_FOLDER [--repair]`);
  process.exit(2);
}

async function check(runsFolder: string): Promise<number> {
  const lock = repair ? await lockFolder(runsFolder, systemScheduler) : null;
  if (repair && lock === null) {
    console.error('The program is recording into this folder. Close it first.');
    return 2;
  }
  const library = createRunLibrary({
    files: nodeFileLayer,
    clock: systemClock,
    runsFolder,
    mayWrite: () => repair,
  });
  const counts = { whole: 0, torn: 0, damaged: 0, unreadable: 0 };
  let doubtful = 0;
  for await (const found of checkRuns(nodeFileLayer, runsFolder)) {
    counts[found.state] += 1;
    if (found.timeDoubts.length > 0) doubtful += 1;
    if (!isPlain(found)) console.log(describe(found));
    if (repair) await library.recover(found.runId);
  }
  await lock?.release();
  console.log(
    `${counts.whole} whole, ${counts.torn} with a cut-off end, ${counts.damaged} damaged, ` +
      `${counts.unreadable} unreadable; ${doubtful} with moments that cannot be right`,
  );
  return counts.damaged + counts.unreadable + doubtful === 0 ? 0 : 1;
}

function isPlain(check: RunCheck): boolean {
  const { state, timeDoubts, closed, lost, unread, unknownRecords } = check;
  const isAllKnown = lost.length + unread.length === 0 && unknownRecords === 0;
  return state === 'whole' && isAllKnown && timeDoubts.length + closed.length === 0;
}

function describe({ runId, state, problem, ...found }: RunCheck): string {
  const { missingRecords, unknownRecords, damage, torn } = found;
  const places = [...damage, ...torn].map(
    ({ file, offset, bytes }) => `  ${file}: ${bytes} bytes at ${offset}`,
  );
  const counts = `${missingRecords} records missing, ${unknownRecords} not understood`;
  const why = problem ?? counts;
  const doubts = found.timeDoubts.map((doubt) => `  ${describeDoubt(doubt)}`);
  const unread = found.unread.map(
    ({ fromS, toS }) =>
      `  nobody read the probe from ${fromS.toFixed(1)} ${toS === null ? 's' : `to ${toS.toFixed(1)} s`} of the run${toS === null ? ' on' : ''}: what it sent then is lost`,
  );
  const closed = found.closed.map(
    ({ fromS, toS }) =>
      `  the program was closed from ${fromS.toFixed(1)} to ${toS.toFixed(1)} s of the run: no readings`,
  );
  const lost = found.lost.map(
    (one) =>
      `  ${one.readings} readings between ${one.fromS.toFixed(1)} and ${one.toS.toFixed(1)} s of the run are missing: ${whyLost(one)}`,
  );
  return [`${runId}: ${state}, ${why}`, ...places, ...lost, ...unread, ...closed, ...doubts].join(
    '\n',
  );
}

function whyLost({ where }: RunCheck['lost'][number]): string {
  return where === 'disk'
    ? 'the disk took nothing, and memory had no more room'
    : 'more came from the probe than could be taken';
}

function describeDoubt(doubt: TimeDoubt): string {
  switch (doubt.kind) {
    case 'on-one-moment':
      return (
        `${doubt.readings} readings of ${doubt.channel} stand at ${doubt.timeS.toFixed(1)} s, for which the probe usually takes ` +
        `${doubt.usuallyTakeS.toFixed(1)} s: they were heard earlier or later`
      );
    case 'heard-closed':
      return (
        `the program is recorded as closed from ${doubt.fromS.toFixed(1)} to ${doubt.toS.toFixed(1)} s, and ${doubt.readings} ` +
        'readings that were heard in it: one of the two is not so'
      );
    case 'heard-asleep':
      return (
        `a sleep of the computer is recorded from ${doubt.fromS.toFixed(1)} to ${doubt.toS.toFixed(1)} s, and ${doubt.readings} ` +
        'readings that were heard in it: one of the two is not so'
      );
    case 'going-back':
      return `${doubt.what}: ${doubt.timeS.toFixed(3)} s comes after ${doubt.afterS.toFixed(3)} s`;
    default:
      return assertNever(doubt);
  }
}
