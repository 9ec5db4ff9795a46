import { collectedAtMl } from '#shared-core';
import type { Guess } from './blind-state.ts';
import type { RecordedAnswers } from './recorded-answer.ts';

/** What the run was at any time, for comparing two times of it. */
export interface RunCourse {
  /** Head temperature [°C]; null in a gap. */
  readonly headAtC: (timeS: number) => number | null;
  /** Strength of the head vapour [% vol]; null where no vapour bathes the bulb. */
  readonly strengthAtAbv: (timeS: number) => number | null;
  readonly bookings: Parameters<typeof collectedAtMl>[0];
  /** When the heat was taken off, or, where nobody marked it, the still cooled down [s]; null where it never was. */
  readonly heatOffS: number | null;
}

/** A guess beside the record: each difference is guess minus record, null where one of them is not known. */
export interface GuessScore {
  readonly guess: Guess;
  readonly recordS: number;
  readonly differenceS: number;
  readonly differenceK: number | null;
  readonly differenceMl: number | null;
  readonly differenceAbv: number | null;
  /** The heat was off by then: nothing was left to decide. */
  readonly isAfterHeatOff: boolean;
}

/** Scores one guess against the record; null when the record has no answer to it. */
export function scoreGuess(
  guess: Guess,
  answers: RecordedAnswers,
  course: RunCourse,
): GuessScore | null {
  const answer = answers[guess.kind];
  if (answer === null) return null;
  const difference = (at: (timeS: number) => number | null) => {
    const guessed = at(guess.timeS);
    const recorded = at(answer.timeS);
    return guessed === null || recorded === null ? null : guessed - recorded;
  };
  return {
    guess,
    recordS: answer.timeS,
    differenceS: guess.timeS - answer.timeS,
    differenceK: difference(course.headAtC),
    differenceMl: difference((timeS) => collectedAtMl(course.bookings, timeS)),
    differenceAbv: difference(course.strengthAtAbv),
    isAfterHeatOff: course.heatOffS !== null && guess.timeS >= course.heatOffS,
  };
}

/** The score that lies nearest to the record; the earlier of two that are as near. */
export function nearestScore(scores: readonly GuessScore[]): GuessScore | null {
  return scores.reduce<GuessScore | null>(
    (best, score) =>
      best === null || Math.abs(score.differenceS) < Math.abs(best.differenceS) ? score : best,
    null,
  );
}
