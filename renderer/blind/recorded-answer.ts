import {
  heatOffForGoodS,
  type Mark,
  plateauBandK,
  type RunStudy,
  say,
  type Verdicts,
} from '#shared-core';
import { benchMarks } from '../stores/index.ts';
import type { GuessKind } from './blind-state.ts';

/** What the record says of one guess, and where it says so. */
export interface RecordedAnswer {
  readonly timeS: number;
  readonly because: string;
}

/** The record's own answers; null where it has none. */
export type RecordedAnswers = Readonly<Record<GuessKind, RecordedAnswer | null>>;

/**
 * When the plateau started is where the run's plateau does, by the one definition of it; when to take the heat off is
 * when the prompt came, else when the bench did it.
 */
export function recordedAnswers(
  verdicts: Verdicts,
  marks: readonly Mark[],
  plateau: RunStudy['plateau'],
): RecordedAnswers {
  const prompt =
    verdicts.alarms.find(({ alarm }) => alarm === 'plateau-departure') ??
    verdicts.alarms.find(({ alarm }) => alarm === 'over-limit');
  const heatOffS = heatOffForGoodS(benchMarks(marks));
  return {
    'plateau-starts':
      plateau === null
        ? null
        : {
            timeS: plateau.statistics.span.fromS,
            because: say(
              'from there the head stayed within {plateauBand} K for as long as it ever did',
              { plateauBand: plateauBandK },
            ),
          },
    'heat-off': prompt
      ? { timeS: prompt.raisedS, because: say('the heat-off prompt came') }
      : heatOffS !== null
        ? { timeS: heatOffS, because: say('the bench took the heat off; no prompt came') }
        : null,
  };
}
