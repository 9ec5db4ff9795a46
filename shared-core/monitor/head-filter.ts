/** What is known of the head at one second: the vapour's temperature and how fast it changes. */
export interface HeadState {
  /** Lag-corrected temperature of what bathes the bulb [°C], on the probe's own scale. */
  readonly vapourC: number;
  readonly vapourSdK: number;
  readonly rateKPerS: number;
  readonly rateSdKPerS: number;
  /** The bulb itself, freed of noise [°C]. */
  readonly bulbC: number;
}

/** The noise a filter reckons with: white, and correlated over some seconds. */
export interface HeadNoise {
  readonly whiteSdK: number;
  readonly slowSdK: number;
  readonly slowCorrelationS: number;
}

/** A Kalman filter over vapour temperature, its rate, the lagging bulb and slow noise. */
export interface HeadFilter {
  restart(valueC: number): void;
  /** Lets one second pass. */
  predict(): void;
  /** How far an observation lies from what was expected, in kelvin and in standard deviations. */
  innovationK(valueC: number): number;
  surprise(valueC: number): number;
  correct(valueC: number): void;
  /** Forgets how sure it was of level and rate, after a confirmed jump of this size [K]. */
  loosen(jumpK: number): void;
  setNoise(noise: HeadNoise): void;
  state(): HeadState;
}

/**
 * Variance the rate gains each second [(K/s)²/s]: a departing head bends from rest to some 1 K/min
 * within some four minutes, (0.015 K/s)² over 225 s.
 */
const ratePowerPerS = 2e-7;
/** The level itself wanders a little with boil-up [K²/s]. */
const levelPowerPerS = 2e-5;
/** A bend does not go on for ever: rates decay over this time [s]. */
const ratePersistenceS = 900;

/** A jump says about as much of a change of rate as if it had taken half a minute [1/s²]. */
const jumpRatePerS2 = 1 / 30 ** 2;

const size = 4;

/**
 * States: vapour temperature θ, rate s, bulb p, slow noise a. Per second
 * `θ += s`, `s *= ρ`, `p += (1 − e^(−1/τ))(θ − p)`, `a *= φ`; observed is `p + a + white noise`.
 *
 * @param lagTimeConstantS time in which the bulb follows to 63 % [s]
 */
export function createHeadFilter(lagTimeConstantS: number, initialNoise: HeadNoise): HeadFilter {
  const follow = lagTimeConstantS > 0.2 ? -Math.expm1(-1 / lagTimeConstantS) : 1;
  const rateKept = Math.exp(-1 / ratePersistenceS);
  const mean = new Float64Array(size);
  const covariance = new Float64Array(size * size);
  const transition = new Float64Array(size * size);
  const scratch = new Float64Array(size * size);
  let noise = initialNoise;
  let slowKept = 0;

  const setNoise = (next: HeadNoise): void => {
    noise = next;
    slowKept = Math.exp(-1 / next.slowCorrelationS);
    transition.set([1, 1, 0, 0, 0, rateKept, 0, 0, follow, 0, 1 - follow, 0, 0, 0, 0, slowKept]);
  };
  setNoise(initialNoise);

  const restart = (valueC: number): void => {
    mean.set([valueC, 0, valueC, 0]);
    covariance.fill(0);
    covariance[0] = 1 + noise.slowSdK ** 2;
    covariance[5] = 0.02 ** 2;
    covariance[10] = 0.25 + noise.slowSdK ** 2;
    covariance[15] = noise.slowSdK ** 2;
  };

  const predict = (): void => {
    const [level = 0, rate = 0, bulb = 0, slow = 0] = mean;
    mean[0] = level + rate;
    mean[1] = rate * rateKept;
    mean[2] = bulb + follow * (level - bulb);
    mean[3] = slow * slowKept;
    multiply(transition, covariance, scratch);
    multiplyTransposed(scratch, transition, covariance);
    covariance[0] = (covariance[0] as number) + levelPowerPerS;
    covariance[5] = (covariance[5] as number) + ratePowerPerS;
    covariance[15] = (covariance[15] as number) + noise.slowSdK ** 2 * (1 - slowKept ** 2);
  };

  const innovationVariance = (): number =>
    (covariance[10] as number) +
    2 * (covariance[11] as number) +
    (covariance[15] as number) +
    noise.whiteSdK ** 2;

  const correct = (valueC: number): void => {
    const innovation = valueC - (mean[2] as number) - (mean[3] as number);
    const variance = innovationVariance();
    for (let row = 0; row < size; row += 1) {
      scratch[row] =
        (covariance[row * size + 2] as number) + (covariance[row * size + 3] as number);
    }
    for (let row = 0; row < size; row += 1) {
      const gain = (scratch[row] as number) / variance;
      mean[row] = (mean[row] as number) + gain * innovation;
      for (let column = 0; column < size; column += 1) {
        const at = row * size + column;
        covariance[at] = (covariance[at] as number) - gain * (scratch[column] as number);
      }
    }
  };

  return {
    restart,
    predict,
    innovationK: (valueC) => valueC - (mean[2] as number) - (mean[3] as number),
    surprise: (valueC) =>
      (valueC - (mean[2] as number) - (mean[3] as number)) / Math.sqrt(innovationVariance()),
    correct,
    loosen: (jumpK) => {
      const square = jumpK * jumpK;
      covariance[0] = (covariance[0] as number) + square;
      covariance[5] = (covariance[5] as number) + square * jumpRatePerS2;
      covariance[10] = (covariance[10] as number) + square;
    },
    setNoise,
    state: () => ({
      vapourC: mean[0] as number,
      vapourSdK: Math.sqrt(Math.max(0, covariance[0] as number)),
      rateKPerS: mean[1] as number,
      rateSdKPerS: Math.sqrt(Math.max(0, covariance[5] as number)),
      bulbC: mean[2] as number,
    }),
  };
}

function multiply(a: Float64Array, b: Float64Array, into: Float64Array): void {
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      let sum = 0;
      for (let k = 0; k < size; k += 1) {
        sum += (a[row * size + k] as number) * (b[k * size + column] as number);
      }
      into[row * size + column] = sum;
    }
  }
}

function multiplyTransposed(a: Float64Array, b: Float64Array, into: Float64Array): void {
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      let sum = 0;
      for (let k = 0; k < size; k += 1) {
        sum += (a[row * size + k] as number) * (b[column * size + k] as number);
      }
      into[row * size + column] = sum;
    }
  }
}
