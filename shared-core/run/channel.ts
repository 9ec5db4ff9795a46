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

/** A channel name: lower-case words joined by hyphens, as in `condenser-outlet`. */
export const channelSchema = z.string().regex(/^[a-z][a-z0-9-]{0,31}$/);

export type Channel = z.infer<typeof channelSchema>;
