import { alarmTitles, mostUrgentFirst, stageLabels, stages, type Verdicts } from '#shared-core';
import { clockWords } from '../words/index.ts';

/** One line of recorded against supposed. */
export interface VerdictRow {
  readonly name: string;
  readonly recorded: string;
  readonly supposed: string;
  readonly isDifferent: boolean;
}

const absent = 'did not come';

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
    ...row('Main fraction', ({ verdict }) => (verdict.mainFraction ? 'yes' : 'no')),
    ...stages.flatMap((stage) =>
      row(stageLabels[stage], (verdicts) => {
        const span = verdicts.stages.find((found) => found.stage === stage);
        if (span === undefined) return null;
        const end = span.toS === null ? 'to the end' : `to ${clockWords(span.toS)}`;
        return `${clockWords(span.fromS)} ${end}`;
      }),
    ),
    ...mostUrgentFirst.flatMap((alarm) =>
      row(`Prompt: ${alarmTitles[alarm]}`, (verdicts) => {
        const raised = verdicts.alarms.filter((found) => found.alarm === alarm);
        return raised.length === 0
          ? null
          : raised.map(({ raisedS }) => clockWords(raisedS)).join(', ');
      }),
    ),
  ];
}
