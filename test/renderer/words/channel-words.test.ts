import { expect, test } from 'vitest';
import { channelWords } from '../../../renderer/words/index.ts';

test.each([
  ['head', 'still head'],
  ['pot', 'pot'],
  ['pot-2', 'second pot'],
  ['room-3', 'room, number 3'],
  ['channel-2', 'number 2'],
  ['condenser-outlet', 'condenser outlet'],
  ['Sensor-7', 'Sensor-7'],
  ['mantle', 'mantle'],
])('what a probe calls %s is shown as “%s”', (channel, words) => {
  expect(channelWords(channel)).toBe(words);
});
