/** The verdict of the sequential test at one moment. */
export interface DepartureEvidence {
  /** Logarithm of the generalised likelihood ratio; {@link departureThreshold} fires. */
  readonly logLikelihoodRatio: number;
  /** Most likely time at which the ramp began, and its slope. */
  readonly onsetS: number;
  readonly slopeKPerS: number;
}

/** Noise of one block's mean: white, and correlated with an exponential memory. */
export interface BlockNoise {
  readonly whiteSdK: number;
  readonly slowSdK: number;
  readonly slowCorrelationS: number;
}

/** Looks for a ramp that begins at an unknown time with an unknown slope. */
export interface DepartureDetector {
  /** Takes the mean of one block, relative to the level the plateau was held at. */
  see(timeS: number, aboveLevelK: number, noise: BlockNoise): void;
  restart(): void;
  evidence(): DepartureEvidence;
}

export const departureBlockS = 2;
/**
 * With blocks of 2 s and onsets searched over 6 min, noise alone reaches this at most some 0.1 times an hour on
 * the plateau (`scripts/ensemble.ts --delays`): it is information, and the alarm asks for more.
 */
export const departureThreshold = 13;

/** A plateau may creep upwards: few plates and a weakening pot do that without its being the end. */
const slowestRampKPerS = 0.06 / 60;
/** Six minutes back, in blocks: a departure that began earlier has long been called. */
const onsets = 180;
/** One block alone tells no slope. */
const fewestBlocks = 2;
const nothing: DepartureEvidence = { logLikelihoodRatio: 0, onsetS: 0, slopeKPerS: 0 };

/**
 * Generalised likelihood ratio for a ramp in correlated noise. A Kalman filter follows the slow noise and turns
 * what is seen into innovations w of variance σ²; a ramp of unit slope from each onset goes through the same filter
 * and comes out as g. For each onset the best slope is `s = Σ g w/σ² / Σ g²/σ²` and the log-likelihood gain over a
 * slope s0 that a plateau may have anyway `(s − s0)² Σ g²/σ² / 2`, for s > s0. The sums are carried on from block
 * to block, so each costs one pass over the onsets.
 *
 * Source: M. Basseville, I. V. Nikiforov, "Detection of Abrupt Changes" (1993), sections 2.4.3 (GLR for
 * unknown magnitude) and 7.2.2 (additive changes seen through a Kalman filter); from memory.
 */
export function createDepartureDetector(): DepartureDetector {
  const onsetS = new Float64Array(onsets);
  const blocks = new Int32Array(onsets);
  /** What the filter takes for slow noise of a ramp of unit slope from each onset. */
  const rampAsNoise = new Float64Array(onsets);
  const cross = new Float64Array(onsets);
  const square = new Float64Array(onsets);
  let known = 0;
  let next = 0;
  let previousS: number | null = null;
  let slowK = 0;
  let slowVariance = 0;
  let evidence = nothing;

  const beginOnset = (timeS: number): void => {
    onsetS[next] = timeS;
    blocks[next] = 0;
    rampAsNoise[next] = 0;
    cross[next] = 0;
    square[next] = 0;
    next = (next + 1) % onsets;
    known = Math.min(onsets, known + 1);
  };

  return {
    see: (timeS, aboveLevelK, noise) => {
      const kept = previousS === null ? 0 : Math.exp(-(timeS - previousS) / noise.slowCorrelationS);
      slowVariance = kept * kept * slowVariance + noise.slowSdK ** 2 * (1 - kept * kept);
      const variance = slowVariance + noise.whiteSdK ** 2;
      const gain = slowVariance / variance;
      slowK *= kept;
      const innovation = aboveLevelK - slowK;
      slowK += gain * innovation;
      slowVariance *= 1 - gain;
      let mostRatio = 0;
      let bestOnsetS = 0;
      let bestSlope = 0;
      for (let index = 0; index < known; index += 1) {
        const began = onsetS[index] as number;
        const expected = kept * (rampAsNoise[index] as number);
        const ramp = timeS - began - expected;
        rampAsNoise[index] = expected + gain * ramp;
        const sum = (cross[index] as number) + (ramp * innovation) / variance;
        const squares = (square[index] as number) + (ramp * ramp) / variance;
        cross[index] = sum;
        square[index] = squares;
        const count = (blocks[index] as number) + 1;
        blocks[index] = count;
        const slope = sum / squares;
        const excess = slope - slowestRampKPerS;
        if (count < fewestBlocks || excess <= 0) continue;
        const logLikelihoodRatio = (excess * excess * squares) / 2;
        if (!(logLikelihoodRatio > mostRatio)) continue;
        mostRatio = logLikelihoodRatio;
        bestOnsetS = began;
        bestSlope = slope;
      }
      evidence =
        mostRatio === 0
          ? nothing
          : { logLikelihoodRatio: mostRatio, onsetS: bestOnsetS, slopeKPerS: bestSlope };
      previousS = timeS;
      beginOnset(timeS);
    },
    restart: () => {
      known = 0;
      next = 0;
      previousS = null;
      slowK = 0;
      slowVariance = 0;
      evidence = nothing;
    },
    evidence: () => evidence,
  };
}
