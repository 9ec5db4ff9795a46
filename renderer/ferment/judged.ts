import { type FermentVerdict, judgeFerment, wordingOf } from '#shared-core';

export interface JudgeRequest {
  readonly readings: Parameters<typeof judgeFerment>[0];
  readonly facts: Parameters<typeof judgeFerment>[1];
}

export interface Judged {
  readonly verdict: FermentVerdict;
  /** What its sentences were made from: a worker speaks no language but English. */
  readonly wording: ReturnType<typeof wordingOf>;
}

export function judged({ readings, facts }: JudgeRequest): Judged {
  const verdict = judgeFerment(readings, facts);
  return { verdict, wording: wordingOf([verdict.because, ...verdict.problems]) };
}
