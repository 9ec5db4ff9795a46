import type { MonitorFacts } from '../monitor-facts.ts';
import { type FaultKind, faultKinds, isBlind } from '../sense/probe-fault.ts';

/** The kind of the fault that stands; null while none does. */
export function faultKind({ fault }: MonitorFacts): FaultKind | null {
  return fault === null ? null : faultKinds[fault];
}

/**
 * The head's own readings are not trusted, and the heat may be on: what hangs on them alone is left as it stands. Another
 * channel's word against the head is no ground for that: it must not cost a call to take the heat off.
 */
export function isHeadUntrusted(facts: MonitorFacts): boolean {
  return isBlind(facts.fault) && facts.heat !== 'off';
}
