import type { Estimate, Snapshot } from '#shared-core';

/** When the limit is expected, while it is still ahead; null once the main fraction is over. */
export function expectedEnd(snapshot: Snapshot | null): Estimate | null {
  const stage = snapshot?.stage.stage;
  if (stage === 'tail' || stage === 'cool-down') return null;
  return snapshot?.forecast?.mainFractionEndS ?? null;
}
