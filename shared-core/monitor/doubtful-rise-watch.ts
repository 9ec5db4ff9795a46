import type { HeadState } from './head-filter.ts';
import type { BulbDoubt } from './probe-fault.ts';

/** How a head that cannot be relied on has risen since it was doubted. */
export interface DoubtfulRise {
  readonly lowestC: number;
  /** The most it read before this rise. */
  readonly highestC: number;
  /** What lies between the azeotrope and the strength limit [K]. */
  readonly toLimitK: number;
  /** When the head had fallen back, or the heat was off; null while it stands clear of all it read before [s]. */
  readonly endedS: number | null;
}

/**
 * Watches a bulb that reads less than ethanol–water vapour can give. Its offset is unknown and may swing, so no
 * reading of it tells a strength; but vapour that goes from the plateau to the limit lifts it by about as much as
 * lies between them.
 */
export interface DoubtfulRiseWatch {
  second(now: DoubtfulSecond): void;
  /**
   * The first such rise of the run, also after it has ended: what the head reads is no better known then, until the air
   * pressure is corrected.
   */
  rise(): DoubtfulRise | null;
}

export interface DoubtfulSecond {
  readonly timeS: number;
  readonly head: HeadState;
  readonly doubt: BulbDoubt | null;
  /** By the air pressure known, on the true scale. */
  readonly azeotropeC: number;
  readonly limitC: number;
  readonly isHeatOff: boolean;
}

/** A bulb this far below the azeotrope is no longer in vapour [K]. */
const nearBoilingK = 15;
/** What the head read so long ago is what it is compared with: a rise must not hide itself [s]. */
const recallS = 90;
/** The head must have risen past the highest of it by so much, for so long [K], [s]. */
const clearByK = 1;
const clearForS = 10;
/** More than lies between azeotrope and limit: a bulb that is badly wetted swings by some kelvins of its own [K]. */
const swingK = 1.5;
/**
 * Heat that is taken away lets the bulb cool faster than that, and it is back when it has been slower for so long:
 * what it read meanwhile is no level [K/s], [s].
 */
const coolingKPerS = 0.03;
const backAfterS = 30;
/** No tail heats a bulb faster: it was wetted, or hung in its place, and is another bulb now [K/s]. */
const fastestRiseKPerS = 5 / 60;
/** A pressure that has been corrected by as much as this makes a new judgement necessary [K]. */
const newScaleK = 0.3;

export function createDoubtfulRiseWatch(): DoubtfulRiseWatch {
  let recent: { readonly bulbC: number; readonly isLevel: boolean }[] = [];
  let levelForS = 0;
  let isWatching = false;
  let lowestC = Number.POSITIVE_INFINITY;
  let highestC = Number.NEGATIVE_INFINITY;
  let clearS = 0;
  let scaleC: number | null = null;
  let found: DoubtfulRise | null = null;

  const beginAnew = (): void => {
    recent = [];
    lowestC = Number.POSITIVE_INFINITY;
    highestC = Number.NEGATIVE_INFINITY;
    clearS = 0;
    levelForS = 0;
  };

  const remember = ({ bulbC, rateKPerS }: HeadState): void => {
    levelForS = Math.abs(rateKPerS) < coolingKPerS ? levelForS + 1 : 0;
    recent.push({ bulbC, isLevel: levelForS > backAfterS });
    const past = recent.length > recallS ? recent.shift() : undefined;
    if (past === undefined) return;
    if (past.isLevel) lowestC = Math.min(lowestC, past.bulbC);
    highestC = Math.max(highestC, past.bulbC);
  };

  return {
    second: ({ timeS, head, doubt, azeotropeC, limitC, isHeatOff }) => {
      const { bulbC, rateKPerS } = head;
      const isNewScale = scaleC !== null && Math.abs(azeotropeC - scaleC) > newScaleK;
      if (isNewScale) found = null;
      if (found !== null) {
        const hasEnded = isHeatOff || bulbC < found.highestC;
        if (found.endedS === null && hasEnded) found = { ...found, endedS: timeS };
        return;
      }
      const isAway = isHeatOff || bulbC < azeotropeC - nearBoilingK;
      if (isAway || isNewScale) isWatching = false;
      if (!isWatching) {
        if (doubt === null || isAway || isNewScale) {
          scaleC = isNewScale ? null : scaleC;
          return;
        }
        isWatching = true;
        scaleC = azeotropeC;
        beginAnew();
      }
      if (rateKPerS > fastestRiseKPerS && bulbC > highestC) beginAnew();
      remember(head);
      const toLimitK = limitC - azeotropeC;
      const isClear = bulbC > Math.max(highestC + clearByK, lowestC + toLimitK + swingK);
      clearS = isClear ? clearS + 1 : 0;
      if (clearS >= clearForS) found = { lowestC, highestC, toLimitK, endedS: null };
    },
    rise: () => found,
  };
}
