import type { RunSummary } from '#shared-core';

/**
 * Whether a run can be opened. A run without a header left has no name of its own: it is listed under that of its folder, so
 * that nobody looks for it in vain.
 */
export function isReadable({ name, runId }: Pick<RunSummary, 'name' | 'runId'>): boolean {
  return name !== runId;
}
