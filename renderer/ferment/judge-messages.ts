import type { FermentFacts, FermentReading, FermentVerdict, wordingOf } from '#shared-core';

export interface JudgeQuestion {
  readonly id: number;
  readonly readings: readonly FermentReading[];
  readonly facts: FermentFacts;
}

export interface JudgeAnswer {
  readonly id: number;
  readonly verdict: FermentVerdict;
  /** What its sentences were made from, beside the window and in no language but English. */
  readonly wording: ReturnType<typeof wordingOf>;
}
