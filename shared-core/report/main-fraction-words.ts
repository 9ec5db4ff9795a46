import type { RunStudy } from '../study/index.ts';

/** Whether a run had a main fraction; where the monitor failed on it nobody knows. */
export function mainFractionWords({ verdicts, isUnjudged }: RunStudy): string {
  if (isUnjudged === true) return 'not known';
  return verdicts.verdict.mainFraction ? 'yes' : 'no';
}
