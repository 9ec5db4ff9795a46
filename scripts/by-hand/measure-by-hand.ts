import process from 'node:process';
import type { RunSettings } from '#shared-core';
import { type ByHandRun, byHandRun, endS, inputsOf } from './by-hand-run.ts';
import { byHandTable, type CalibrationWords, type TaggedScore } from './by-hand-table.ts';
import { byHandTruth } from './by-hand-truth.ts';
import { loadRuns, saveRuns } from './saved-runs.ts';
import { scoreByHand } from './score-by-hand.ts';
import type { Watch } from './watch-run.ts';

export interface ByHandOptions {
  readonly runs: number;
  readonly seed: string;
  readonly list: boolean;
  /** File to keep the drawn runs in, or to take them from. */
  readonly save: string | null;
  readonly from: string | null;
  /** What the monitor is told of a run. */
  readonly known: (run: ByHandRun) => RunSettings;
  /** Who is judged. */
  readonly watch: Watch;
  readonly calibration: CalibrationWords;
}

/** Draws, watches and scores runs heated by hand, and prints what was measured. */
export function measureByHand(options: ByHandOptions): void {
  const runs = firstOf(
    options.from === null ? drawRuns(options.seed) : loadRuns(options.from),
    options.runs,
  );
  if (options.save !== null) {
    console.log(`${saveRuns(options.save, runs)} runs written to ${options.save}`);
  } else measureScores(runs, options);
}

function measureScores(
  runs: Iterable<ByHandRun>,
  { list, runs: count, known, watch, calibration }: ByHandOptions,
): void {
  const scored: TaggedScore[] = [];
  for (const run of runs) {
    const truth = byHandTruth(run);
    const watched = watch(known(run), inputsOf(run, run.channels), endS(run));
    const score = scoreByHand(run, truth, watched);
    scored.push({ tags: run.tags, score });
    if (list) {
      console.log(
        `${run.name} ${run.tags.join(', ')}; ${run.words}; main ${truth.main} ${truth.mainFromS}–${truth.limitS} heat off ${run.course.heatOffS} called ${score.calledS} ${score.call}, rules ${score.rules.join(' ')}`,
      );
    }
    if (process.stderr.isTTY) process.stderr.write(`\r${scored.length} of ${count} runs`);
  }
  for (const line of byHandTable(scored, calibration)) console.log(line);
}

function* drawRuns(seed: string): Generator<ByHandRun> {
  for (let index = 0; ; index += 1) yield byHandRun(`${seed}/${index}`);
}

function* firstOf<Item>(items: Iterable<Item>, count: number): Generator<Item> {
  if (count <= 0) return;
  let given = 0;
  for (const item of items) {
    yield item;
    given += 1;
    if (given >= count) return;
  }
}
