import process from 'node:process';
import { type ByHandRun, byHandRun, endS, inputsOf } from './by-hand-run.ts';
import { byHandTable, type TaggedScore } from './by-hand-table.ts';
import { byHandTruth } from './by-hand-truth.ts';
import { loadRuns, saveRuns } from './saved-runs.ts';
import { scoreByHand } from './score-by-hand.ts';
import { watchRun } from './watch-run.ts';

export interface ByHandOptions {
  readonly runs: number;
  readonly seed: string;
  readonly list: boolean;
  /** File to keep the drawn runs in, or to take them from. */
  readonly save: string | null;
  readonly from: string | null;
}

/** Draws, watches and scores runs heated by hand, and prints what was measured. */
export function measureByHand(options: ByHandOptions): void {
  const runs = options.from === null ? drawRuns(options) : loadRuns(options.from);
  if (options.save !== null) {
    saveRuns(options.save, runs);
    console.log(`${runs.length} runs written to ${options.save}`);
    return;
  }
  const scored: TaggedScore[] = runs.slice(0, options.runs).map((run, index) => {
    const truth = byHandTruth(run);
    const watched = watchRun(run.settings, inputsOf(run, run.channels), endS(run));
    const score = scoreByHand(run, truth, watched);
    if (options.list) {
      console.log(
        `${run.name} ${run.tags.join(', ')}; ${run.words}; main ${truth.main} ${truth.mainFromS}–${truth.limitS} heat off ${run.course.heatOffS} called ${score.calledS} ${score.call}, rules ${score.rules.join(' ')}`,
      );
    }
    if (process.stderr.isTTY) process.stderr.write(`\r${index + 1} of ${runs.length} runs`);
    return { tags: run.tags, score };
  });
  for (const line of byHandTable(scored)) console.log(line);
}

function drawRuns({ runs, seed }: ByHandOptions): readonly ByHandRun[] {
  return Array.from({ length: runs }, (_, index) => byHandRun(`${seed}/${index}`));
}
