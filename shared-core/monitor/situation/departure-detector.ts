import { type BlockNoise, createPlateauFilter, type FilterStep } from './plateau-filter.ts';

/** The verdict of the sequential test at one moment. */
export interface DepartureEvidence {
  /** Logarithm of the generalised likelihood ratio; {@link departureThreshold} fires. */
  readonly logLikelihoodRatio: number;
  /** The level from which the ramp most likely began [°C], and how steep it most likely is [K/s]. */
  readonly levelC: number;
  readonly slopeKPerS: number;
}

/** Looks for a ramp that begins at an unknown time with an unknown slope, from an unknown level. */
export interface DepartureDetector {
  /** Takes the mean of one block. */
  see(timeS: number, meanC: number, noise: BlockNoise): void;
  restart(): void;
  evidence(): DepartureEvidence;
}

/** Two seconds hold a reading of most loggers, and cost half as much as one [s]. */
export const departureBlockS = 2;
/**
 * Noise as it is learned, and the usual wander, reach this less than once in ten hours of plateau on the first still and on real traces
 * (`scripts/ensemble.ts --delays`, `scripts/real-traces.ts`).
 */
export const departureThreshold = 14;

/** Six minutes back, one every six seconds: a departure that began earlier has long been called. */
const onsets = 60;
const onsetEveryS = 6;
/** One block alone tells no slope. */
const fewestBlocks = 2;

/**
 * Generalised likelihood ratio for a bend upwards of a head that holds a level which nobody told, drifts a little and wanders. A
 * Kalman filter follows the plateau and turns what is seen into surprises w of variance σ²; a ramp of unit slope from each onset goes
 * through the same filter and comes out as g, so that what a level or a drift would explain as well is no evidence. For each onset the
 * best slope is `s = Σ g w/σ² / Σ g²/σ²` and the log-likelihood gain over no ramp `s² Σ g²/σ² / 2`, for s > 0. The sums are carried on
 * from block to block, so each costs one pass over the onsets.
 *
 * Source: M. Basseville, I. V. Nikiforov, "Detection of Abrupt Changes" (1993), sections 2.4.3 (GLR for
 * unknown magnitude) and 7.2.2 (additive changes seen through a Kalman filter); from memory.
 */
export function createDepartureDetector(): DepartureDetector {
  const filter = createPlateauFilter();
  const ramps = createRamps();
  let lastOnsetS = Number.NEGATIVE_INFINITY;
  let ratio = 0;
  let fromC = 0;
  let slope = 0;

  return {
    see: (timeS, meanC, noise) => {
      const step = filter.see(timeS, meanC, noise);
      ratio = 0;
      slope = 0;
      fromC = filter.levelC();
      if (step !== null) {
        const best = ramps.see(timeS, filter.surpriseK(), step);
        ratio = best.logLikelihoodRatio;
        slope = best.slopeKPerS;
        if (ratio > 0) fromC = best.levelC;
      }
      if (timeS - lastOnsetS < onsetEveryS) return;
      lastOnsetS = timeS;
      ramps.begin(timeS, filter.levelC());
    },
    restart: () => {
      filter.restart();
      ramps.forget();
      lastOnsetS = Number.NEGATIVE_INFINITY;
      ratio = 0;
      slope = 0;
    },
    evidence: () => ({ logLikelihoodRatio: ratio, levelC: fromC, slopeKPerS: slope }),
  };
}

/** Ramps of unit slope from each of the last onsets, as they come out of the filter. */
function createRamps() {
  const beganS = new Float64Array(onsets);
  const fromC = new Float64Array(onsets);
  const blocks = new Int32Array(onsets);
  /** What the filter takes for level, drift and slow scatter of each ramp. */
  const asLevel = new Float64Array(onsets);
  const asDrift = new Float64Array(onsets);
  const asSlow = new Float64Array(onsets);
  const cross = new Float64Array(onsets);
  const square = new Float64Array(onsets);
  let known = 0;
  let next = 0;

  /** What is left of a ramp once the filter has taken its share, one block on. */
  const through = (index: number, timeS: number, step: FilterStep): number => {
    const level = (asLevel[index] as number) + step.stepS * (asDrift[index] as number);
    const slow = step.kept * (asSlow[index] as number);
    const left = timeS - (beganS[index] as number) - level - slow;
    asLevel[index] = level + step.levelGain * left;
    asDrift[index] = (asDrift[index] as number) + step.driftGain * left;
    asSlow[index] = slow + step.slowGain * left;
    return left;
  };

  return {
    begin: (timeS: number, levelC: number): void => {
      beganS[next] = timeS;
      fromC[next] = levelC;
      for (const room of [blocks, asLevel, asDrift, asSlow, cross, square]) room[next] = 0;
      next = (next + 1) % onsets;
      known = Math.min(onsets, known + 1);
    },
    forget: (): void => {
      known = 0;
      next = 0;
    },
    /** The likeliest of them, by what the head showed beyond what a plateau would [K]. */
    see: (timeS: number, surpriseK: number, step: FilterStep): DepartureEvidence => {
      const weight = 1 / step.variance;
      let most = 0;
      let levelC = 0;
      let slopeKPerS = 0;
      for (let index = 0; index < known; index += 1) {
        const left = through(index, timeS, step);
        const sum = (cross[index] as number) + left * surpriseK * weight;
        const squares = (square[index] as number) + left * left * weight;
        cross[index] = sum;
        square[index] = squares;
        const count = (blocks[index] as number) + 1;
        blocks[index] = count;
        if (count < fewestBlocks || sum <= 0) continue;
        const logLikelihoodRatio = (sum * sum) / (2 * squares);
        if (!(logLikelihoodRatio > most)) continue;
        most = logLikelihoodRatio;
        levelC = fromC[index] as number;
        slopeKPerS = sum / squares;
      }
      return { logLikelihoodRatio: most, levelC, slopeKPerS };
    },
  };
}
