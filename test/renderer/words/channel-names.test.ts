import { expect, test } from 'vitest';
import { knownChannels } from '#shared-core';
import { roleOptions } from '../../../renderer/probe/channel-roles.ts';
import { channelWords } from '../../../renderer/words/channel-words.ts';

test('every channel with a meaning is called by a name, and can be said of a probe', () => {
  const called = knownChannels.filter((channel) => channelWords(`${channel}-2`) !== `${channel}-2`);
  expect(called).toEqual(knownChannels);
  expect(new Set(roleOptions.map(({ value }) => value))).toEqual(new Set(['', ...knownChannels]));
});

test('a name that only an object would know is no channel', () => {
  expect(channelWords('constructor')).toBe('constructor');
});
