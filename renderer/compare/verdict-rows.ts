import {
  alarmTitles,
  mostUrgentFirst,
  say,
  stageLabels,
  stages,
  told,
  type Verdicts,
} from '#shared-core';
import { clockWords } from '../words/index.ts';

/** One line of recorded against supposed. */
export interface VerdictRow {
  readonly name: string;
  readonly recorded: string;
  readonly supposed: string;
  readonly isDifferent: boolean;
}

const absent = say('did not come');

/** Stages, prompts and the main fraction of both, line by line; stages and prompts that neither has are left out. */
export function verdictRows(recorded: Verdicts, supposed: Verdicts): readonly VerdictRow[] {
  const row = (name: string, words: (verdicts: Verdicts) => string | null): VerdictRow[] => {
    const before = words(recorded);
    const after = words(supposed);
    if (before === null && after === null) return [];
    return [
      {
        name,
        recorded: before ?? absent,
        supposed: after ?? absent,
        isDifferent: before !== after,
      },
    ];
  };
  return [
    ...row(say('Main fraction'), ({ verdict }) => (verdict.mainFraction ? say('yes') : say('no'))),
    ...stages.flatMap((stage) =>
      row(told(stageLabels[stage]), (verdicts) => {
        const span = verdicts.stages.find((found) => found.stage === stage);
        if (span === undefined) return null;
        const from = clockWords(span.fromS);
        return span.toS === null
          ? say('{from} to the end', { from })
          : say('{from} to {to}', { from, to: clockWords(span.toS) });
      }),
    ),
    ...mostUrgentFirst.flatMap((alarm) =>
      row(say('Prompt: {title}', { title: told(alarmTitles[alarm]) }), (verdicts) => {
        const raised = verdicts.alarms.filter((found) => found.alarm === alarm);
        return raised.length === 0
          ? null
          : raised.map(({ raisedS }) => clockWords(raisedS)).join(', ');
      }),
    ),
  ];
}
