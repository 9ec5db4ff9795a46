/** What people call the numbers a probe sends; names of its own stay as they are. */
const known: Readonly<Record<string, string>> = {
  head: 'still head',
  pot: 'pot',
  'condenser-outlet': 'condenser outlet',
  room: 'room',
  ferment: 'ferment',
  receiver: 'receiver',
  'air-pressure': 'air pressure',
  heater: 'heater',
};

/** `pot`, `second pot`, `number 3`: the second of a name comes from another probe, a number without a name from its line. */
export function channelWords(channel: string): string {
  const [, stem = channel, count] = /^(.*)-(\d+)$/.exec(channel) ?? [];
  if (count === undefined) return known[channel] ?? channel;
  if (stem === 'channel') return `number ${count}`;
  const name = known[stem];
  if (name === undefined) return channel;
  return count === '2' ? `second ${name}` : `${name}, number ${count}`;
}
