import path from 'node:path';
import type { DamagedStretch, LogRecord, ScannedItem } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { segmentFile, segmentNumber } from '../recorder/index.ts';
import { scanFile } from './scan-file.ts';
import { createSeqMerger } from './seq-merger.ts';

/** What was found wrong while reading; filled in as the log is read. */
export interface ReadReport {
  /** Records that are in none of the files; counted by their numbers. */
  missingRecords: number;
  /** Whole records that a newer version wrote and this one does not understand. */
  unknownRecords: number;
  damage: (DamagedStretch & { readonly file: string })[];
  /** Ends of files that hold no whole record: expected after a cut-off, and harmless. */
  torn: (DamagedStretch & { readonly file: string })[];
  problem: FileProblem | null;
}

export function emptyReport(): ReadReport {
  return { missingRecords: 0, unknownRecords: 0, damage: [], torn: [], problem: null };
}

/**
 * All records of a run in the order of their numbers, each once, from all its log files.
 * A later file repeats what the one before may have lost, so they are merged.
 */
export async function* readRunLog(
  files: FileLayer,
  folder: string,
  report: ReadReport,
): AsyncGenerator<readonly LogRecord[], void> {
  const listed = await files.list(folder);
  if (!listed.ok) {
    report.problem = listed.error;
    return;
  }
  const segments = listed.value
    .map(({ name }) => segmentNumber(name))
    .filter((segment) => segment !== undefined)
    .sort((a, b) => a - b);
  // Nothing comes before the first file that its beginning could tell of.
  const openings = await Promise.all(
    segments.slice(1).map((segment) => openingSeq(files, path.join(folder, segmentFile(segment)))),
  );
  const merger = createSeqMerger();
  for (const [index, segment] of segments.entries()) {
    const file = segmentFile(segment);
    // The next file whose beginning can be read says from where on this one may have holes.
    const nextOpening = openings.slice(index).find((opening) => opening !== undefined);
    merger.startFile(nextOpening ?? Number.POSITIVE_INFINITY);
    const scan = scanFile(files, path.join(folder, file));
    let step = await scan.next();
    while (step.done !== true) {
      yield counted(merger.take(recordsIn(step.value, file, report)), report);
      step = await scan.next();
    }
    if (!step.value.ok)
      report.problem = await unlessTakenAway(files, folder, file, step.value.error);
    else if (step.value.value !== null) report.torn.push({ file, ...step.value.value });
  }
  yield counted(merger.end(), report);
  report.missingRecords = merger.missingRecords();
}

function recordsIn(
  items: readonly ScannedItem[],
  file: string,
  report: ReadReport,
): readonly LogRecord[] {
  const records: LogRecord[] = [];
  for (const item of items) {
    if (item.kind === 'damage') {
      report.damage.push({ file, offset: item.offset, bytes: item.bytes });
      continue;
    }
    records.push(item.record);
  }
  return records;
}

/** A record that stands in two files is one. */
function counted(records: readonly LogRecord[], report: ReadReport): readonly LogRecord[] {
  report.unknownRecords += records.filter(({ body }) => body.kind === 'unknown').length;
  return records;
}

/**
 * While a disk takes nothing the recorder begins files and takes them away again: one that has gone since
 * it was listed was such a one, and what it held comes again in the next. Not so when all have gone.
 */
async function unlessTakenAway(
  files: FileLayer,
  folder: string,
  file: string,
  problem: FileProblem,
): Promise<FileProblem | null> {
  if (problem.kind !== 'missing' || file === segmentFile(1)) return problem;
  const listed = await files.list(folder);
  if (!listed.ok) return listed.error;
  return listed.value.some(({ name }) => name === file) ? problem : null;
}

/** Holds the first record of a file with room to spare: its header, or what was read in the first seconds. */
const openingBytes = 8192;

/** The number of a file's first record, when that record is whole; the rest of the file is read when its turn comes. */
async function openingSeq(files: FileLayer, file: string): Promise<number | undefined> {
  const scan = scanFile(files, file, openingBytes);
  for (let step = await scan.next(); step.done !== true; step = await scan.next()) {
    const [first] = step.value;
    if (first !== undefined) return first.kind === 'record' ? first.record.stamp.seq : undefined;
  }
  return undefined;
}
