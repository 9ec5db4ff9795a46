import type { FermentVerdict, judgeFerment } from '#shared-core';

export interface JudgeQuestion {
  readonly id: number;
  readonly readings: Parameters<typeof judgeFerment>[0];
  readonly facts: Parameters<typeof judgeFerment>[1];
}

export interface JudgeAnswer {
  readonly id: number;
  readonly verdict: FermentVerdict;
}
