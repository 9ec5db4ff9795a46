import { heardPressure, pressureAfter } from '../monitor/index.ts';
import { assumedWords, type RunInput, type RunSettings } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import { coverageFactor95, standardFromHalfWidth } from '../uncertainty/index.ts';
import { worded } from '../wording/index.ts';
import type { CutRecord } from './cuts-of-run.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

/**
 * Within a receiver drops come up to so many times as fast at one time as at another. In this project's simulated teaching rigs nine
 * minutes in ten of a run up to its limit lie within a factor of 1.5 (no column) to 4.7 (wire packing); no source from a bench.
 */
const rateRatio = 4;

/**
 * Mean over the cut at an even rate. Its errors are common to all (probe, pressure, model), so they don't average out; nor does it
 * hide what the rate leaves open, which is most where the strength changed much within the cut.
 */
export function strengthFromHead(
  { fromS, toS }: CutRecord,
  estimates: Verdicts['estimates'],
): StrengthMeasurement | null {
  const found = estimates.flatMap(({ timeS, headVapourAbv }) =>
    timeS >= fromS && timeS <= toS && headVapourAbv !== null ? [headVapourAbv] : [],
  );
  if (found.length === 0) return null;
  const mean = (of: 'value' | 'low' | 'high') =>
    found.reduce((sum, estimate) => sum + estimate[of], 0) / found.length;
  const { low, high } = meansAtUnevenRates(found.map(({ value }) => value));
  return {
    by: 'stated',
    strengthAbv: {
      value: Math.min(100, mean('value')),
      standardUncertainty: Math.hypot(
        (mean('high') - mean('low')) / (2 * coverageFactor95),
        standardFromHalfWidth('rectangular', Math.max(0, high - low) / 2),
      ),
    },
  };
}

/** The least and the greatest mean where each value may weigh up to {@link rateRatio} times as much as another. */
function meansAtUnevenRates(values: readonly number[]): {
  readonly low: number;
  readonly high: number;
} {
  const rising = values.toSorted((a, b) => a - b);
  const total = rising.reduce((sum, value) => sum + value, 0);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let below = 0;
  // The extremes weigh everything up to some value alike, and everything above it alike.
  for (const [index, value] of rising.entries()) {
    below += value;
    const count = index + 1;
    const meanWith = (ofBelow: number, ofAbove: number) =>
      (ofBelow * below + ofAbove * (total - below)) /
      (ofBelow * count + ofAbove * (values.length - count));
    low = Math.min(low, meanWith(rateRatio, 1));
    high = Math.max(high, meanWith(1, rateRatio));
  }
  return { low, high };
}

const estimateWords = worded(
  'Where no strength was measured it is taken from the head temperature while the cut was collected, at an even rate. That is an estimate, not a measurement.',
);

/** What such a strength hangs on; of the air pressure as it came to be known in the run. */
export function fromHeadWords(
  settings: Pick<RunSettings, 'charge' | 'pressure' | 'probe'>,
  inputs: readonly RunInput[],
): readonly string[] {
  const pressure = pressureAfter(heardPressure(settings.pressure, inputs), inputs);
  const assumed = assumedWords({ ...settings, pressure }, ['pressure', 'probe-kind']);
  return [estimateWords, ...assumed];
}
