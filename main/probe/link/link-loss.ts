import type { RunInput } from '#shared-core';
import type { ProbeLinkChange } from '../probe-hub.ts';

type Reason = Extract<RunInput, { kind: 'link' }>['reason'];

/** Tells of losses and returns once each, in pairs, and only after something was heard at all. */
export interface LinkLoss {
  heard(atS: number): void;
  lost(reason: Reason, atS: number): void;
  /** What came back is not the probe that was lost. */
  otherProbe(): void;
  isLost(): boolean;
}

export function createLinkLoss(tell: (change: ProbeLinkChange) => void): LinkLoss {
  let everHeard = false;
  let lostFor: Reason | null = null;
  let other = false;
  return {
    heard(atS) {
      everHeard = true;
      if (lostFor === null) return;
      const reason = other ? 'probe-changed' : lostFor;
      lostFor = null;
      other = false;
      tell({ atS, state: 'back', reason });
    },
    lost(reason, atS) {
      if (!everHeard || lostFor !== null) return;
      lostFor = reason;
      tell({ atS, state: 'lost', reason });
    },
    otherProbe() {
      other = true;
    },
    isLost: () => lostFor !== null,
  };
}
