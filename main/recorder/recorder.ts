import path from 'node:path';
import type { LogBody, LogHeader, Result } from '#shared-core';
import { fail, succeed } from '#shared-core';
import type { Clock, Scheduler } from '../clock/index.ts';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { type Backlog, createBacklog, oldestIn, type PendingRecord } from './backlog.ts';
import { type LogWriter, stamp } from './log-writer.ts';
import { type LogEnd, nextFile } from './next-file.ts';
import { openSegment } from './open-segment.ts';
import { createRecordMemory, type RecordMemory } from './record-memory.ts';
import { segmentFile } from './run-files.ts';
import { createWholeLog } from './whole-log.ts';

/** Longest time written records wait for their sync [s]; with the sync itself it stays under 1 s. */
const syncDelayS = 0.4;
/** How long after a failure the disk is tried again [s]. */
const retryDelayS = 2;
/** A disk that sleeps wakes within some seconds: one that takes longer is told of; common practice, no source [s]. */
const heldAfterS = 10;
/** A file that was deleted or carried off takes all that is written to it, and says nothing: so it is looked for [s]. */
const lookEveryS = 2;
/** Longer than a disk that is awake takes for a look [s]. */
const lastLookS = 0.5;

/**
 * What is safely on the disk: everything that has been recorded of the time before `savedToS`. It moves on only after a sync that
 * worked, and back where something older is heard late.
 */
export interface RecorderStatus {
  readonly state: 'recording' | 'failed';
  readonly savedToS: number;
  readonly problem: FileProblem | null;
  /** Readings that found no room while the disk took nothing: they stand nowhere. */
  readonly lostReadings: number;
}

export interface Recorder {
  /**
   * Sends a record on its way to the disk before it returns, and waits for nothing; `sync: 'now'` asks for the sync at once. After
   * `close` it does nothing.
   */
  append(body: LogBody, timeS: number, sync: 'soon' | 'now'): void;
  status(): RecorderStatus;
  /** Records that are not known to be on the disk yet, oldest first. */
  unsaved(): readonly PendingRecord[];
  /**
   * Syncs what is left and closes, once; answers whether everything is on the disk. The end of the run is written behind that sync, so
   * that its being there tells whoever reads the record later that all before it was saved; where it was not, it says so itself.
   */
  close(end?: { readonly timeS: number }): Promise<Result<void, FileProblem>>;
  /**
   * Tries once more to save what the disk did not take before `close` had to answer; answers whether all is on it now, and says so in the
   * log. One try at a time.
   */
  saveAgain(): Promise<Result<void, FileProblem>>;
}

export interface RecorderSetup {
  readonly files: FileLayer;
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  /** The run's own folder; it must be there, and for a new run empty. */
  readonly folder: string;
  readonly header: LogHeader;
  readonly onStatus: (status: RecorderStatus) => void;
  /** Told of each record that the log got, those of the recorder's own too. */
  readonly onRecord?: (record: { readonly body: LogBody }) => void;
  readonly backlog?: Backlog;
  /** Makes the run's own folder again where it is gone, and fails where that may not be. */
  readonly remakeFolder?: () => Promise<Result<void, FileProblem>>;
}

/** Starts the log of a run; answers once its header is safely on the disk. */
export async function startRecorder(setup: RecorderSetup): Promise<Result<Recorder, FileProblem>> {
  const { files, folder, header } = setup;
  const opening = { kind: 'header', header } as const;
  const made = await openSegment({ files, folder, opening });
  const openingStamp = stamp(setup.clock, 0);
  const first = made.ok ? made.value.begin({ openingStamp, pending: [] }) : made;
  if (!first.ok) return first;
  const synced = await first.value.sync();
  if (!synced.ok) {
    await first.value.close();
    return synced;
  }
  const memory = createRecordMemory();
  memory.add({ stamp: openingStamp, body: opening });
  return succeed(createRecorder(setup, memory, first.value, beginning));
}

/**
 * Goes on with the log of a run that was cut off, of which `memory` holds all that can be read; answers once what it holds is safely on the disk. It can be read whole, and yet not
 * be on the disk: where a sync had failed, the system has dropped the pages and calls them clean, and no sync of this process
 * would ever write them. So what is not surely saved stands in the next file again.
 */
export async function continueRecorder(
  setup: RecorderSetup,
  end: LogEnd,
  memory: RecordMemory,
): Promise<Result<Recorder, FileProblem>> {
  const because = 'What was written before the program was ended may not all be on the disk.';
  const opened = await nextFile(setup, end, because);
  if (!opened.ok) return opened;
  const from = { ...end, lastSegment: end.lastSegment + 1 };
  return succeed(createRecorder(setup, memory, opened.value, from));
}

/** Only the header has been written. */
const beginning = { lastSegment: 1, seq: 0, timeS: 0 };

function createRecorder(
  setup: RecorderSetup,
  memory: RecordMemory,
  firstWriter: LogWriter,
  from: Pick<LogEnd, 'lastSegment' | 'seq' | 'timeS'>,
): Recorder {
  const { files, clock, scheduler, folder, header, onStatus } = setup;
  const backlog = setup.backlog ?? createBacklog();
  const remakeFolder = setup.remakeFolder ?? (() => files.claimFolder(folder));
  const wholeLog = createWholeLog({ ...setup, memory, remakeFolder });
  /** How much of each file is on the disk, as far as this process knows; any run has a first one. */
  const saved = new Map([[1, 0]]);
  let isLooking = false;
  /** As long as this the file was when it was looked for last: some systems tell the size of one being written a moment late. */
  let seen = { segment: 0, bytes: 0 };
  /** The file being written; null while the disk takes nothing. */
  let writer: LogWriter | null = firstWriter;
  let segment = from.lastSegment;
  let lastSeq = from.seq;
  let lastTimeS = from.timeS;
  let savedToS = from.timeS;
  let problem: FileProblem | null = null;
  /** The disk neither takes what was written nor refuses it. */
  let held: FileProblem | null = null;
  let opening: Promise<void> | null = null;
  /** The file opened last stands behind one that holds all there is, and tells so. */
  let tellsThatAllIsSaved = false;
  let syncing: Promise<void> | null = null;
  let syncAgain = false;
  let cancelSyncTimer: (() => void) | null = null;
  let cancelRetry: (() => void) | null = null;
  let closing: Promise<Result<void, FileProblem>> | null = null;
  /** No new record is taken and nothing tried again later; what is there may still move into another file, once. */
  let ending = false;

  const fileOf = (number: number) => path.join(folder, segmentFile(number));

  function status(): RecorderStatus {
    const state = problem === null ? 'recording' : 'failed';
    const lostReadings = backlog.lost();
    return {
      state,
      savedToS: Math.min(savedToS, backlog.fromS()),
      problem: problem ?? held,
      lostReadings,
    };
  }

  function append(body: LogBody, timeS: number, sync: 'soon' | 'now'): void {
    if (ending) return;
    if (!backlog.hasRoomFor(body)) {
      backlog.drop(body, timeS);
      return;
    }
    writeDropped(timeS);
    writeRecord(body, timeS);
    if (sync === 'now') requestSync();
    else cancelSyncTimer ??= scheduler.after(syncDelayS, requestSync);
  }

  function writeDropped(timeS: number): void {
    const dropped = backlog.takeDropped();
    if (dropped !== null) writeRecord({ kind: 'dropped', timeS, ...dropped, where: 'disk' }, timeS);
  }

  function writeRecord(body: LogBody, timeS: number): void {
    lastSeq += 1;
    lastTimeS = Math.max(lastTimeS, timeS);
    const record = {
      stamp: stamp(clock, lastSeq),
      body,
      timeS: lastTimeS,
      fromS: oldestIn(body, timeS),
    };
    backlog.add(record);
    memory.add(record);
    setup.onRecord?.(record);
    const written = writer?.write(body, record.stamp);
    if (written !== undefined && !written.ok) abandonFile(written.error);
  }

  function requestSync(): void {
    cancelSyncTimer?.();
    cancelSyncTimer = null;
    if (syncing !== null) {
      syncAgain = true;
      return;
    }
    syncing = syncOnce().finally(() => {
      syncing = null;
      if (!syncAgain) return;
      syncAgain = false;
      requestSync();
    });
  }

  async function syncOnce(): Promise<void> {
    const synced = writer;
    if (synced === null) return;
    const upTo = { seq: lastSeq, timeS: lastTimeS, bytes: synced.bytes() };
    const result = await tellingWhenHeld(synced.sync());
    // Given up in the meantime: its records are already on their way into the next file.
    if (synced !== writer) return;
    if (!result.ok) {
      abandonFile(result.error);
      return;
    }
    backlog.settle(upTo.seq);
    saved.set(segment, upTo.bytes);
    savedToS = upTo.timeS;
    problem = null;
    onStatus(status());
  }

  async function tellingWhenHeld<T>(asked: Promise<T>): Promise<T> {
    const cancel = scheduler.after(heldAfterS, () => {
      held = { kind: 'held', path: folder, message: `No answer for ${heldAfterS} s.` };
      onStatus(status());
    });
    const answer = await asked;
    cancel();
    held = null;
    return answer;
  }

  /**
   * After a failed write or sync the system may have thrown away what it had not written and call
   * the file clean, so the file is never trusted again: everything since the last good sync goes
   * into a new one.
   */
  function abandonFile(because: FileProblem): void {
    const abandoned = writer;
    writer = null;
    const isFirstFailure = problem === null;
    refuse(because);
    void Promise.resolve(syncing).then(() => abandoned?.close());
    // The first failure may be this one file's; a second one in a row is the disk's.
    if (isFirstFailure) openNextFile();
    else retryLater();
  }

  function refuse(because: FileProblem): void {
    problem = because;
    onStatus(status());
  }

  /** A disk that holds its answer is not asked again. */
  async function lookForFile(): Promise<void> {
    const looked = writer;
    if (looked === null || isLooking) return;
    isLooking = true;
    const file = fileOf(segment);
    const bytes = seen.segment === segment ? seen.bytes : 0;
    seen = { segment, bytes: saved.get(segment) ?? 0 };
    const found = await files.sizeBytes(file);
    isLooking = false;
    const isGone = found.ok ? found.value < bytes : found.error.kind === 'missing';
    if (!isGone || looked !== writer) return;
    abandonFile({ kind: 'missing', path: file, message: 'The file is no longer in its place.' });
  }

  /** A run may be stopped just after its file was deleted; nobody who stops one waits for a disk that holds what is looked at. */
  async function lookOnceMore(): Promise<void> {
    let cancel = () => {};
    const enough = new Promise<void>((resolve) => {
      cancel = scheduler.after(lastLookS, resolve);
    });
    await Promise.race([lookForFile(), enough]);
    cancel();
  }

  function retryLater(): void {
    if (ending) return;
    cancelRetry?.();
    cancelRetry = scheduler.after(retryDelayS, openNextFile);
  }

  function openNextFile(): void {
    if (writer !== null || opening !== null) return;
    opening = openOnce().finally(() => {
      opening = null;
    });
  }

  async function openOnce(): Promise<void> {
    // Whatever befell the file may have befallen those before it, or be why nobody looked.
    const whole = await tellingWhenHeld(makeWhole());
    if (!whole.ok) {
      refuse(whole.error);
      retryLater();
      return;
    }
    segment += 1;
    const because = problem?.message ?? 'All before it is on the disk.';
    const record = { kind: 'segment', segment, because, header } as const;
    const made = await tellingWhenHeld(openSegment({ files, folder, opening: record }));
    // Numbered as the last record that is surely in an earlier file, so the next one follows it.
    const openingStamp = stamp(clock, (backlog.records[0]?.stamp.seq ?? lastSeq + 1) - 1);
    const opened = made.ok ? made.value.begin({ openingStamp, pending: backlog.records }) : made;
    if (opened.ok) {
      tellsThatAllIsSaved = backlog.records.length === 0;
      writer = opened.value;
      requestSync();
      return;
    }
    refuse(opened.error);
    retryLater();
  }

  async function makeWhole(): Promise<Result<void, FileProblem>> {
    const made = await wholeLog.makeWhole(saved, segment + 1, () => {
      savedToS = 0;
      onStatus(status());
    });
    if (!made.ok) return made;
    if (made.value === null) return succeed(undefined);
    saved.clear();
    saved.set(made.value.segment, made.value.bytes);
    segment = Math.max(segment, made.value.segment);
    backlog.settle(made.value.upToSeq);
    return succeed(undefined);
  }

  async function closeOnce(end?: { readonly timeS: number }): Promise<Result<void, FileProblem>> {
    ending = true;
    cancelSyncTimer?.();
    cancelRetry?.();
    await lookOnceMore();
    await saveAll();
    if (end !== undefined) {
      const { timeS } = end;
      writeDropped(timeS);
      const unsaved = backlog.records.length > 0 && ({ unsaved: true } as const);
      writeRecord({ kind: 'end', timeS, how: 'clean', ...unsaved }, timeS);
      await saveAll();
    }
    stopLooking();
    return closeFile();
  }

  async function closeFile(): Promise<Result<void, FileProblem>> {
    const last = writer;
    writer = null;
    await last?.close();
    return problem === null ? succeed(undefined) : fail(problem);
  }

  /** What was written behind a sync that failed says so itself; one more file takes that back. */
  async function saveAgain(): Promise<Result<void, FileProblem>> {
    await saveAll();
    const saved = await closeFile();
    if (!saved.ok || tellsThatAllIsSaved) return saved;
    await saveAll();
    return closeFile();
  }

  /** Syncs until nothing is left or the disk takes nothing; records that wait for it get one more chance. */
  async function saveAll(): Promise<void> {
    await opening;
    openNextFile();
    do {
      await opening;
      if (backlog.records.length > 0) requestSync();
      await syncing;
    } while (syncing !== null || opening !== null);
  }

  const stopLooking = scheduler.every(lookEveryS, () => void lookForFile());

  return {
    append,
    status,
    unsaved: () => backlog.records,
    close(end) {
      closing ??= closeOnce(end);
      return closing;
    },
    saveAgain,
  };
}
