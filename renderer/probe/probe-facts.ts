import type { ProbeSource, ProbeStatus } from '#shared-core';

/** The rehearsal's still speaks like a probe, but hangs in no head. */
export function isSimulated({ source }: { readonly source: ProbeSource | null }): boolean {
  return source?.kind === 'demo';
}

/** Whether one of the numbers is known to come from the still head. */
export function hasHead({ channels }: Pick<ProbeStatus, 'channels'>): boolean {
  return channels.includes('head');
}
