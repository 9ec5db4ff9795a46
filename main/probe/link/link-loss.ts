import type { RunInput } from '#shared-core';
import type { ProbeLinkChange } from '../probe-hub.ts';

type Reason = Extract<RunInput, { kind: 'link' }>['reason'];

/** Tells of losses and returns once each, and only after something was heard at all. */
export interface LinkLoss {
  heard(atS: number): void;
  lost(reason: Reason, atS: number): void;
  /**
   * Whoever reads the probe stopped, and nobody is told what was heard after this moment. Told also where the probe was lost already:
   * another of several probes may have been heard meanwhile, or this one again.
   */
  readerStopped(upToS: number): void;
  /** What came back is not the probe that was lost. */
  otherProbe(): void;
  isLost(): boolean;
}

export function createLinkLoss(tell: (change: ProbeLinkChange) => void): LinkLoss {
  let everHeard = false;
  let lostFor: Reason | null = null;
  let other = false;

  function lose(reason: Reason, atS: number): void {
    if (!everHeard) return;
    lostFor = reason;
    tell({ atS, state: 'lost', reason });
  }

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
      if (lostFor === null) lose(reason, atS);
    },
    readerStopped(upToS) {
      if (lostFor !== 'reader-stopped') lose('reader-stopped', upToS);
    },
    otherProbe() {
      other = true;
    },
    isLost: () => lostFor !== null,
  };
}
