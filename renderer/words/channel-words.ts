import { say } from '#shared-core';

/** What people call the numbers a probe sends; names of its own stay as they are. */
const known: Readonly<Record<string, string>> = {
  head: say('still head'),
  pot: say('pot'),
  'condenser-outlet': say('condenser outlet'),
  room: say('room'),
  ferment: say('ferment'),
  receiver: say('receiver'),
  'air-pressure': say('air pressure'),
  heater: say('heater'),
};

/** `pot`, `second pot`, `number 3`: the second of a name comes from another probe, a number without a name from its line. */
export function channelWords(channel: string): string {
  const [, stem = channel, count] = /^(.*)-(\d+)$/.exec(channel) ?? [];
  if (count === undefined) return known[channel] ?? channel;
  if (stem === 'channel') return say('number {count}', { count });
  const name = known[stem];
  if (name === undefined) return channel;
  return count === '2'
    ? say('second {name}', { name })
    : say('{name}, number {count}', { name, count });
}
