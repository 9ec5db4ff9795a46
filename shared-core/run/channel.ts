import { z } from 'zod';

/** Channels with a meaning of their own; any other name is kept and plotted. */
export const knownChannels = [
  'head',
  'pot',
  'condenser-outlet',
  'room',
  'ferment',
  'receiver',
  'air-pressure',
] as const;

export type KnownChannel = (typeof knownChannels)[number];

/** A channel name: lower-case words joined by hyphens, as in `condenser-outlet`. */
export const channelSchema = z.string().regex(/^[a-z][a-z0-9-]{0,31}$/);

export type Channel = z.infer<typeof channelSchema>;
