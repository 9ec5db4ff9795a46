import type { MonitorFacts } from '../monitor-facts.ts';
import type { ProbeFault } from '../probe-fault.ts';

/**
 * Which alarm a fault of the head probe belongs to: it is `gone` when nothing comes, `impossible` when what comes cannot
 * be; `contradicted` when it cannot be by what another channel says, which may itself be wrong; `doubted` when the probe
 * works, in a place or by a pressure that cannot be right.
 */
export const faultKinds = {
  lost: 'gone',
  silent: 'gone',
  'open-circuit': 'gone',
  'power-on-value': 'impossible',
  spikes: 'impossible',
  step: 'impossible',
  frozen: 'impossible',
  'above-boiling-water': 'impossible',
  'hotter-than-pot': 'contradicted',
  'below-boiling': 'doubted',
  'warm-without-vapour': 'doubted',
} as const satisfies Record<ProbeFault, 'gone' | 'impossible' | 'contradicted' | 'doubted'>;

export type FaultKind = (typeof faultKinds)[ProbeFault];

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

/** The head's own readings cannot be used; another channel's word against them is no ground for that. */
export function isBlind(fault: ProbeFault | null): boolean {
  if (fault === null) return false;
  return faultKinds[fault] === 'gone' || faultKinds[fault] === 'impossible';
}
