import { emptyReport, type FileLayer, type ProbeReading, readRunLog } from '#main';
import { inputsOfRecord, type Monitor, type RequestAnswer, type RunInput } from '#shared-core';
import { analyseRun } from '../../shared-core/monitor/analyse-run.ts';
import type { Judge } from './judge.ts';
import { runsFolder } from './program.ts';

/** What the world knows of a run from what it saw: to be found again in the record. */
export interface RunBook {
  runId: string;
  monitor: Monitor;
  /** Of the program that records it now, by its clock: only what was heard between belongs to the run. */
  startedAtS: number;
  /** Its stop was asked for. */
  isStopping: boolean;
  heard: string[];
  told: RunInput[];
  /** Numbers of the marks that a person was told to be kept. */
  marks: number[];
  /** What a loss of power may have left in its files. */
  scars: { damaged: number; missing: number };
  isOver: boolean;
  /** Its folder was deleted, and the program has not said yet that nothing of it is saved. */
  isLostUntold: boolean;
}

export interface Found {
  readonly inputs: readonly RunInput[];
  readonly dropped: number;
  readonly damaged: number;
  readonly missing: number;
}

export function createRunBook(monitor: Monitor, startedAtS: number): RunBook {
  return {
    runId: '',
    monitor,
    startedAtS,
    isStopping: false,
    heard: [],
    told: [],
    marks: [],
    scars: { damaged: 0, missing: 0 },
    isOver: false,
    isLostUntold: false,
  };
}

export function hear(book: RunBook, readings: readonly ProbeReading[]): void {
  // Of lines that came in one piece the first were sent before it: what comes behind the stop is none of the run, whenever it was sent.
  if (book.isStopping) return;
  for (const { atS, channel, value } of readings) {
    if (atS >= book.startedAtS) book.heard.push(`${channel} ${value}`);
  }
}

/** What is on the disk of a run, by the program's own reader. */
export async function findRun(files: FileLayer, runId: string): Promise<Found> {
  const report = emptyReport();
  const inputs: RunInput[] = [];
  let dropped = 0;
  for await (const records of readRunLog(files, `${runsFolder}/${runId}`, report)) {
    for (const record of records) {
      inputs.push(...inputsOfRecord(record));
      if (record.body.kind === 'dropped') dropped += record.body.readings;
    }
  }
  return { inputs, dropped, damaged: report.damage.length, missing: report.missingRecords };
}

export const readingsIn = (inputs: readonly RunInput[]): string[] =>
  inputs.flatMap((it) => (it.kind === 'reading' ? [`${it.channel} ${it.value}`] : []));

const marksIn = (inputs: readonly RunInput[]): number[] =>
  inputs.flatMap((it) => (it.kind === 'mark' ? [it.markId] : []));

/** Every reading heard is on record or counted as dropped, once; what was answered and told is there too. */
export function checkRecord(judge: Judge, book: RunBook, found: Found): void {
  const { damaged, missing } = found;
  if (damaged > book.scars.damaged || missing > book.scars.missing) {
    judge.violated('log-is-whole', `${damaged} damaged, ${missing} missing records.`);
  }
  checkReadings(judge, book.heard, readingsIn(found.inputs), found.dropped);
  checkMarks(judge, book, found.inputs);
  const told = JSON.stringify(book.told);
  if (told !== JSON.stringify(found.inputs)) {
    const at = book.told.findIndex(
      (input, index) => JSON.stringify(input) !== JSON.stringify(found.inputs[index]),
    );
    const pair = [book.told[at], found.inputs[at]].map((it) => JSON.stringify(it)).join(', ');
    judge.violated('told-is-on-record', `Input ${at} of ${book.told.length}: ${pair}.`);
  }
}

export function checkReadings(
  judge: Judge,
  heard: readonly string[],
  recorded: readonly string[],
  dropped: number,
): void {
  const isCounted = recorded.length + dropped === heard.length;
  if (!isCounted || !isWithin(recorded, heard)) {
    const counts = `${heard.length} heard, ${recorded.length} on record, ${dropped} dropped.`;
    judge.violated('every-reading-once', counts);
  }
}

export function checkMarks(judge: Judge, book: RunBook, inputs: readonly RunInput[]): void {
  const kept = marksIn(inputs);
  const lost = book.marks.find((markId) => kept.filter((it) => it === markId).length !== 1);
  if (lost !== undefined) judge.violated('every-mark-once', `Mark ${lost} was answered.`);
}

/** A run that was read whole gives the verdicts that were told while it was recorded. */
export function checkReplay(
  judge: Judge,
  book: RunBook,
  page: RequestAnswer<'runs/read'>,
  found: Found,
): void {
  const replayed = JSON.stringify(analyseRun(page.settings, found.inputs, page.endS));
  if (replayed !== JSON.stringify(book.monitor.verdicts())) {
    judge.violated('live-and-replay-agree', 'The verdicts differ.');
  }
}

/**
 * The program was cut off. With the power, all may be lost that was not said to be saved; with the program alone nothing is that a
 * working disk took. From here on the record is what the run has.
 */
export function checkCutOff(
  judge: Judge,
  book: RunBook,
  found: Found,
  { savedToS, diskTookAll }: { readonly savedToS: number | null; readonly diskTookAll: boolean },
): void {
  const kept = new Set(found.inputs.map((it) => JSON.stringify(it)));
  const lost = book.told.find((it) => it.timeS < (savedToS ?? 0) && !kept.has(JSON.stringify(it)));
  if (lost !== undefined) {
    judge.violated(
      'saved-survives-a-power-cut',
      `${JSON.stringify(lost)}, saved to ${savedToS} s.`,
    );
  }
  const recorded = readingsIn(found.inputs);
  if (diskTookAll) {
    checkReadings(judge, book.heard, recorded, found.dropped);
    checkMarks(judge, book, found.inputs);
  } else if (!isWithin(recorded, book.heard)) {
    judge.violated('every-reading-once', 'A reading is on record that was not heard.');
  }
  book.heard = recorded;
  book.told = [...found.inputs];
  book.marks = marksIn(found.inputs);
  noteScars(book, found);
}

/** What was damaged once stays so. */
export function noteScars(book: RunBook, { damaged, missing }: Found): void {
  book.scars = {
    damaged: Math.max(book.scars.damaged, damaged),
    missing: Math.max(book.scars.missing, missing),
  };
}

/** Whether all of `some` stands in `all`, in that order. */
function isWithin(some: readonly string[], all: readonly string[]): boolean {
  let next = 0;
  for (const it of all) if (it === some[next]) next += 1;
  return next === some.length;
}
