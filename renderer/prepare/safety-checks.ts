import { cautionsAt } from '#shared-core';

export interface SafetyCheck {
  readonly check: string;
  readonly words: string;
  readonly reason: string;
}

/** What must be true at the bench before heat: the cautions of this place. */
export const safetyChecks: readonly SafetyCheck[] = cautionsAt('prepare').map(
  ({ id, check = '', because }) => ({ check: id, words: check, reason: because }),
);
