import { alarmTitles, type MarkBody, stageLabels, told, type Verdicts } from '#shared-core';
import { type Film, frameIndexAt, frameTimeS } from '../replay/index.ts';
import type { RunView } from '../stores/index.ts';
import { benchMarks } from '../stores/index.ts';
import type { Annotation } from './annotations.ts';

/** A time worth jumping to. */
export interface Moment {
  readonly timeS: number;
  readonly kind: 'stage' | 'alarm' | 'mark' | 'annotation';
  readonly name: string;
  /** Whether a frame of the film shows it; what was concluded late is shown later than it began. */
  readonly isShownIn: (frame: RunView) => boolean;
}

/** Stages, prompts, marks and annotations of a run in time order. */
export function momentsOf(
  verdicts: Verdicts,
  marks: RunView['marks'],
  annotations: readonly Annotation[],
  markWords: (mark: MarkBody) => string,
): readonly Moment[] {
  const stages = verdicts.stages.map(
    ({ stage, fromS }): Moment => ({
      timeS: fromS,
      kind: 'stage',
      name: told(stageLabels[stage]),
      isShownIn: ({ snapshot }) => snapshot?.stage.stage === stage,
    }),
  );
  const alarms = verdicts.alarms.map(
    ({ alarm, raisedS }): Moment => ({
      timeS: raisedS,
      kind: 'alarm',
      name: told(alarmTitles[alarm]),
      isShownIn: ({ snapshot }) =>
        snapshot?.alarms.some((shown) => shown.alarm === alarm && shown.raisedS === raisedS) ??
        false,
    }),
  );
  const made = benchMarks(marks).map(
    ({ markId, timeS, mark }): Moment => ({
      timeS,
      kind: 'mark',
      name: markWords(mark),
      isShownIn: (frame) => frame.marks.some((shown) => shown.markId === markId),
    }),
  );
  const written = annotations.map(
    ({ timeS, text }): Moment => ({
      timeS,
      kind: 'annotation',
      name: text,
      isShownIn: (frame) => frameTimeS(frame) >= timeS,
    }),
  );
  return [...stages, ...alarms, ...made, ...written].toSorted((a, b) => a.timeS - b.timeS);
}

/** Where to jump for a moment: the first frame that shows it. */
export function timeShowing(film: Film, { timeS, isShownIn }: Moment): number {
  const frame = film.frames.slice(frameIndexAt(film, timeS)).find(isShownIn);
  return frame ? frameTimeS(frame) : timeS;
}
