import type { Mark, Verdicts } from '#shared-core';
import { benchMarks } from '../stores/index.ts';
import type { GuessKind } from './blind-state.ts';

/** What the record says of one guess, and where it says so. */
export interface RecordedAnswer {
  readonly timeS: number;
  readonly because: string;
}

/** The record's own answers; null where it has none. */
export type RecordedAnswers = Readonly<Record<GuessKind, RecordedAnswer | null>>;

/** The head holds from where it rises or falls by less than this in a minute; common practice, no source. */
const heldK = 0.5;
const heldForS = 60;
/** A head that has not held within an hour of vapour arrival makes no plateau. */
const longestWaitS = 3600;

/**
 * When the plateau started is when the head first held after vapour arrival; when to take the heat off is when
 * the prompt came, else when the bench did it.
 */
export function recordedAnswers(
  verdicts: Verdicts,
  marks: readonly Mark[],
  headAtC: (timeS: number) => number | null,
): RecordedAnswers {
  const arrived = verdicts.stages.find(({ stage }) => stage === 'first-fraction');
  const prompt =
    verdicts.alarms.find(({ alarm }) => alarm === 'plateau-departure') ??
    verdicts.alarms.find(({ alarm }) => alarm === 'over-limit');
  const heatOff = benchMarks(marks).find(({ mark }) => mark.type === 'heat-off');
  return {
    'plateau-starts': arrived ? firstHeld(arrived.fromS, headAtC) : null,
    'heat-off': prompt
      ? { timeS: prompt.raisedS, because: 'the heat-off prompt came' }
      : heatOff
        ? { timeS: heatOff.timeS, because: 'the bench took the heat off; no prompt came' }
        : null,
  };
}

function firstHeld(
  arrivedS: number,
  headAtC: (timeS: number) => number | null,
): RecordedAnswer | null {
  for (let timeS = arrivedS; timeS <= arrivedS + longestWaitS; timeS += 5) {
    const now = headAtC(timeS);
    const later = headAtC(timeS + heldForS);
    if (now !== null && later !== null && Math.abs(later - now) < heldK) {
      return { timeS, because: `from there the head changed by less than ${heldK} K in a minute` };
    }
  }
  return null;
}
