import { assertNever } from '#shared-core';
import { assumedOfCharge } from '../draft/index.ts';
import type { PrepareDraft } from '../stores/index.ts';
import type { StepId } from './steps.ts';

/** Whether something of this step is only assumed: nobody chose, wrote or confirmed it, or nobody knows it. */
export function isAssumedIn(step: StepId, draft: PrepareDraft): boolean {
  switch (step) {
    case 'probe':
      return draft.assumed.includes('probe-kind');
    case 'pot':
      return assumedOfCharge(draft).length > 0;
    case 'air':
      return draft.pressureFrom === 'unknown';
    case 'checks':
      return false;
    default:
      return assertNever(step);
  }
}
