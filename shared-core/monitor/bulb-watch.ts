import type { BiasBelief } from './bias-belief.ts';
import type { HeadState } from './head-filter.ts';
import type { PlateauView } from './plateau-watch.ts';
import type { BulbDoubt } from './probe-fault.ts';

/** Watches for a bulb that reads what no ethanol–water vapour can give, though the probe itself works. */
export interface BulbWatch {
  second(now: BulbSecond): void;
  /** What speaks against trusting the head, which is staged all the same; null while nothing does. */
  doubt(): BulbDoubt | null;
  /** Without vapour a bulb cools steadily: one that stays warm is no sign of the end, whatever it reads. */
  isCooling(): boolean;
}

export interface BulbSecond {
  readonly head: HeadState;
  readonly plateau: PlateauView;
  /** By the air pressure known, on the true scale. */
  readonly azeotropeC: number;
  /** What probe and pressure may be off by before the run. */
  readonly priorBias: BiasBelief;
  readonly isHeatOff: boolean;
}

/** A bulb this far below the azeotrope is not yet reached by vapour [K]. */
const nearBoilingK = 15;
/** Slower than this the bulb rests: without vapour it would cool, in rising vapour it would warm [K/s]. */
const restingKPerS = 0.012;
/** A slow heater may hold the vapour just below the bulb for a while; only a longer rest is odd [s]. */
const patienceS = 150;
/** Vapour that left must have been away for so long: a bulb takes a while to begin to cool [s]. */
const absentPatienceS = 120;
/** A head without vapour cools at least so fast, on the whole [K/s]; by simulation, halved. */
const coolingKPerS = 0.015;
/** Deviation that probe and pressure explain, in their standard deviations, and at least [K]. */
const doubtFactor = 3;
const leastDoubtK = 1;

export function createBulbWatch(): BulbWatch {
  let lowForS = 0;
  let warmForS = 0;
  let doubt: BulbDoubt | null = null;
  let leftAtC = 0;
  let cooling = false;

  const followCooling = ({ head, plateau }: BulbSecond): void => {
    if (plateau.recededSinceS === null) {
      leftAtC = head.bulbC;
      cooling = false;
      return;
    }
    cooling = leftAtC - head.bulbC > coolingKPerS * plateau.absentS;
  };

  return {
    second: (now) => {
      const { head, plateau, azeotropeC, priorBias, isHeatOff } = now;
      followCooling(now);
      const belowK = azeotropeC - head.vapourC;
      const resting = Math.abs(head.rateKPerS) < restingKPerS;
      const explainedK = Math.max(leastDoubtK, doubtFactor * priorBias.sdK);
      const away = plateau.recededSinceS !== null;
      const near = plateau.arrivedS !== null && belowK < nearBoilingK && !isHeatOff;
      const low = near && !away && resting && belowK > explainedK;
      // Above the azeotrope it may be vapour after all, and the head only has not been taken for wet again.
      const warm =
        near && away && resting && belowK > leastDoubtK && plateau.absentS > absentPatienceS;
      lowForS = low ? lowForS + 1 : stillLow(lowForS, near && !away, belowK, explainedK);
      warmForS = warm ? warmForS + 1 : 0;
      if (lowForS > patienceS) doubt = 'below-boiling';
      else doubt = warmForS > patienceS / 2 ? 'warm-without-vapour' : null;
    },
    doubt: () => doubt,
    isCooling: () => cooling,
  };
}

/** A reading that swings for a moment does not start the count anew; one that has come back up does. */
function stillLow(lowForS: number, near: boolean, belowK: number, explainedK: number): number {
  return near && belowK > explainedK ? lowForS : 0;
}
