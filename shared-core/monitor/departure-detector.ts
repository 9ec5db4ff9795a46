/** The verdict of the sequential test at one moment. */
export interface DepartureEvidence {
  /** Logarithm of the generalised likelihood ratio; {@link departureThreshold} fires. */
  readonly logLikelihoodRatio: number;
  /** Most likely time at which the ramp began, and its slope. */
  readonly onsetS: number;
  readonly slopeKPerS: number;
}

/** Looks for a ramp that begins at an unknown time with an unknown slope. */
export interface DepartureDetector {
  /**
   * Takes the mean of one block, relative to the level the plateau was held at.
   * @param noiseSdK standard deviation of one block's mean
   * @param correlation correlation of neighbouring blocks
   */
  see(timeS: number, aboveLevelK: number, noiseSdK: number, correlation: number): void;
  restart(): void;
  evidence(): DepartureEvidence;
}

export const departureBlockS = 5;
/**
 * With 5 s blocks and onsets searched over 6 min, noise alone reaches this up to 0.4 times an hour on
 * the plateau (`scripts/ensemble.ts --delays`): it is information, and the alarm asks for more.
 */
export const departureThreshold = 11;

/** A plateau may creep upwards: few plates and a weakening pot do that without its being the end. */
const slowestRampKPerS = 0.06 / 60;
const window = 72;
const nothing: DepartureEvidence = { logLikelihoodRatio: 0, onsetS: 0, slopeKPerS: 0 };

/**
 * Generalised likelihood ratio for a ramp in correlated noise. Blocks are whitened with the
 * correlation ρ, `w_j = (r_j − ρ r_(j−1))/(σ √(1 − ρ²))`, the ramp g likewise; for each onset the best slope is
 * `s = Σ g w / Σ g²` and the log-likelihood gain over a slope s0 that a plateau may have anyway
 * `(s − s0)² Σ g² / 2`, for s > s0.
 *
 * Source: M. Basseville, I. V. Nikiforov, "Detection of Abrupt Changes" (1993), section 2.4.3, GLR for
 * unknown magnitude; from memory.
 */
export function createDepartureDetector(): DepartureDetector {
  const whitened = new Float64Array(window);
  let count = 0;
  let previous: number | null = null;
  let evidence = nothing;

  const search = (timeS: number, scale: number, correlation: number): void => {
    let best = nothing;
    for (let length = 2; length <= count; length += 1) {
      let cross = 0;
      let square = 0;
      for (let step = 1; step <= length; step += 1) {
        const ramp = departureBlockS * (step - correlation * (step - 1)) * scale;
        cross += ramp * (whitened[count - length + step - 1] as number);
        square += ramp * ramp;
      }
      const excess = cross / square - slowestRampKPerS;
      if (excess <= 0) continue;
      const gain = (excess * excess * square) / 2;
      if (gain > best.logLikelihoodRatio) {
        best = {
          logLikelihoodRatio: gain,
          onsetS: timeS - length * departureBlockS,
          slopeKPerS: cross / square,
        };
      }
    }
    evidence = best;
  };

  return {
    see: (timeS, aboveLevelK, noiseSdK, correlation) => {
      const scale = 1 / (noiseSdK * Math.sqrt(1 - correlation ** 2));
      const white =
        previous === null ? aboveLevelK / noiseSdK : (aboveLevelK - correlation * previous) * scale;
      previous = aboveLevelK;
      if (count === window) {
        whitened.copyWithin(0, 1);
        count -= 1;
      }
      whitened[count] = white;
      count += 1;
      search(timeS, scale, correlation);
    },
    restart: () => {
      count = 0;
      previous = null;
      evidence = nothing;
    },
    evidence: () => evidence,
  };
}
