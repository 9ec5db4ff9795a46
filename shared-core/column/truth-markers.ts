import type { BatchState } from './batch-state.ts';

/** The moments and amounts of a run that a monitor should find, known here because the run is simulated. */
export interface TruthMarkers {
  /** Vapour bathes the bulb for the first time. */
  readonly vapourArrivalS: number | null;
  /** First 0.05 mL in the receiver. */
  readonly firstDropS: number | null;
  /** From here the head holds: within 0.15 K for a minute, bathed, at or above the strength limit. */
  readonly plateauStartS: number | null;
  /** From here the head stays more than 0.3 K above its lowest once light volatiles have gone (5 min). */
  readonly plateauLeftS: number | null;
  /** From here the vapour is weaker than the limit for good; null when it never was stronger, or still is. */
  readonly limitReachedS: number | null;
  /** Strongest vapour that bathed the bulb [% vol], and when. */
  readonly strongestAbv: number | null;
  readonly strongestS: number | null;
  /** Distillate condensed from vapour at or above, and below, the limit until the end [mL at 20 °C]. */
  readonly aboveLimitMl: number;
  readonly belowLimitMl: number;
  /** The pot holds less than 5 % of its charge. */
  readonly nearDryS: number | null;
}

const bathed = 0.95;
const holdS = 60;
const holdK = 0.15;
const leftK = 0.3;
const settlingS = 300;

/** Reads the markers off samples taken at equal intervals. */
export function truthMarkers(
  samples: readonly BatchState[],
  leastStrengthAbv: number,
): TruthMarkers {
  const last = samples[samples.length - 1];
  const first = samples[0];
  const isAbove = (sample: BatchState) =>
    sample.bathedFraction >= bathed && sample.headVapourStrengthAbv >= leastStrengthAbv;
  let strongest: BatchState | undefined;
  for (const sample of samples) {
    if (sample.bathedFraction < bathed) continue;
    if (strongest === undefined || sample.headVapourStrengthAbv > strongest.headVapourStrengthAbv) {
      strongest = sample;
    }
  }
  const plateauStart = plateauStartIndex(samples, isAbove);
  return {
    vapourArrivalS: timeOf(samples.find((sample) => sample.bathedFraction >= bathed)),
    firstDropS: timeOf(samples.find((sample) => sample.distillateVolumeMl >= 0.05)),
    plateauStartS: timeOf(samples[plateauStart]),
    plateauLeftS: plateauStart === -1 ? null : plateauLeft(samples, plateauStart),
    limitReachedS: limitReached(samples, isAbove, leastStrengthAbv),
    strongestAbv: strongest?.headVapourStrengthAbv ?? null,
    strongestS: timeOf(strongest),
    aboveLimitMl: last?.aboveLimitMl ?? 0,
    belowLimitMl: last?.belowLimitMl ?? 0,
    nearDryS: timeOf(
      samples.find(({ potVolumeMl }) => potVolumeMl < 0.05 * (first?.potVolumeMl ?? 0)),
    ),
  };
}

function timeOf(sample: BatchState | undefined): number | null {
  return sample?.timeS ?? null;
}

function plateauStartIndex(
  samples: readonly BatchState[],
  isAbove: (sample: BatchState) => boolean,
): number {
  let from = 0;
  for (let index = 0; index < samples.length; index++) {
    const sample = samples[index] as BatchState;
    if (!isAbove(sample)) {
      from = index + 1;
      continue;
    }
    // Move the window's start up until all of it lies within the band of its newest sample.
    while (
      Math.abs(
        (samples[from] as BatchState).headVapourTemperatureC - sample.headVapourTemperatureC,
      ) > holdK
    ) {
      from += 1;
    }
    if (sample.timeS - (samples[from] as BatchState).timeS >= holdS) return from;
  }
  return -1;
}

function plateauLeft(samples: readonly BatchState[], from: number): number | null {
  const settledS = (samples[from] as BatchState).timeS + settlingS;
  let lowest = Number.POSITIVE_INFINITY;
  for (let index = from; index < samples.length; index++) {
    const sample = samples[index] as BatchState;
    if (sample.bathedFraction >= bathed && sample.timeS >= settledS) {
      lowest = Math.min(lowest, sample.headVapourTemperatureC);
    }
  }
  for (let index = samples.length - 1; index >= from; index--) {
    const sample = samples[index] as BatchState;
    const holds =
      sample.bathedFraction >= bathed && sample.headVapourTemperatureC <= lowest + leftK;
    if (holds) return timeOf(nextBathed(samples, index + 1));
  }
  return null;
}

function limitReached(
  samples: readonly BatchState[],
  isAbove: (sample: BatchState) => boolean,
  leastStrengthAbv: number,
): number | null {
  for (let index = samples.length - 1; index >= 0; index--) {
    if (!isAbove(samples[index] as BatchState)) continue;
    const after = nextBathed(samples, index + 1);
    return after !== undefined && after.headVapourStrengthAbv < leastStrengthAbv
      ? after.timeS
      : null;
  }
  return null;
}

function nextBathed(samples: readonly BatchState[], from: number): BatchState | undefined {
  for (let index = from; index < samples.length; index++) {
    const sample = samples[index] as BatchState;
    if (sample.bathedFraction >= bathed) return sample;
  }
  return undefined;
}
