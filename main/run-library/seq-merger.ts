import type { LogRecord } from '#shared-core';

/** Puts the records of several log files of a run in one order, each number once. */
export interface SeqMerger {
  /** `nextOpeningSeq`: records after it may stand in the next file too, and wait for it. */
  startFile(nextOpeningSeq: number): void;
  take(records: readonly LogRecord[]): readonly LogRecord[];
  /** Whatever still waited. */
  end(): readonly LogRecord[];
  missingRecords(): number;
  /** Number of the last record given, where all before it were given too and none waits; null otherwise. */
  wholeUpTo(): number | null;
}

/** @param afterSeq number of the last record that is known already */
export function createSeqMerger(afterSeq = -1): SeqMerger {
  const waiting = new Map<number, LogRecord>();
  let cutoffSeq = Number.POSITIVE_INFINITY;
  let lastSeq = afterSeq;
  let missing = 0;

  function emit(record: LogRecord, into: LogRecord[]): void {
    const { seq } = record.stamp;
    waiting.delete(seq);
    if (record.body.kind === 'segment') {
      // It bears the number of the last record before it and stands for none itself.
      into.push(record);
      return;
    }
    if (seq <= lastSeq) return;
    missing += Math.max(0, seq - lastSeq - 1);
    lastSeq = seq;
    into.push(record);
  }

  function releaseBelow(seq: number, into: LogRecord[]): void {
    if (waiting.size === 0) return;
    const due = [...waiting.values()].filter(({ stamp }) => stamp.seq < seq);
    due.sort((a, b) => a.stamp.seq - b.stamp.seq);
    for (const record of due) emit(record, into);
  }

  return {
    startFile(nextOpeningSeq) {
      cutoffSeq = nextOpeningSeq;
    },
    take(records) {
      const merged: LogRecord[] = [];
      for (const record of records) {
        if (record.stamp.seq > cutoffSeq) {
          if (!waiting.has(record.stamp.seq)) waiting.set(record.stamp.seq, record);
        } else {
          releaseBelow(record.stamp.seq, merged);
          emit(record, merged);
        }
      }
      return merged;
    },
    end() {
      const merged: LogRecord[] = [];
      releaseBelow(Number.POSITIVE_INFINITY, merged);
      return merged;
    },
    missingRecords: () => missing,
    wholeUpTo: () => (waiting.size === 0 && missing === 0 ? lastSeq : null),
  };
}
