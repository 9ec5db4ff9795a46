import { expect, test } from 'vitest';
import { channelSchema, isChannel } from '../../../shared-core/run/channel.ts';

test('asked for with or without the schema, the same names are channels', () => {
  const names = ['head', 'condenser-outlet', 't2', `a${'-'.repeat(31)}`];
  const others = ['', 'Head', '2t', '-head', 'pot 1', 'pöt', 'a'.repeat(33), 7, null, undefined];
  expect(names.map((name) => isChannel(name))).toEqual(names.map(() => true));
  expect(others.map((name) => isChannel(name))).toEqual(others.map(() => false));
  expect([...names, ...others].map((name) => channelSchema.safeParse(name).success)).toEqual(
    [...names, ...others].map((name) => isChannel(name)),
  );
});

test('something that only reads like a name is none', () => {
  expect(isChannel({ toString: () => 'head' })).toBe(false);
});
