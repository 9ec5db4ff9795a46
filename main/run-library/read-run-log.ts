import path from 'node:path';
import type { DamagedStretch, LogRecord, ScannedItem } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { segmentFile, segmentNumber } from '../recorder/index.ts';
import { scanFile } from './scan-file.ts';
import { createSeqMerger } from './seq-merger.ts';

/**
 * A record of a run, and where it stands. What is recorded is never rewritten, so whoever knows all up to it reads on from it, and the
 * record tells by its checksum whether it is still there.
 */
export interface RunPlace {
  readonly segment: number;
  readonly offset: number;
  readonly previousChecksum: string;
  readonly checksum: string;
  readonly seq: number;
}

/** Where a reading begins, and then how far it has come. */
export interface Trail {
  /** The newest record given, as long as all before it were whole and in order; null where a later file may fill a gap. */
  place: RunPlace | null;
}

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
 * A later file repeats what the one before may have lost, so they are merged. Where a place is known that is still there, those behind it.
 */
export async function* readRunLog(
  files: FileLayer,
  folder: string,
  report: ReadReport,
  trail: Trail = { place: null },
): AsyncGenerator<readonly LogRecord[], void> {
  const { place: from } = trail;
  const listed = await files.list(folder);
  if (!listed.ok) {
    report.problem = listed.error;
    return;
  }
  const segments = listed.value
    .map(({ name }) => segmentNumber(name))
    .filter((segment) => segment !== undefined)
    .filter((segment) => segment >= (from?.segment ?? 0))
    .sort((a, b) => a - b);
  // Nothing comes before the first file that its beginning could tell of.
  const openings = await Promise.all(
    segments.slice(1).map((segment) => openingSeq(files, path.join(folder, segmentFile(segment)))),
  );
  const merger = createSeqMerger(from?.seq);
  for (const [index, segment] of segments.entries()) {
    const file = segmentFile(segment);
    // The next file whose beginning can be read says from where on this one may have holes.
    const nextOpening = openings.slice(index).find((opening) => opening !== undefined);
    merger.startFile(nextOpening ?? Number.POSITIVE_INFINITY);
    const isFirst = from !== null && segment === from.segment;
    const scan = scanFile(files, path.join(folder, file), isFirst ? { from } : {});
    let step = await scan.next();
    while (step.done !== true) {
      const merged = merger.take(recordsIn(step.value, file, report));
      const wholeUpTo = report.damage.length > 0 ? null : merger.wholeUpTo();
      trail.place = placeBehind(step.value, segment, wholeUpTo, trail.place);
      yield counted(merged, report);
      step = await scan.next();
    }
    if (!step.value.ok)
      report.problem = await unlessTakenAway(files, folder, file, step.value.error);
    else if (step.value.value !== null) report.torn.push({ file, ...step.value.value });
  }
  yield counted(merger.end(), report);
  report.missingRecords = merger.missingRecords();
}

/** Whether the record is still where it was: another run may have taken the name, and a torn end may have been cut off. */
export async function isStillThere(
  files: FileLayer,
  folder: string,
  place: RunPlace,
): Promise<boolean> {
  const file = path.join(folder, segmentFile(place.segment));
  const first = await firstItem(scanFile(files, file, { from: place, readBytes: openingBytes }));
  return first?.kind === 'record' && first.checksum === place.checksum;
}

function placeBehind(
  items: readonly ScannedItem[],
  segment: number,
  wholeUpTo: number | null,
  place: RunPlace | null,
): RunPlace | null {
  if (wholeUpTo === null) return null;
  const last = items.at(-1);
  // A later file's first record stands for none, and bears the number of another.
  if (last?.kind !== 'record' || last.record.body.kind === 'segment') return place;
  const { offset, previousChecksum, checksum, record } = last;
  const { seq } = record.stamp;
  return seq === wholeUpTo ? { segment, offset, previousChecksum, checksum, seq } : place;
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
  const first = await firstItem(scanFile(files, file, { readBytes: openingBytes }));
  return first?.kind === 'record' ? first.record.stamp.seq : undefined;
}

async function firstItem(scan: ReturnType<typeof scanFile>): Promise<ScannedItem | undefined> {
  for (let step = await scan.next(); step.done !== true; step = await scan.next()) {
    const [first] = step.value;
    if (first !== undefined) return first;
  }
  return undefined;
}
