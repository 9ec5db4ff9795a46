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

/** Nobody reads a prompt and has a hand at the heat in less: what comes so much earlier or later is the same call [s]; chosen here. */
export const sameWithinS = 10;

/** What one side has on a line: its words, and what two sides are compared by. */
interface SideOfRow {
  readonly words: string;
  readonly isSo?: boolean;
  readonly timesS: readonly number[];
}

/** Stages, prompts and the main fraction of both, line by line; stages and prompts that neither has are left out. */
export function verdictRows(recorded: Verdicts, supposed: Verdicts): readonly VerdictRow[] {
  const row = (name: string, side: (verdicts: Verdicts) => SideOfRow | null): VerdictRow[] => {
    const before = side(recorded);
    const after = side(supposed);
    if (before === null && after === null) return [];
    return [
      {
        name,
        recorded: before?.words ?? absent,
        supposed: after?.words ?? absent,
        isDifferent: before === null || after === null || areDifferent(before, after),
      },
    ];
  };
  return [
    ...row(say('Main fraction'), ({ verdict: { mainFraction: isSo } }) => ({
      words: isSo ? say('yes') : say('no'),
      isSo,
      timesS: [],
    })),
    ...stages.flatMap((stage) =>
      row(told(stageLabels[stage]), (verdicts) => {
        const span = verdicts.stages.find((found) => found.stage === stage);
        if (span === undefined) return null;
        const from = clockWords(span.fromS);
        return span.toS === null
          ? { words: say('{from} to the end', { from }), timesS: [span.fromS] }
          : {
              words: say('{from} to {to}', { from, to: clockWords(span.toS) }),
              timesS: [span.fromS, span.toS],
            };
      }),
    ),
    ...mostUrgentFirst.flatMap((alarm) =>
      row(say('Prompt: {title}', { title: told(alarmTitles[alarm]) }), (verdicts) => {
        const timesS = verdicts.alarms
          .filter((found) => found.alarm === alarm)
          .map(({ raisedS }) => raisedS);
        return timesS.length === 0 ? null : { words: timesS.map(clockWords).join(', '), timesS };
      }),
    ),
  ];
}

function areDifferent(before: SideOfRow, after: SideOfRow): boolean {
  return (
    before.isSo !== after.isSo ||
    before.timesS.length !== after.timesS.length ||
    before.timesS.some((timeS, index) => Math.abs(timeS - (after.timesS[index] ?? 0)) > sameWithinS)
  );
}
