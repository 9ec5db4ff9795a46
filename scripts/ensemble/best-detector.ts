/** Noise of a reading: white, and correlated with an exponential memory. */
export interface PlateauNoise {
  readonly whiteSdK: number;
  readonly slowSdK: number;
  readonly slowS: number;
}

const window = 900;

/**
 * The best a sequential test can do when it is told everything but the onset: slope, level and noise. Readings
 * are whitened by the steady Kalman filter of the noise, the ramp likewise, and the largest log-likelihood
 * ratio over all onsets is returned each second (Lorden's and Pollak's optimality; from memory).
 */
export function createBestDetector(
  noise: PlateauNoise,
  slopeKPerS: number,
): (aboveLevelK: number) => number {
  const kept = Math.exp(-1 / noise.slowS);
  const slowVariance = noise.slowSdK ** 2;
  const whiteVariance = noise.whiteSdK ** 2;
  let predicted = slowVariance;
  for (let step = 0; step < 500; step += 1) {
    const corrected = (predicted * whiteVariance) / (predicted + whiteVariance);
    predicted = kept * kept * corrected + slowVariance * (1 - kept * kept);
  }
  const variance = predicted + whiteVariance;
  const gain = predicted / variance;
  /** The ramp as it comes out of the whitening, from its onset on. */
  const signature = new Float64Array(window);
  let state = 0;
  for (let age = 0; age < window; age += 1) {
    const innovation = slopeKPerS * (age + 1) - state;
    signature[age] = innovation;
    state = kept * (state + gain * innovation);
  }
  const ratios = new Float64Array(window);
  let filtered = 0;
  let next = 0;
  return (aboveLevelK) => {
    const innovation = aboveLevelK - filtered;
    filtered = kept * (filtered + gain * innovation);
    ratios[next] = 0;
    let best = 0;
    for (let age = 0; age < window; age += 1) {
      const at = (next + window - age) % window;
      const ramp = signature[age] as number;
      const ratio = (ratios[at] as number) + (ramp * (innovation - ramp / 2)) / variance;
      ratios[at] = ratio;
      if (ratio > best) best = ratio;
    }
    next = (next + 1) % window;
    return best;
  };
}
