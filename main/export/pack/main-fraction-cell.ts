import type { RunStudy } from '#shared-core';

/** Whether a run had a main fraction; empty where the monitor failed on it. */
export function mainFractionCell({ verdicts, isUnjudged }: RunStudy): 'yes' | 'no' | null {
  if (isUnjudged === true) return null;
  return verdicts.verdict.mainFraction ? 'yes' : 'no';
}
