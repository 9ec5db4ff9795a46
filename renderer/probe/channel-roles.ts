import { say } from '#shared-core';
import { channelNames, type KnownChannel } from '../words/index.ts';

/** What a probe of one number may be measuring; empty for "as it says". */
export type ChannelRole = KnownChannel | '';

export const channelOptions = (Object.keys(channelNames) as KnownChannel[]).map((value) => ({
  value,
  label: channelNames[value].role,
}));

export const roleOptions: readonly { readonly value: ChannelRole; readonly label: string }[] = [
  { value: '', label: say('what it says itself') },
  ...channelOptions,
];

/** The role that a renaming of channels gives to a probe's only number. */
export function roleFrom(channels: Readonly<Record<string, string>> | undefined): ChannelRole {
  const [renamed, ...others] = Object.entries(channels ?? {});
  if (renamed === undefined || others.length > 0 || renamed[0] !== 'head') return '';
  return roleOptions.find(({ value }) => value === renamed[1])?.value ?? '';
}
