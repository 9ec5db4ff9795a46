import { heardPressure, pressureAfter } from '../monitor/index.ts';
import { assumedWords, type RunInput, type RunSettings } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import { coverageFactor95 } from '../uncertainty/index.ts';
import { worded } from '../wording/index.ts';
import type { CutRecord } from './cuts-of-run.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

/** Mean over the cut; its errors are common to all (probe, pressure, model), so they don't average out. */
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
  return {
    by: 'stated',
    strengthAbv: {
      value: Math.min(100, mean('value')),
      standardUncertainty: (mean('high') - mean('low')) / (2 * coverageFactor95),
    },
  };
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
