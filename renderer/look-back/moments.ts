import { type MarkBody, stageLabels, type Verdicts } from '#shared-core';
import type { RunView } from '../stores/index.ts';
import { benchMarks } from '../stores/index.ts';
import { alarmNames } from '../words/index.ts';

/** A time worth jumping to. */
export interface Moment {
  readonly timeS: number;
  readonly kind: 'stage' | 'alarm' | 'mark';
  readonly name: string;
}

/** Stages, prompts and marks of a run in time order. */
export function momentsOf(
  verdicts: Verdicts,
  marks: RunView['marks'],
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
  return [...stages, ...alarms, ...made].toSorted((a, b) => a.timeS - b.timeS);
}
