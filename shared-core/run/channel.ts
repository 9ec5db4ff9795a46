import { z } from 'zod';

/**
 * Channels with a meaning of their own, and what each of them measures: how a number without a unit is read and within which
 * limits it is believed. Any other name is kept and plotted.
 */
export const measuredBy = {
  head: 'temperature',
  pot: 'temperature',
  'condenser-outlet': 'temperature',
  room: 'temperature',
  ferment: 'temperature',
  receiver: 'amount',
  'air-pressure': 'pressure',
} as const;

export type KnownChannel = keyof typeof measuredBy;

export const knownChannels = Object.keys(measuredBy) as readonly KnownChannel[];

const channelPattern = /^[a-z][a-z0-9-]{0,31}$/;

/** A channel name: lower-case words joined by hyphens, as in `condenser-outlet`. */
export const channelSchema = z.string().regex(channelPattern);

export type Channel = z.infer<typeof channelSchema>;

/**
 * Whether something is the name of a channel, asked without a schema: a long record holds millions of names.
 *
 * @param name anything [1]
 * @returns true for what `channelSchema` takes: `[a-z][a-z0-9-]{0,31}`
 *
 * Valid for any value. Source: the format of the run log, FORMAT.md.
 * @example
 * isChannel('condenser-outlet') // => true
 * isChannel('Head') // => false
 */
export function isChannel(name: unknown): name is Channel {
  return typeof name === 'string' && channelPattern.test(name);
}
