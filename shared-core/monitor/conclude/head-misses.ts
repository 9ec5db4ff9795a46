import { headAheadS, headModelSdK, type TwinOutlook } from '../../twin/index.ts';

/** Holds the head, from one look to the next, against what the twin expected of it. */
export interface HeadMisses {
  /** Takes what a look shows, and what the twin expects of the next one. */
  see(look: HeadLook, next: TwinOutlook['headSoonK']): void;
  /** What was expected from this time of boiling on counts no more [s]. */
  forgetFrom(boiledS: number): void;
  count(): number;
  /** Sum of squares of the misses, in standard deviations of what was expected: one for each, where the model is right. */
  squares(): number;
  /** Root mean square of the misses [K]. */
  usualK(): number;
}

/** The head's height above the azeotrope as read, with its standard deviation [K], at a time of the run and of boiling [s]. */
export interface HeadLook {
  readonly timeS: number;
  readonly boiledS: number;
  readonly heightK: number;
  readonly heightSdK: number;
}

/** Looks that count: what came long before tells of another way to heat; chosen here. */
const remembered = 20;
/** However far one look is off, it is no more than one look; chosen here. */
const farthestSds = 8;

interface Miss {
  /** When it was expected to be otherwise, in boiling [s]. */
  readonly expectedS: number;
  readonly kelvins: number;
  readonly sds: number;
}

export function createHeadMisses(): HeadMisses {
  let misses: Miss[] = [];
  let before: { readonly look: HeadLook; readonly next: TwinOutlook['headSoonK'] } | null = null;

  return {
    see: (look, next) => {
      // After a while without a look nothing had been expected of this one.
      if (before !== null && look.timeS - before.look.timeS <= headAheadS) {
        const kelvins = look.heightK - before.next.mean;
        const sds = kelvins / Math.hypot(before.next.sd, look.heightSdK, headModelSdK);
        const miss = { expectedS: before.look.boiledS, kelvins, sds };
        misses = [...misses, miss].slice(-remembered);
      }
      before = { look, next };
    },
    forgetFrom: (boiledS) => {
      misses = misses.filter(({ expectedS }) => expectedS < boiledS);
      if (before !== null && before.look.boiledS >= boiledS) before = null;
    },
    count: () => misses.length,
    squares: () =>
      misses.reduce((sum, { sds }) => sum + Math.min(farthestSds, Math.abs(sds)) ** 2, 0),
    usualK: () =>
      misses.length === 0
        ? 0
        : Math.sqrt(misses.reduce((sum, { kelvins }) => sum + kelvins ** 2, 0) / misses.length),
  };
}
