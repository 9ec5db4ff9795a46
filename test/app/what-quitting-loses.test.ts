import { expect, test } from 'vitest';
import { isAnythingAtStake, whatQuittingLoses } from '../../app/what-quitting-loses.ts';

const idle = {
  state: 'idle',
  runId: null,
  startedAtIso: null,
  savedToS: null,
  problem: null,
} as const;
const recording = {
  state: 'recording',
  runId: '20250314T101500Z',
  startedAtIso: '2025-03-14T10:15:00.000Z',
  savedToS: 61,
  problem: null,
} as const;
const problem = { kind: 'disk-full', path: '/runs' } as const;
const pears = { runId: '20250314T091500Z', name: 'Pears', endedS: 3661, savedToS: 600, problem };

test('a program without a run loses nothing, and asks nobody', () => {
  expect([isAnythingAtStake(idle), whatQuittingLoses(idle)]).toEqual([false, '']);
});

test('a run that is saved as it goes on is said to go on, one that is not also how far it is saved', () => {
  expect(whatQuittingLoses(recording)).toBe('A run is being recorded, and it goes on.');
  const failed = whatQuittingLoses({ ...recording, state: 'failed', problem });
  expect(failed).toMatch(/only up to 0:01:01, and what it does not take at the end is lost\.$/);
});

test('each run that is over and not saved is named, with how much of it would be lost, beside one that goes on', () => {
  const alone = { ...idle, notSaved: [pears] };
  expect(isAnythingAtStake(alone)).toBe(true);
  const said =
    'The run “Pears” is over and not saved: the disk has taken it up to 0:10:00 of 1:01:01, and the rest is lost with the program.';
  expect(whatQuittingLoses(alone)).toBe(said);
  expect(whatQuittingLoses({ ...recording, notSaved: [pears] })).toBe(
    `A run is being recorded, and it goes on. ${said}`,
  );
});
