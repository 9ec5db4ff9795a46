import { expect, test } from 'vitest';
import type { ProbeLinkView } from '../../../main/probe/link/probe-link.ts';
import { mergeViews } from '../../../main/probe/merge-views.ts';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';

const view = (rest: Partial<ProbeLinkView>): ProbeLinkView => ({
  ...noProbeStatus,
  state: 'hearing',
  path: '/dev/ttyACM0',
  channels: ['head'],
  readingsPerS: 1.5,
  rejectedLines: 2,
  droppedBytes: 3,
  ...rest,
});

test('one probe is shown as it is', () => {
  const only = view({ advice: 'Listening …' });
  expect(mergeViews([only])).toBe(only);
  expect(() => mergeViews([])).toThrow('without probes');
});

test('of several the worst state stands for all, with its port; what was heard is added up', () => {
  const problem = { kind: 'port-busy', path: '/dev/ttyACM1' } as const;
  const merged = mergeViews([
    view({}),
    view({
      state: 'silent',
      path: '/dev/ttyACM1',
      channels: ['pot'],
      readingsPerS: 0,
      problem,
      advice: 'Nothing arrives.',
      lastLine: '91.3',
    }),
    view({ state: 'connecting', path: '/dev/ttyACM2', channels: [], advice: 'Listening …' }),
  ]);
  expect(merged).toMatchObject({
    state: 'silent',
    path: '/dev/ttyACM0, /dev/ttyACM1, /dev/ttyACM2',
    channels: ['head', 'pot'],
    lastLine: '91.3',
    readingsPerS: 3,
    rejectedLines: 6,
    droppedBytes: 9,
    problem,
    advice: '/dev/ttyACM1: Nothing arrives.',
  });
  expect(mergeViews([view({}), view({})])).toMatchObject({ problem: null, advice: null });
});

test('a lost probe is worse than a silent one, that than one that is not understood, that than one that begins', () => {
  const states = [
    'none',
    'hearing',
    'connecting',
    'starting',
    'unreadable',
    'silent',
    'lost',
  ] as const;
  const worst = states.map((state, index) =>
    index === 0
      ? null
      : mergeViews([view({ state }), view({ state: states[index - 1] ?? 'none' })]).state,
  );
  expect(worst).toEqual([null, ...states.slice(1)]);
});
