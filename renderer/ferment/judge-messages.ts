import type { FermentFacts, FermentReading, FermentVerdict } from '#shared-core';

export interface JudgeQuestion {
  readonly id: number;
  readonly readings: readonly FermentReading[];
  readonly facts: FermentFacts;
}

export interface JudgeAnswer {
  readonly id: number;
  readonly verdict: FermentVerdict;
}
