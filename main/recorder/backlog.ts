import type { LogBody, LogRecord } from '#shared-core';

/** A record that is not known to be on the disk yet. */
export interface PendingRecord {
  readonly stamp: LogRecord['stamp'];
  readonly body: LogBody;
  /** Run time of the newest thing in it [s]. */
  readonly timeS: number;
  /** And of the oldest: of two probes, one may be heard later than what the other read after it. */
  readonly fromS: number;
}

/** Readings that found no room. */
export interface DroppedReadings {
  readonly readings: number;
  readonly fromS: number;
  readonly toS: number;
}

/** Readings kept in memory while the disk takes nothing: four channels at 1 Hz for a day. */
const mostPendingReadings = 345_600;

/**
 * Everything since the last sync that worked, oldest first. Should the file fail, it is written
 * again to a new one, so a failed sync loses nothing.
 */
export interface Backlog {
  readonly records: readonly PendingRecord[];
  /** False when there is no room for these readings; marks and alarms always find room. */
  hasRoomFor(body: LogBody): boolean;
  add(record: PendingRecord): void;
  /** Run time of the oldest thing in any record [s]; infinite where there is none. */
  fromS(): number;
  /** Forgets the records up to `seq`: they are on the disk. */
  settle(seq: number): void;
  /** Counts readings that found no room. */
  drop(body: LogBody, timeS: number): void;
  /** Readings dropped since the beginning. */
  lost(): number;
  /** What was dropped since last asked, or null. */
  takeDropped(): DroppedReadings | null;
}

export function createBacklog(mostReadings: number = mostPendingReadings): Backlog {
  const records: PendingRecord[] = [];
  let readings = 0;
  let fromS = Infinity;
  let dropped: DroppedReadings | null = null;
  let lost = 0;
  const countIn = (body: LogBody) => (body.kind === 'readings' ? body.readings.length : 0);
  return {
    records,
    hasRoomFor: (body) => readings + countIn(body) <= mostReadings,
    add(record) {
      records.push(record);
      readings += countIn(record.body);
      fromS = Math.min(fromS, record.fromS);
    },
    fromS: () => fromS,
    settle(seq) {
      const firstKept = records.findIndex((record) => record.stamp.seq > seq);
      const settled = records.splice(0, firstKept === -1 ? records.length : firstKept);
      for (const { body } of settled) readings -= countIn(body);
      fromS = records.reduce((oldestS, record) => Math.min(oldestS, record.fromS), Infinity);
    },
    drop(body, timeS) {
      lost += countIn(body);
      const before = dropped ?? { readings: 0, fromS: timeS };
      dropped = { ...before, readings: before.readings + countIn(body), toS: timeS };
    },
    lost: () => lost,
    takeDropped() {
      const taken = dropped;
      dropped = null;
      return taken;
    },
  };
}

/** Run time of the oldest thing in a record [s]; a flood brings more readings at once than a call takes arguments. */
export function oldestIn(body: LogBody, timeS: number): number {
  if (body.kind !== 'readings') return timeS;
  return body.readings.reduce((oldestS, [atS]) => Math.min(oldestS, atS), timeS);
}
