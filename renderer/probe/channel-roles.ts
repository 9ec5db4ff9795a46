import { type knownChannels, say } from '#shared-core';

/** What a probe of one number may be measuring; empty for "as it says". */
export const roleOptions = [
  { value: '', label: say('what it says itself') },
  { value: 'head', label: say('the still head') },
  { value: 'pot', label: say('the pot') },
  { value: 'receiver', label: say('the receiver, by a balance') },
  { value: 'condenser-outlet', label: say('the condenser outlet') },
  { value: 'air-pressure', label: say('the air pressure') },
  { value: 'room', label: say('the room') },
  { value: 'ferment', label: say('the ferment') },
] as const satisfies readonly { value: (typeof knownChannels)[number] | ''; label: string }[];

export type ChannelRole = (typeof roleOptions)[number]['value'];

/** The role that a renaming of channels gives to a probe's only number. */
export function roleFrom(channels: Readonly<Record<string, string>> | undefined): ChannelRole {
  const [renamed, ...others] = Object.entries(channels ?? {});
  if (renamed === undefined || others.length > 0 || renamed[0] !== 'head') return '';
  return roleOptions.find(({ value }) => value === renamed[1])?.value ?? '';
}
