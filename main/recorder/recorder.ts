import path from 'node:path';
import type { LogBody, LogHeader, Result } from '#shared-core';
import { fail, succeed } from '#shared-core';
import type { Clock, Scheduler } from '../clock/index.ts';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { type Backlog, createBacklog, type PendingRecord } from './backlog.ts';
import type { LogWriter } from './log-writer.ts';
import { openSegment } from './open-segment.ts';
import { segmentFile } from './run-files.ts';

/** Longest time written records wait for their sync [s]; with the sync itself it stays under 1 s. */
const syncDelayS = 0.4;
/** How long after a failure the disk is tried again [s]. */
const retryDelayS = 2;
/** A disk that sleeps wakes within some seconds: one that takes longer is told of; common practice, no source [s]. */
const heldAfterS = 10;

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
  if (synced.ok) return succeed(createRecorder(setup, first.value, beginning));
  await first.value.close();
  return synced;
}

/** Where a log that was cut off goes on. */
export interface LogEnd {
  /** The highest number of any file. */
  readonly lastSegment: number;
  /** The highest number of a record in any file, and run time of the newest thing recorded [s]. */
  readonly seq: number;
  readonly timeS: number;
  /** Records that the process before may have known to be on the disk or not, oldest first; of those before them it did know it. */
  readonly unsure: readonly Pick<PendingRecord, 'stamp' | 'body'>[];
}

/**
 * Goes on with the log of a run that was cut off; answers once what it holds is safely on the disk. It can be read whole, and yet not
 * be on the disk: where a sync had failed, the system has dropped the pages and calls them clean, and no sync of this process
 * would ever write them. So what is not surely saved stands in the next file again.
 */
export async function continueRecorder(
  setup: RecorderSetup,
  end: LogEnd,
): Promise<Result<Recorder, FileProblem>> {
  const because = 'What was written before the program was ended may not all be on the disk.';
  const opened = await nextFile(setup, end, because);
  if (!opened.ok) return opened;
  return succeed(createRecorder(setup, opened.value, { ...end, lastSegment: end.lastSegment + 1 }));
}

type LogPlace = Pick<RecorderSetup, 'files' | 'clock' | 'folder' | 'header'>;
type LogTail = Omit<LogEnd, 'timeS'>;

/**
 * Saves what is not surely saved of a log that nobody goes on with: it stands in a next file again, and one more file, begun
 * once that is on the disk, tells so. Where the disk takes them not, neither stays.
 */
export async function makeLogSure(
  setup: LogPlace,
  end: LogTail,
): Promise<Result<void, FileProblem>> {
  const repeated = await nextFile(
    setup,
    end,
    'Whether what the program before had written was on the disk, nobody knew.',
  );
  if (!repeated.ok) return repeated;
  await repeated.value.close();
  const lastSegment = end.lastSegment + 1;
  const told = await nextFile(
    setup,
    { ...end, lastSegment, unsure: [] },
    'All before it is on the disk.',
  );
  if (!told.ok) {
    await setup.files.remove(path.join(setup.folder, segmentFile(lastSegment)));
    return told;
  }
  await told.value.close();
  return succeed(undefined);
}

/** The next file of a log, with what is not surely saved, once it is on the disk. */
async function nextFile(
  { files, clock, folder, header }: LogPlace,
  end: LogTail,
  because: string,
): Promise<Result<LogWriter, FileProblem>> {
  const segment = end.lastSegment + 1;
  const opening = { kind: 'segment', segment, because, header } as const;
  const made = await openSegment({ files, folder, opening });
  const openingStamp = stamp(clock, (end.unsure[0]?.stamp.seq ?? end.seq + 1) - 1);
  const opened = made.ok ? made.value.begin({ openingStamp, pending: end.unsure }) : made;
  if (!opened.ok) return opened;
  const synced = await opened.value.sync();
  if (synced.ok) return opened;
  await opened.value.close();
  await files.remove(path.join(folder, segmentFile(segment)));
  return synced;
}

/** Only the header has been written. */
const beginning = { lastSegment: 1, seq: 0, timeS: 0 };

function createRecorder(
  setup: RecorderSetup,
  firstWriter: LogWriter,
  from: Pick<LogEnd, 'lastSegment' | 'seq' | 'timeS'>,
): Recorder {
  const { files, clock, scheduler, folder, header, onStatus } = setup;
  const backlog = setup.backlog ?? createBacklog();
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
  let syncing: Promise<void> | null = null;
  let syncAgain = false;
  let cancelSyncTimer: (() => void) | null = null;
  let cancelRetry: (() => void) | null = null;
  let closing: Promise<Result<void, FileProblem>> | null = null;
  /** No new record is taken and nothing tried again later; what is there may still move into another file, once. */
  let ending = false;

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
    const upTo = { seq: lastSeq, timeS: lastTimeS };
    const result = await tellingWhenHeld(synced.sync());
    // Given up in the meantime: its records are already on their way into the next file.
    if (synced !== writer) return;
    if (!result.ok) {
      abandonFile(result.error);
      return;
    }
    backlog.settle(upTo.seq);
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
    problem = because;
    onStatus(status());
    void Promise.resolve(syncing).then(() => abandoned?.close());
    // The first failure may be this one file's; a second one in a row is the disk's.
    if (isFirstFailure) openNextFile();
    else retryLater();
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
    segment += 1;
    const because = problem?.message ?? '';
    const record = { kind: 'segment', segment, because, header } as const;
    const made = await tellingWhenHeld(openSegment({ files, folder, opening: record }));
    // Numbered as the last record that is surely in an earlier file, so the next one follows it.
    const openingStamp = stamp(clock, (backlog.records[0]?.stamp.seq ?? lastSeq + 1) - 1);
    const opened = made.ok ? made.value.begin({ openingStamp, pending: backlog.records }) : made;
    if (opened.ok) {
      writer = opened.value;
      requestSync();
      return;
    }
    problem = opened.error;
    onStatus(status());
    retryLater();
  }

  async function closeOnce(end?: { readonly timeS: number }): Promise<Result<void, FileProblem>> {
    ending = true;
    cancelSyncTimer?.();
    cancelRetry?.();
    await saveAll();
    if (end !== undefined) {
      const { timeS } = end;
      writeDropped(timeS);
      const unsaved = backlog.records.length > 0 && ({ unsaved: true } as const);
      writeRecord({ kind: 'end', timeS, how: 'clean', ...unsaved }, timeS);
      await saveAll();
    }
    await writer?.close();
    return problem === null ? succeed(undefined) : fail(problem);
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

  return {
    append,
    status,
    unsaved: () => backlog.records,
    close(end) {
      closing ??= closeOnce(end);
      return closing;
    },
  };
}

/** Run time of the oldest thing in a record [s]; a flood brings more readings at once than a call takes arguments. */
function oldestIn(body: LogBody, timeS: number): number {
  if (body.kind !== 'readings') return timeS;
  return body.readings.reduce((oldestS, [atS]) => Math.min(oldestS, atS), timeS);
}

function stamp(clock: Clock, seq: number) {
  return {
    seq,
    monoS: Math.round(clock.monotonicS() * 1000) / 1000,
    wallMs: Math.round(clock.wallMs()),
  };
}
