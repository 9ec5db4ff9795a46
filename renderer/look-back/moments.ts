import { type MarkBody, stageLabels, type Verdicts } from '#shared-core';
import type { RunView } from '../stores/index.ts';
import { benchMarks } from '../stores/index.ts';
import { alarmNames } from '../words/index.ts';
import type { Annotation } from './annotations.ts';

/** A time worth jumping to. */
export interface Moment {
  readonly timeS: number;
  readonly kind: 'stage' | 'alarm' | 'mark' | 'annotation';
  readonly name: string;
}

/** Stages, prompts, marks and annotations of a run in time order. */
export function momentsOf(
  verdicts: Verdicts,
  marks: RunView['marks'],
  annotations: readonly Annotation[],
  markWords: (mark: MarkBody) => string,
): readonly Moment[] {
  const stages = verdicts.stages.map(
    ({ stage, fromS }): Moment => ({ timeS: fromS, kind: 'stage', name: stageLabels[stage] }),
  );
  const alarms = verdicts.alarms.map(
    ({ alarm, raisedS }): Moment => ({ timeS: raisedS, kind: 'alarm', name: alarmNames[alarm] }),
  );
  const made = benchMarks(marks).map(
    ({ timeS, mark }): Moment => ({ timeS, kind: 'mark', name: markWords(mark) }),
  );
  const written = annotations.map(
    ({ timeS, text }): Moment => ({ timeS, kind: 'annotation', name: text }),
  );
  return [...stages, ...alarms, ...made, ...written].toSorted((a, b) => a.timeS - b.timeS);
}
