import { expect, test } from 'vitest';
import { recordingWithoutNames } from '../../../app/class-view/without-names.ts';

const underWay = {
  state: 'failed',
  runId: '20250314T101500Z',
  startedAtIso: '2025-03-14T10:15:00.000Z',
  savedToS: 61,
  endedS: 70,
  adviceStopped: 'a bug',
  lostReadings: 3,
} as const;

test('a class sees how the run under way stands, and neither a path nor the runs before it', () => {
  const problem = { kind: 'disk-full', path: '/home/somebody' } as const;
  const run = { runId: '20250313T101500Z', name: 'Somebody’s', endedS: 9, savedToS: 3, problem };
  expect(recordingWithoutNames({ ...underWay, problem, notSaved: [run] })).toEqual({
    ...underWay,
    problem: null,
  });
});
