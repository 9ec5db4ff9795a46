import { expect, test } from 'vitest';
import { atStart, type ReplayEvent, replayAfter } from '../../../renderer/replay/replay-state.ts';

const after = (...events: ReplayEvent[]) => events.reduce(replayAfter, { ...atStart, endS: 600 });

test('a playing replay passes run time at its speed and stops at the end', () => {
  expect([
    after({ type: 'play' }, { type: 'passed', realS: 2 }),
    after({ type: 'play' }, { type: 'passed', realS: 20 }),
  ]).toEqual([
    { timeS: 120, endS: 600, speed: 60, isPlaying: true },
    { timeS: 600, endS: 600, speed: 60, isPlaying: false },
  ]);
});

test('a paused replay stays where it is', () => {
  expect(after({ type: 'passed', realS: 5 }).timeS).toBe(0);
});

test('play at the end starts over', () => {
  expect(after({ type: 'jumped', timeS: 600 }, { type: 'play' }).timeS).toBe(0);
});

test('a jump never leaves the run', () => {
  expect([
    after({ type: 'jumped', timeS: -5 }).timeS,
    after({ type: 'jumped', timeS: 1e6 }).timeS,
  ]).toEqual([0, 600]);
});
