import type { ProbeSource, RequestBody, SerialSource } from '#shared-core';

/** A source as a request takes it: what it leaves out has a default. */
export type ConnectSource = RequestBody<'probe/connect'>['source'];
export type SerialChoice = Extract<ConnectSource, { readonly kind: 'serial' }>;

/** The port of a new probe cannot be one that is already listened to; so many may be at once. */
export const mostProbes = 4;

/** The probes of a source, one by one; none for the rehearsal's still. */
export function probesOf(source: ProbeSource | null): readonly SerialSource[] {
  if (source?.kind === 'serial') return [source];
  return source?.kind === 'several' ? source.probes : [];
}

/** One source of one or several probes; null when none is left. */
export function sourceOf(probes: readonly SerialChoice[]): ConnectSource | null {
  const [only] = probes;
  if (only === undefined) return null;
  return probes.length === 1 ? only : { kind: 'several', probes: [...probes] };
}
