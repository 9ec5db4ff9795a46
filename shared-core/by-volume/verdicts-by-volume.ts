import { type Verdicts, verdictAlone } from '../snapshot/index.ts';
import type { RunByVolume } from './run-by-volume.ts';

/**
 * What can be concluded of a table without times: the verdict on the main fraction, and nothing that needs a time.
 *
 * @param run from `runByVolume`
 *
 * Source: see `volumeVerdict`.
 * @example
 * verdictsByVolume({ verdict: { mainFraction: true, because: 'It was.', cuts: [] }, doubt: null }).stages // => []
 */
export function verdictsByVolume({
  verdict,
  doubt,
}: Pick<RunByVolume, 'verdict' | 'doubt'>): Verdicts {
  const { mainFraction, because } = verdict;
  return verdictAlone(
    { mainFraction, because },
    doubt === null ? [] : [{ problem: doubt, fromS: 0, toS: 0 }],
  );
}
