import { type HeadNoise, slowCorrelationS } from './head-noise.ts';

/** Learns the head's noise while the head holds: how much is white, how much is correlated. */
export interface NoiseLearner {
  /** Takes an observation made while the head holds, with the rate it drifts at. */
  see(timeS: number, valueC: number, rateKPerS: number): void;
  /** Forgets the last observations (not what was learned): after a gap or an upset. */
  interrupt(): void;
  noise(): HeadNoise;
}

/** Twice the time over which slow noise keeps: what is still shared at this lag is little [s]. */
const longLagS = 2 * slowCorrelationS;
/** Observations kept: one each second holds the long lag twice, and with gaps fewer do. */
const memory = 2 * longLagS;
/** What is believed before anything is learned, and for how many observations' worth. */
const priorVariance = 0.05 ** 2;
const priorWeight = 40;
/** Twenty minutes at one a second: noise changes with boiling, and what is older fades; chosen here. */
const longestMemory = 1200;
/** A probe that is noisier than this could not tell a fraction at all: what seems so is the head itself [K]. */
const mostSdK = 0.5;

/** Half the squared differences at one lag, the lags [s], and how many. */
interface LagSums {
  sum: number;
  lagSum: number;
  count: number;
}

/**
 * Half the mean square difference of observations at lag h is `σ²white + σ²slow (1 − e^(−h/15 s))`;
 * a short and a long lag give both parts. The head's own drift is taken out first.
 */
export function createNoiseLearner(): NoiseLearner {
  const times = new Float64Array(memory).fill(Number.NEGATIVE_INFINITY);
  const values = new Float64Array(memory);
  let next = 0;
  let lastS = Number.NEGATIVE_INFINITY;
  const short: LagSums = {
    sum: priorVariance * 1.5 * priorWeight,
    lagSum: 1 * priorWeight,
    count: priorWeight,
  };
  const long: LagSums = {
    sum: priorVariance * 2 * priorWeight,
    lagSum: longLagS * priorWeight,
    count: priorWeight,
  };

  /** Asked for several times a second, in hours of a plateau; null once more was learned. */
  let known: HeadNoise | null = null;

  const learn = (into: LagSums, difference: number, lagS: number): void => {
    const typical = into.sum / into.count;
    // Clipped at four standard deviations, so that one upset does not become "noise".
    const half = Math.min((difference * difference) / 2, 16 * typical);
    if (into.count > longestMemory) {
      const fade = longestMemory / into.count;
      into.sum *= fade;
      into.lagSum *= fade;
      into.count *= fade;
    }
    into.sum += half;
    into.lagSum += lagS;
    into.count += 1;
    known = null;
  };

  return {
    see: (timeS, valueC, rateKPerS) => {
      const gapS = timeS - lastS;
      if (gapS <= 12) {
        const before = values[(next + memory - 1) % memory] as number;
        learn(short, valueC - before - rateKPerS * gapS, gapS);
      }
      for (let back = 2; back < memory; back += 1) {
        const index = (next + memory - back) % memory;
        const lagS = timeS - (times[index] as number);
        if (lagS < longLagS) continue;
        if (lagS < longLagS + 12) {
          learn(long, valueC - (values[index] as number) - rateKPerS * lagS, lagS);
        }
        break;
      }
      times[next] = timeS;
      values[next] = valueC;
      next = (next + 1) % memory;
      lastS = timeS;
    },
    interrupt: () => {
      times.fill(Number.NEGATIVE_INFINITY);
      lastS = Number.NEGATIVE_INFINITY;
    },
    noise: () => {
      known ??= noiseOf(short, long);
      return known;
    },
  };
}

/** The two parts, from half the mean square differences at both lags. */
function noiseOf(short: Readonly<LagSums>, long: Readonly<LagSums>): HeadNoise {
  const shortShare = -Math.expm1(-(short.lagSum / short.count) / slowCorrelationS);
  const longShare = -Math.expm1(-(long.lagSum / long.count) / slowCorrelationS);
  const atShort = short.sum / short.count;
  const atLong = long.sum / long.count;
  const slow = Math.max(0, (atLong - atShort) / Math.max(0.05, longShare - shortShare));
  const white = Math.max(0, atShort - slow * shortShare);
  return {
    whiteSdK: Math.min(mostSdK, Math.max(0.01, Math.sqrt(white))),
    slowSdK: Math.min(mostSdK, Math.max(0.005, Math.sqrt(slow))),
  };
}
