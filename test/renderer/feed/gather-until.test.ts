import { expect, test } from 'vitest';
import { gatherUntil } from '../../../renderer/feed/gather-until.ts';

test('acts are carried out together and in order when the frame is due, and the next ones wait for the next', () => {
  const frames: (() => void)[] = [];
  const told: string[] = [];
  const tell = gatherUntil((carryOut) => frames.push(carryOut));
  tell(() => told.push('inputs 1'));
  tell(() => told.push('snapshot 1'));
  const beforeFrame = [...told];
  frames[0]?.();
  tell(() => told.push('inputs 2'));
  expect({ beforeFrame, told, frames: frames.length }).toEqual({
    beforeFrame: [],
    told: ['inputs 1', 'snapshot 1'],
    frames: 2,
  });
});
