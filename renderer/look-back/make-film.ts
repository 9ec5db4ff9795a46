import { createMonitor, type MonitorChange, type RunInput } from '#shared-core';
import { type RunView, runViewAfter } from '../stores/index.ts';
import type { Film, RecordedRun } from './film.ts';

/** At most about so many moments are kept; a lesson then has one a second or two. */
const mostFrames = 4000;
/** Inputs between two looks at the clock. */
const batch = 50;

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
  const monitor = createMonitor(identity.settings);
  const changes: MonitorChange[] = [];
  const frames: RunView[] = [];
  const frameStepS = Math.max(1, endS / mostFrames);
  let view = runViewAfter(null, { type: 'opened', run: identity });
  let waiting: RunInput[] = [];
  let nextFrameS = 0;
  let sliceStartMs = making.nowMs();

  const keepFrame = () => {
    const snapshot = monitor.snapshot();
    view = runViewAfter(view, { type: 'inputs', inputs: waiting });
    view = runViewAfter(view, { type: 'snapshot', snapshot });
    waiting = [];
    if (view) frames.push(view);
    nextFrameS = snapshot.timeS + frameStepS;
  };

  for (let index = 0; index < inputs.length; index++) {
    const input = inputs[index]!;
    monitor.push(input);
    waiting.push(input);
    const news = monitor.takeChanges();
    if (news.length > 0) changes.push(...news);
    if (input.timeS >= nextFrameS || news.length > 0 || input.kind !== 'reading') keepFrame();
    if (index % batch === 0 && making.nowMs() - sliceStartMs > sliceMs) {
      making.onProgress(index / inputs.length);
      await making.breathe();
      if (!making.isWanted()) return null;
      sliceStartMs = making.nowMs();
    }
  }
  monitor.advanceTo(endS);
  changes.push(...monitor.takeChanges());
  keepFrame();
  const { settings } = identity;
  return { identity, inputs, settings, endS, frames, changes, verdicts: monitor.verdicts() };
}
