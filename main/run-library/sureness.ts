import type { LogRecord } from '#shared-core';
import type { LogEnd } from '../recorder/index.ts';

/** Up to where the record of a run tells of itself that it was saved, record by record. */
export interface Sureness {
  add(record: LogRecord): void;
  /** Number of the last record of which it is told that it was on the disk. */
  sureSeq(): number;
  /** Records follow that one: they can be read, and are perhaps on no disk. */
  isUnsure(): boolean;
}

export function createSureness(): Sureness {
  // No run begins before its header is saved.
  let sureSeq = 0;
  let lastSeq = 0;
  return {
    add({ body, stamp }) {
      lastSeq = Math.max(lastSeq, stamp.seq);
      sureSeq = Math.max(sureSeq, toldSeq(body, stamp.seq));
    },
    sureSeq: () => sureSeq,
    isUnsure: () => lastSeq > sureSeq,
  };
}

/** Up to which number a record tells that all was saved when it was written. */
function toldSeq(body: LogRecord['body'], seq: number): number {
  switch (body.kind) {
    // A later file repeats what was not surely saved before it, and is numbered as the last that was.
    case 'segment':
      return seq;
    case 'continued':
      return seq - 1;
    // Should the end itself get lost, nothing else does: the run was cut off there.
    case 'end':
      return body.unsaved === true ? 0 : seq;
    default:
      return 0;
  }
}

/** What is not surely saved of a run, oldest first. */
export interface UnsureRecords {
  add(record: LogRecord): void;
  records(): LogEnd['unsure'];
  /** A newer version wrote some of it: this one can't write that again. */
  hasUnknown(): boolean;
}

export function createUnsureRecords(): UnsureRecords {
  const sureness = createSureness();
  let unsure: LogRecord[] = [];
  return {
    add(record) {
      const before = sureness.sureSeq();
      sureness.add(record);
      const sureSeq = sureness.sureSeq();
      if (sureSeq > before) unsure = unsure.filter(({ stamp }) => stamp.seq > sureSeq);
      if (record.body.kind !== 'segment' && record.stamp.seq > sureSeq) unsure.push(record);
    },
    records: () =>
      unsure.flatMap(({ stamp, body }) => (body.kind === 'unknown' ? [] : [{ stamp, body }])),
    hasUnknown: () => unsure.some(({ body }) => body.kind === 'unknown'),
  };
}
