import { createMonitor, type MonitorChange, type RunInput } from '#shared-core';
import { type RunView, runViewAfter } from '../stores/index.ts';
import type { Film, RecordedRun } from './film.ts';

/** At most about so many moments are kept; a lesson then has one a second or two. */
const mostFrames = 4000;
/** A silence is stepped through in stretches of so many seconds, for each is as much work as if readings had come. */
const silenceStepS = 60;

export interface FilmMaking {
  /** Milliseconds of some monotonic clock, for keeping slices of work short. */
  readonly nowMs: () => number;
  readonly breathe: () => Promise<void>;
  readonly onProgress: (done: number) => void;
  readonly isWanted: () => boolean;
}

/** Longest stretch of work before the window may draw and answer again. */
const sliceMs = 12;

/** Replays a run through the monitor into a film; null when it was no longer wanted. */
export async function makeFilm(run: RecordedRun, making: FilmMaking): Promise<Film | null> {
  const { identity, inputs, endS } = run;
  const { runId } = identity;
  const monitor = createMonitor(identity.settings);
  const changes: MonitorChange[] = [];
  const frames: RunView[] = [];
  const frameStepS = Math.max(1, endS / mostFrames);
  let view = runViewAfter(null, { type: 'opened', run: identity });
  let waiting: RunInput[] = [];
  let nextFrameS = 0;
  const firstHeadS = firstHeadTimeS(inputs);
  let sliceStartMs = making.nowMs();

  const keepFrame = () => {
    const snapshot = monitor.snapshot();
    view = runViewAfter(view, { type: 'inputs', runId, inputs: waiting });
    view = runViewAfter(view, { type: 'snapshot', runId, snapshot });
    const estimates = monitor.estimates();
    if (view?.estimates !== estimates) {
      view = runViewAfter(view, { type: 'estimates-known', runId, estimates });
    }
    waiting = [];
    if (view) frames.push(view);
    nextFrameS = snapshot.timeS + frameStepS;
  };

  const isDue = () => making.nowMs() - sliceStartMs > sliceMs;

  /** False when the film is no longer wanted. */
  const breathe = async (done: number): Promise<boolean> => {
    making.onProgress(done);
    await making.breathe();
    sliceStartMs = making.nowMs();
    return making.isWanted();
  };

  const passSilence = async (fromS: number, untilS: number, done: number): Promise<boolean> => {
    for (let timeS = fromS + silenceStepS; timeS < untilS; timeS += silenceStepS) {
      monitor.advanceTo(timeS);
      if (isDue() && !(await breathe(done))) return false;
    }
    return true;
  };

  let passedS = 0;
  for (const [index, input] of inputs.entries()) {
    const done = index / inputs.length;
    const isSilent = input.timeS - passedS > silenceStepS;
    if (isSilent && !(await passSilence(passedS, input.timeS, done))) return null;
    if (isDue() && !(await breathe(done))) return null;
    passedS = input.timeS;
    monitor.push(input);
    waiting.push(input);
    const news = monitor.takeChanges();
    if (news.length > 0) changes.push(...news);
    // The sentence is chosen once a second is over: until then it waits for a reading already shown.
    const isUnjudged = input.timeS >= firstHeadS && input.timeS <= Math.floor(firstHeadS) + 1;
    const isTold = news.length > 0 || input.kind !== 'reading';
    if (!isUnjudged && (input.timeS >= nextFrameS || isTold)) keepFrame();
  }
  if (!(await passSilence(passedS, endS, 1))) return null;
  monitor.advanceTo(endS);
  changes.push(...monitor.takeChanges());
  keepFrame();
  const { settings } = identity;
  return { identity, inputs, settings, endS, frames, changes, verdicts: monitor.verdicts() };
}

function firstHeadTimeS(inputs: readonly RunInput[]): number {
  const first = inputs.find((input) => input.kind === 'reading' && input.channel === 'head');
  return first?.timeS ?? Number.POSITIVE_INFINITY;
}
