import type { RunSettings } from '../../run/index.ts';
import {
  createTwin,
  heightModelSdK,
  type OffsetDoubt,
  potReading,
  receiverEveryS,
  receiverSdMl,
  type Twin,
  type TwinOutlook,
} from '../../twin/index.ts';
import type { MarksLedger } from '../marks-ledger.ts';
import type { VapourScale } from '../situation/vapour-scale.ts';
import type { ForecastSecond } from './forecast-second.ts';
import { createTwinFeed, type TwinFeed } from './twin-feed.ts';

/** What a twin expects from one second on. */
export interface LookAhead {
  readonly from: ForecastSecond;
  readonly boiledS: number;
  readonly outlook: TwinOutlook;
  /** Time of boiling from which on other looks expected something else because of a mark that has been withdrawn [s]; null mostly. */
  readonly mistakenFromS: number | null;
}

/**
 * A twin that is shown the run as it goes on, and looks ahead from each whole minute: at once, or some seconds later where it learned
 * much, but always from that minute on, so that nothing hangs on how long it took.
 */
export interface TwinFollower {
  /** Takes one second; answers whether a new outlook can be had. */
  second(input: ForecastSecond): boolean;
  /** Looks ahead from the last minute, where {@link second} answered so. */
  lookAhead(): LookAhead;
  /** The last one. */
  outlook(): TwinOutlook | null;
  /** When the twin was last shown what a balance says [s]. */
  receiverSeenS(): number;
  /** Minutes of a held head that its outlook rests on. */
  headBlocks(): number;
}

/** The end of a run lies an hour away: once a minute is often enough, and one head reading a minute is one of its own [s]. */
const everyS = 60;
/**
 * Moves of the twin's stills in one second, of some thousand that it takes where it learns much: no reading waits longer than for these.
 * By `npm run bench -- monitor`.
 */
const movesASecond = 240;
/** Before vapour has been held for so long the column still fills, which the twin knows nothing of [s]; chosen here. */
const settledS = 120;
/** A first reading warmer than this was taken after heating had begun [°C]. */
const coldC = 40;

/** @param leastMeanMoleFraction mean that all distillate is to keep [mol/mol]; null where none was asked for */
export function createTwinFollower(
  settings: RunSettings,
  marks: MarksLedger,
  leastMeanMoleFraction: number | null,
): TwinFollower {
  let feed: TwinFeed | null = null;
  /** Seconds of boiling that took something out of the pot. */
  let boiledS = 0;
  let refluxedS = 0;
  let receiverSeenS = Number.NEGATIVE_INFINITY;
  let first: { readonly timeS: number; readonly bulbC: number } | null = null;
  let headBlocks = 0;
  let blocksBehindOutlook = 0;
  let outlook: TwinOutlook | null = null;
  let due: Pick<LookAhead, 'from' | 'boiledS'> | null = null;

  const begin = (input: ForecastSecond, bathedS: number): Twin => {
    const { heat, firstOnS } = marks.heatUntil(input.timeS);
    const startS = firstOnS ?? (first !== null && first.bulbC < coldC ? first.timeS : null);
    const tookS = startS === null ? null : bathedS - startS;
    const eased = heat === 'unknown' ? null : heat === 'eased';
    const { offsetSdK } = offsetDoubt(input);
    return createTwin(settings, { tookS, eased }, offsetSdK, limitHeightK(input.scale));
  };

  const seeReceiver = (into: TwinFeed, { timeS, receiverMl }: ForecastSecond): void => {
    if (receiverMl === null || receiverMl < 1 || timeS - receiverSeenS < receiverEveryS) return;
    receiverSeenS = timeS;
    into.show({ kind: 'volume', boiledS, value: receiverMl, sd: receiverSdMl });
  };

  const seeBlock = (into: TwinFeed, input: ForecastSecond): void => {
    const { head, scale, potC, situation } = input;
    if (situation.heldWetS < settledS || situation.calmS < everyS) return;
    const value = head.vapourC - scale.azeotropeC;
    into.show({ kind: 'head', boiledS, value, sd: head.vapourSdK });
    headBlocks += 1;
    if (potC !== null) {
      into.show(potReading(boiledS, potC - scale.azeotropeC, offsetDoubt(input)));
    }
  };

  const seeMinute = (into: TwinFeed, input: ForecastSecond): void => {
    seeReceiver(into, input);
    const open = input.stage === 'first-fraction' || input.stage === 'main-fraction';
    if (open && input.situation.recededSinceS === null) seeBlock(into, input);
    if (input.situation.heldWetS >= settledS) due = { from: input, boiledS };
  };

  return {
    second: (input) => {
      const { timeS, head, situation } = input;
      first ??= { timeS, bulbC: head.bulbC };
      const { bathedS } = situation;
      if (bathedS === null) return false;
      if (input.stage === 'cool-down' || input.suspended) return false;
      feed ??= createTwinFeed(() => begin(input, bathedS), marks);
      if (input.nothingCollected && situation.recededSinceS === null) refluxedS += 1;
      boiledS = Math.max(boiledS, situation.wetS - refluxedS);
      feed.showMarks(boiledS, outlook?.flowMlPerS ?? null);
      if (timeS % everyS === 0) seeMinute(feed, input);
      // Asked each second anew: a mark that was withdrawn meanwhile has put another twin in its place.
      return due !== null && feed.twin().update(movesASecond);
    },
    lookAhead: () => {
      if (feed === null || due === null) throw new Error('No minute is due.');
      const limitK = limitHeightK(due.from.scale);
      outlook = feed.twin().outlook(due.boiledS, limitK, leastMeanMoleFraction);
      blocksBehindOutlook = headBlocks;
      const ahead = { ...due, outlook, mistakenFromS: feed.takeMistakenFromS() };
      due = null;
      return ahead;
    },
    outlook: () => outlook,
    receiverSeenS: () => receiverSeenS,
    headBlocks: () => blocksBehindOutlook,
  };
}

function limitHeightK(scale: VapourScale): number {
  return scale.limitC - scale.azeotropeC;
}

/** The twin's offset takes up the bias and what its own head is off: it cannot tell them apart. */
function offsetDoubt({ statedSdK, pressureSdK }: ForecastSecond): OffsetDoubt {
  return { offsetSdK: Math.hypot(statedSdK, heightModelSdK), pressureSdK };
}
