import type { RunSummary } from '#shared-core';
import { exportFileName } from '../export-file-name.ts';

/** The part of a file name that says which run; sorts by time. */
export function runStem(summary: Pick<RunSummary, 'runId' | 'name'>): string {
  const stem = exportFileName(summary, 'x').slice(0, -2);
  const { runId } = summary;
  return stem === `${runId}-${runId}` ? runId : stem;
}

/** Stems of several runs, told apart by a number where two runs would share one. */
export function runStems(
  summaries: readonly Pick<RunSummary, 'runId' | 'name'>[],
): readonly string[] {
  const taken = new Set<string>();
  return summaries.map((summary) => {
    const own = runStem(summary) || 'run';
    let stem = own;
    for (let number = 2; taken.has(stem); number += 1) stem = `${own}-${number}`;
    taken.add(stem);
    return stem;
  });
}
