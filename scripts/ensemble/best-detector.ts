/** Noise of a reading: white, and two parts that forget: the bulb's slow scatter, and the head's wander. */
export interface PlateauNoise {
  readonly whiteSdK: number;
  readonly slowSdK: number;
  readonly slowS: number;
  readonly wanderSdK: number;
  readonly wanderS: number;
}

/** Readings are taken together two by two, and onsets sought as often, some minutes back. */
const blockS = 2;
const onsets = 200;
/** Nobody knows the level, nor how a plateau drifts. */
const anyLevelK2 = 100;
const driftSdKPerS = 0.05 / 60;

/** Level, drift, slow scatter, wander. */
type State = [level: number, drift: number, slow: number, wander: number];
const seen = [1, 0, 1, 1] as const;
const parts = [0, 1, 2, 3] as const;

interface Ramp {
  readonly beganS: number;
  state: State;
  cross: number;
  square: number;
  blocks: number;
}

/**
 * The best that a sequential test can do about a bend when it knows the noise and nothing else: not the level before, not the drift, not
 * the onset, not the slope. A window-limited generalised likelihood ratio: what level and drift would explain as well is taken out by a
 * Kalman filter that holds both with wide priors, and the largest gain over all onsets in the window is returned each second.
 *
 * Source: A. M. Krieger, M. Pollak, B. Yakir, JASA 98 (2003) 456 (surveillance of a simple linear regression); T. L. Lai, IEEE Trans.
 * Inf. Theory 44 (1998) 2917 (window-limited tests); from memory.
 */
export function createBestDetector(noise: PlateauNoise): (aboveLevelK: number) => number {
  const slowKept = Math.exp(-blockS / noise.slowS);
  const wanderKept = Math.exp(-blockS / noise.wanderS);
  const grows = [
    0,
    0,
    noise.slowSdK ** 2 * (1 - slowKept ** 2),
    noise.wanderSdK ** 2 * (1 - wanderKept ** 2),
  ] as const;
  const onwards = [
    [1, blockS, 0, 0],
    [0, 1, 0, 0],
    [0, 0, slowKept, 0],
    [0, 0, 0, wanderKept],
  ] as const;
  const after = (state: State): State => [
    state[0] + blockS * state[1],
    state[1],
    slowKept * state[2],
    wanderKept * state[3],
  ];
  let covariance: number[][] = [
    [anyLevelK2, 0, 0, 0],
    [0, driftSdKPerS ** 2, 0, 0],
    [0, 0, noise.slowSdK ** 2, 0],
    [0, 0, 0, noise.wanderSdK ** 2],
  ];
  let state: State = [0, 0, 0, 0];
  let ramps: Ramp[] = [];
  let timeS = 0;
  let sum = 0;
  let most = 0;

  /** Gains and variance of the next block. */
  const expectBlock = (): { readonly gains: readonly number[]; readonly variance: number } => {
    const moved = onwards.map((row) =>
      parts.map((to) => row.reduce((total, weight, k) => total + weight * at(k, to), 0)),
    );
    covariance = moved.map((row, from) =>
      parts.map((to) =>
        (onwards[to] as readonly number[]).reduce(
          (total, weight, k) => total + weight * (row[k] as number),
          from === to ? (grows[to] as number) : 0,
        ),
      ),
    );
    const shared = parts.map((from) =>
      seen.reduce((total: number, weight, to) => total + weight * at(from, to), 0),
    );
    const variance =
      noise.whiteSdK ** 2 / blockS +
      seen.reduce((total: number, weight, from) => total + weight * (shared[from] as number), 0);
    const gains = shared.map((value) => value / variance);
    covariance = covariance.map((row, from) =>
      row.map((value, to) => value - (gains[from] as number) * (shared[to] as number)),
    );
    return { gains, variance };
  };
  const at = (from: number, to: number): number => covariance[from]?.[to] as number;

  const seeBlock = (meanK: number): void => {
    const { gains, variance } = expectBlock();
    const learn = (before: State, value: number): { left: number; now: State } => {
      const expected = after(before);
      const left = value - expected[0] - expected[2] - expected[3];
      const now = expected.map((part, index) => part + (gains[index] as number) * left);
      return { left, now: now as State };
    };
    const { left: surpriseK, now } = learn(state, meanK);
    state = now;
    most = 0;
    for (const ramp of ramps) {
      const { left, now: shape } = learn(ramp.state, timeS - ramp.beganS);
      ramp.state = shape;
      ramp.cross += (left * surpriseK) / variance;
      ramp.square += left ** 2 / variance;
      ramp.blocks += 1;
      // One block alone tells no slope.
      if (ramp.blocks > 1 && ramp.cross > 0) {
        most = Math.max(most, ramp.cross ** 2 / (2 * ramp.square));
      }
    }
    ramps = [...ramps.slice(1 - onsets), newRamp(timeS)];
  };

  return (aboveLevelK) => {
    timeS += 1;
    sum += aboveLevelK;
    if (timeS % blockS === 0) {
      seeBlock(sum / blockS);
      sum = 0;
    }
    return most;
  };
}

const newRamp = (beganS: number): Ramp => ({
  beganS,
  state: [0, 0, 0, 0],
  cross: 0,
  square: 0,
  blocks: 0,
});
