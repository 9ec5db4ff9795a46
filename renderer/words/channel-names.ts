import { type knownChannels, say } from '#shared-core';

export type KnownChannel = (typeof knownChannels)[number];

interface ChannelNames {
  /** Within a line of words. */
  readonly plain: string;
  /** As what a probe measures. */
  readonly role: string;
  /** As what a column of a table holds. */
  readonly column: string;
}

/** What each channel is called where it is read, where a probe is hung up and where a file is taken in. */
export const channelNames: Readonly<Record<KnownChannel, ChannelNames>> = {
  head: {
    plain: say('still head'),
    role: say('the still head'),
    column: say('Head temperature'),
  },
  pot: { plain: say('pot'), role: say('the pot'), column: say('Pot temperature') },
  receiver: {
    plain: say('receiver'),
    role: say('the receiver, by a balance'),
    column: say('Receiver, mass or volume'),
  },
  'condenser-outlet': {
    plain: say('condenser outlet'),
    role: say('the condenser outlet'),
    column: say('Condenser outlet temperature'),
  },
  'air-pressure': {
    plain: say('air pressure'),
    role: say('the air pressure'),
    column: say('Air pressure'),
  },
  room: { plain: say('room'), role: say('the room'), column: say('Room temperature') },
  ferment: { plain: say('ferment'), role: say('the ferment'), column: say('Ferment temperature') },
};

/** Its names; undefined for a channel without a meaning of its own. */
export function namesOf(channel: string): ChannelNames | undefined {
  return Object.hasOwn(channelNames, channel) ? channelNames[channel as KnownChannel] : undefined;
}
