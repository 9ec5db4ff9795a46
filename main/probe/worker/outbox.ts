import type { GivenUp } from '../probe-hub.ts';
import type { BatchItem, HeardItem } from './messages.ts';

/** Readings on their way to the services: bounded, in order, at a pace the services can take. */
export interface Outbox {
  put(items: readonly HeardItem[]): void;
  /**
   * The next batch, or null when there is none or too many are on their way already. Before the items that are left it tells of those
   * given up since the batch before.
   */
  next(): readonly BatchItem[] | null;
  /** The services have taken a batch. */
  taken(): void;
  /** Readings of other channels than the head given up so far. */
  dropped(): number;
  /** Head readings left out between two others of a flood; their neighbours are kept. */
  thinned(): number;
  waiting(): number;
  /** When the oldest item that waits happened; null when none does. */
  waitingSinceS(): number | null;
  /** The services have not taken what was sent: nothing more should be sent now. */
  isBlocked(): boolean;
}

export interface OutboxLimits {
  readonly mostHead: number;
  readonly mostOther: number;
  readonly mostInBatch: number;
  readonly mostUntaken: number;
}

/** At 100 readings a second, half a minute of stalled services costs nothing. */
const usualLimits: OutboxLimits = {
  mostHead: 20_000,
  mostOther: 20_000,
  mostInBatch: 200,
  mostUntaken: 8,
};

/**
 * When the services stall, other channels give up their oldest readings. The head never goes dark:
 * only when tens of thousands of its readings wait is every second one of the older half left out, so
 * its course stays whole and the newest is always kept. Link changes are never left out.
 */
export function createOutbox(limits: OutboxLimits = usualLimits): Outbox {
  let items: HeardItem[] = [];
  let untaken = 0;
  let dropped = 0;
  let thinned = 0;
  /** Given up since the last batch. */
  let untold: GivenUp | null = null;

  function giveUp(item: HeardItem): void {
    if (item.kind !== 'reading') return;
    const { atS } = item.reading;
    untold = {
      readings: (untold?.readings ?? 0) + 1,
      fromS: Math.min(untold?.fromS ?? atS, atS),
      toS: Math.max(untold?.toS ?? atS, atS),
    };
  }

  function shedOthers(): void {
    const surplus = items.filter(isOther).length - limits.mostOther;
    if (surplus <= 0) return;
    // A tenth more than needed, so that a flood does not search the whole queue for each reading.
    let toDrop = surplus + Math.floor(limits.mostOther / 10);
    items = items.filter((item) => {
      const drop = toDrop > 0 && isOther(item);
      if (drop) {
        toDrop -= 1;
        dropped += 1;
        giveUp(item);
      }
      return !drop;
    });
  }

  function thinHead(): void {
    const waiting = items.filter(isHead).length;
    if (waiting <= limits.mostHead) return;
    let seen = 0;
    items = items.filter((item) => {
      if (!isHead(item)) return true;
      seen += 1;
      const keep = seen > waiting / 2 || seen % 2 === 1;
      if (!keep) {
        thinned += 1;
        giveUp(item);
      }
      return keep;
    });
  }

  return {
    put(added) {
      for (const item of added) items.push(item);
      if (items.length > Math.min(limits.mostHead, limits.mostOther)) {
        shedOthers();
        thinHead();
      }
    },
    next() {
      if (items.length === 0 || untaken >= limits.mostUntaken) return null;
      untaken += 1;
      const batch = items.splice(0, limits.mostInBatch);
      if (untold === null) return batch;
      const givenUp = { kind: 'given-up', ...untold } as const;
      untold = null;
      return [givenUp, ...batch];
    },
    taken() {
      untaken = Math.max(0, untaken - 1);
    },
    dropped: () => dropped,
    thinned: () => thinned,
    waiting: () => items.length,
    waitingSinceS() {
      const [oldest] = items;
      if (oldest === undefined) return null;
      return oldest.kind === 'reading' ? oldest.reading.atS : oldest.change.atS;
    },
    isBlocked: () => untaken >= limits.mostUntaken,
  };
}

function isHead(item: HeardItem): boolean {
  return item.kind === 'reading' && item.reading.channel === 'head';
}

function isOther(item: HeardItem): boolean {
  return item.kind === 'reading' && item.reading.channel !== 'head';
}
