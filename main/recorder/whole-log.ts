import path from 'node:path';
import { type LogHeader, type Result, succeed } from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { createLogWriter, type LogWriter, stamp } from './log-writer.ts';
import type { RecordMemory } from './record-memory.ts';
import { segmentFile } from './run-files.ts';

export interface WholeLogSetup {
  readonly files: FileLayer;
  readonly clock: Clock;
  /** The run's own folder. */
  readonly folder: string;
  readonly header: LogHeader;
  readonly memory: RecordMemory;
  /** Makes the run's own folder again; it fails where that may not be. */
  readonly remakeFolder: () => Promise<Result<void, FileProblem>>;
}

/** What is known to be on the disk: for each file of the log how many bytes of it, at least. */
export type SavedFiles = ReadonlyMap<number, number>;

/** The file in which everything was written again, how long it is, and the number of the newest record in it. */
export interface WrittenAgain {
  readonly segment: number;
  readonly bytes: number;
  readonly upToSeq: number;
}

/** Puts a log together again of which files are gone. */
export interface WholeLog {
  /**
   * Looks whether all that was saved is there, and where it is not writes everything again: into `run.jsonl` where there is none, and into the
   * file numbered `nextSegment` where there is. Records that stand in two files are one. Null where nothing is lost.
   */
  makeWhole(
    saved: SavedFiles,
    nextSegment: number,
    onLost: () => void,
  ): Promise<Result<WrittenAgain | null, FileProblem>>;
}

export function createWholeLog({
  files,
  clock,
  folder,
  header,
  memory,
  remakeFolder,
}: WholeLogSetup): WholeLog {
  const fileOf = (segment: number) => path.join(folder, segmentFile(segment));

  /** The names in the folder; none where it had to be made again. */
  async function namesThere(onLost: () => void): Promise<Result<ReadonlySet<string>, FileProblem>> {
    const listed = await files.list(folder);
    if (listed.ok) return succeed(new Set(listed.value.map(({ name }) => name)));
    if (listed.error.kind !== 'missing') return listed;
    const made = await remakeFolder();
    // Where there is a place for it, it is gone for good; where there is none, it may come back with its drive.
    if (made.ok || made.error.kind !== 'missing') onLost();
    return made.ok ? succeed(new Set()) : made;
  }

  async function isAllThere(
    names: ReadonlySet<string>,
    saved: SavedFiles,
  ): Promise<Result<boolean, FileProblem>> {
    for (const [segment, bytes] of saved) {
      if (!names.has(segmentFile(segment))) return succeed(false);
      const found = await files.sizeBytes(fileOf(segment));
      if (!found.ok) return found;
      if (found.value < bytes) return succeed(false);
    }
    return succeed(true);
  }

  /** A disk gets a piece at a time, and whatever else the program does gets its turn between them. */
  async function writePieces(writer: LogWriter): Promise<Result<number, FileProblem>> {
    let upToSeq = 0;
    for (const piece of memory.pieces()) {
      for (const { body, stamp } of piece) {
        const written = writer.write(body, stamp);
        if (!written.ok) return written;
        upToSeq = stamp.seq;
      }
      const synced = await writer.sync();
      if (!synced.ok) return synced;
    }
    const named = await files.syncFolder(folder);
    return named.ok ? succeed(upToSeq) : named;
  }

  async function writeAgain(segment: number): Promise<Result<WrittenAgain, FileProblem>> {
    const opened = await createLogWriter(files, fileOf(segment));
    if (!opened.ok) return opened;
    const writer = opened.value;
    const because = 'What was saved before was no longer there, and was written again.';
    const opening = { kind: 'segment', segment, because, header } as const;
    // The first file begins with the header, which is the first of the records.
    const begun = segment === 1 ? succeed(undefined) : writer.write(opening, stamp(clock, 0));
    const written = begun.ok ? await writePieces(writer) : begun;
    await writer.close();
    if (written.ok) return succeed({ segment, bytes: writer.bytes(), upToSeq: written.value });
    await files.remove(fileOf(segment));
    return written;
  }

  return {
    async makeWhole(saved, nextSegment, onLost) {
      const names = await namesThere(onLost);
      if (!names.ok) return names;
      const isThere = await isAllThere(names.value, saved);
      if (!isThere.ok) return isThere;
      if (isThere.value) return succeed(null);
      onLost();
      return writeAgain(names.value.has(segmentFile(1)) ? nextSegment : 1);
    },
  };
}
