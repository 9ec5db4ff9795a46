import type { RunSettings } from '#shared-core';
import type { PrepareDraft } from '../stores/index.ts';
import { probeKinds } from './probe-kinds.ts';

/** How the head probe is corrected, and how well it is known: from ice and steam, or from its kind alone. */
export function probeFromDraft({
  probeKind,
  correction,
}: PrepareDraft): Pick<RunSettings['probe'], 'standardUncertaintyK' | 'offsetK' | 'gain'> {
  const { standardUncertaintyK } = probeKinds[probeKind];
  return correction ?? { standardUncertaintyK, offsetK: 0, gain: 1 };
}
