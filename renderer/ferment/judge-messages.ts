import type { FermentVerdict, judgeFerment, wordingOf } from '#shared-core';

export interface JudgeQuestion {
  readonly id: number;
  readonly readings: Parameters<typeof judgeFerment>[0];
  readonly facts: Parameters<typeof judgeFerment>[1];
}

export interface JudgeAnswer {
  readonly id: number;
  readonly verdict: FermentVerdict;
  /** What its sentences were made from, beside the window and in no language but English. */
  readonly wording: ReturnType<typeof wordingOf>;
}
