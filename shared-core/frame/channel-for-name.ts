import { type Channel, channelSchema } from '../run/index.ts';
import type { RawValue } from './raw-value.ts';

/** Spellings that people and sketches use; matched without case, blanks, digits' dots or underscores. */
const spellings: ReadonlyMap<string, Channel> = new Map(
  Object.entries({
    head: 'head',
    'still-head': 'head',
    vapour: 'head',
    vapor: 'head',
    kopf: 'head',
    kopftemperatur: 'head',
    dampf: 'head',
    t: 'head',
    t1: 'head',
    temp: 'head',
    temp1: 'head',
    temperature: 'head',
    r: 'head',
    rtd: 'head',
    pt100: 'head',
    pt1000: 'head',
    pot: 'pot',
    boiler: 'pot',
    sumpf: 'pot',
    blase: 'pot',
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
  }),
);

/**
 * The channel of each value in a line. Known spellings map to the known channels; a lone number without a name is the
 * head, because that is all that such a probe can be hung up for. Whatever else is not said is not guessed: it keeps its own name, or
 * its place in the line, until a person has said which one hangs in the still head. A counter before the numbers, or the
 * second of two sensors that speak in turn, would be taken for the head otherwise.
 * No two values of a line share a channel: a later one gets its own name or a number.
 *
 * @example
 * channelsForNames([null]) // => ["head"]
 * channelsForNames([null, null]) // => ["channel-1","channel-2"]
 * channelsForNames(['T', 'Jacket Top']) // => ["head","jacket-top"]
 * channelsForNames(['Sensor 1']) // => ["sensor-1"]
 */
export function channelsForNames(names: readonly RawValue['name'][]): readonly Channel[] {
  const taken = new Set<Channel>();
  return names.map((name, index) => {
    const own = name === null ? null : slugOf(name);
    const known = own === null ? loneNumber(names) : spellings.get(own);
    const candidates = [known, own, `channel-${index + 1}`, `extra-${index + 1}`];
    const channel =
      candidates.find((candidate) => candidate && isFree(candidate, taken)) ?? `value-${index + 1}`;
    taken.add(channel);
    return channel;
  });
}

function loneNumber(names: readonly RawValue['name'][]): Channel | null {
  return names.length === 1 ? 'head' : null;
}

function isFree(candidate: string, taken: ReadonlySet<Channel>): boolean {
  return channelSchema.safeParse(candidate).success && !taken.has(candidate);
}

function slugOf(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 32);
}
