import type { KnownChannel } from '#shared-core';

/** What a probe of one number may be measuring; empty for "as it says". */
export const roleOptions = [
  { value: '', label: 'what it says itself' },
  { value: 'head', label: 'the still head' },
  { value: 'pot', label: 'the pot' },
  { value: 'receiver', label: 'the receiver, by a balance' },
  { value: 'condenser-outlet', label: 'the condenser outlet' },
  { value: 'air-pressure', label: 'the air pressure' },
  { value: 'room', label: 'the room' },
  { value: 'ferment', label: 'the ferment' },
] as const satisfies readonly { value: KnownChannel | ''; label: string }[];

export type ChannelRole = (typeof roleOptions)[number]['value'];

/** The role that a renaming of channels gives to a probe's only number. */
export function roleFrom(channels: Readonly<Record<string, string>> | undefined): ChannelRole {
  const [renamed, ...others] = Object.entries(channels ?? {});
  if (renamed === undefined || others.length > 0 || renamed[0] !== 'head') return '';
  return roleOptions.find(({ value }) => value === renamed[1])?.value ?? '';
}
