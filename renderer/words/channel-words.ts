import { say } from '#shared-core';
import { namesOf } from './channel-names.ts';

/** What people call the numbers a probe sends; names of its own stay as they are. */
const plainName = (channel: string): string | undefined =>
  channel === 'heater' ? say('heater') : namesOf(channel)?.plain;

/** `pot`, `second pot`, `number 3`: the second of a name comes from another probe, a number without a name from its line. */
export function channelWords(channel: string): string {
  const [, stem = channel, count] = /^(.*)-(\d+)$/.exec(channel) ?? [];
  if (count === undefined) return plainName(channel) ?? channel;
  if (stem === 'channel') return say('number {count}', { count });
  const name = plainName(stem);
  if (name === undefined) return channel;
  return count === '2'
    ? say('second {name}', { name })
    : say('{name}, number {count}', { name, count });
}
