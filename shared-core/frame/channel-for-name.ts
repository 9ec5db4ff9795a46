import { type Channel, channelSchema } from '../run/index.ts';
import type { RawValue } from './raw-value.ts';

/** Spellings that people and sketches use; matched without case, blanks, digits' dots or underscores. */
const spellings: Readonly<Record<string, Channel>> = {
  head: 'head',
  'still-head': 'head',
  vapour: 'head',
  vapor: 'head',
  t: 'head',
  t1: 'head',
  temp: 'head',
  temp1: 'head',
  temperature: 'head',
  pot: 'pot',
  boiler: 'pot',
  t2: 'pot',
  temp2: 'pot',
  condenser: 'condenser-outlet',
  'condenser-outlet': 'condenser-outlet',
  room: 'room',
  ambient: 'room',
  ferment: 'ferment',
  receiver: 'receiver',
  mass: 'receiver',
  weight: 'receiver',
  pressure: 'air-pressure',
  'air-pressure': 'air-pressure',
  baro: 'air-pressure',
  barometer: 'air-pressure',
};

const byPosition: readonly Channel[] = ['head', 'pot'];

/**
 * The channel of each value in a line. Known spellings map to the known channels; a single unknown
 * name is the head, because a one-sensor probe hangs in the still head; other unknown names are kept.
 * No two values of a line share a channel: a later one gets its own name or a number.
 *
 * @example
 * channelsForNames([null, null]) // => ["head","pot"]
 * channelsForNames(['T', 'Jacket Top']) // => ["head","jacket-top"]
 */
export function channelsForNames(names: readonly RawValue['name'][]): readonly Channel[] {
  const taken = new Set<Channel>();
  return names.map((name, index) => {
    const own = name === null ? null : slugOf(name);
    const known = own === null ? byPosition[index] : spellings[own];
    const unknown = names.length === 1 ? 'head' : own;
    const candidates = [known, unknown, own, `channel-${index + 1}`, `extra-${index + 1}`];
    const channel =
      candidates.find((candidate) => candidate && isFree(candidate, taken)) ?? `value-${index + 1}`;
    taken.add(channel);
    return channel;
  });
}

function isFree(candidate: string, taken: ReadonlySet<Channel>): boolean {
  return channelSchema.safeParse(candidate).success && !taken.has(candidate);
}

function slugOf(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 32);
}
