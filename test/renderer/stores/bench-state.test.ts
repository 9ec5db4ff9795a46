import { expect, test } from 'vitest';
import type { EventBody, ProbeStatus, ServiceProblem } from '#shared-core';
import { benchAfter, unknownBench } from '../../../renderer/stores/bench-state.ts';
import { heardProbe } from '../support/heard-probe.ts';

test('a port that would not open is no news once a probe is heard; any other problem stays until it is read', () => {
  const missing: ServiceProblem = { kind: 'port-not-found', path: '/dev/ttyACM0' };
  const full: ServiceProblem = { kind: 'disk-full', path: 'runs' };
  const problemAfter = (problem: ServiceProblem, state: ProbeStatus['state']) =>
    benchAfter({ ...unknownBench, problem }, { type: 'probe', probe: { ...heardProbe, state } })
      .problem;
  expect([
    problemAfter(missing, 'connecting'),
    problemAfter(missing, 'hearing'),
    problemAfter({ kind: 'no-probe' }, 'hearing'),
    problemAfter(full, 'hearing'),
  ]).toEqual([missing, null, null, full]);
});

test('that a folder which is gone can’t be reached is no news, whichever is told first; any other problem stays', () => {
  const unreachable: ServiceProblem = { kind: 'folder-unavailable', path: '/runs', message: '' };
  const full: ServiceProblem = { kind: 'disk-full', path: '/runs' };
  const recording = {
    state: 'idle',
    runId: null,
    startedAtIso: null,
    savedToS: null,
    problem: { kind: 'folder-gone', path: '/runs' },
  } as const;
  const told = [unreachable, full].flatMap((problem) => [
    benchAfter({ ...unknownBench, problem }, { type: 'recording', recording }).problem,
    benchAfter({ ...unknownBench, recording }, { type: 'problem', problem }).problem,
  ]);
  expect(told).toEqual([null, null, full, full]);
});

test('why the disk has not taken a run that was stopped is no news, whichever is told first; any other problem stays', () => {
  const full: ServiceProblem = { kind: 'disk-full', path: '/runs' };
  const other: ServiceProblem = { kind: 'no-probe' };
  const run = { runId: '20250314T101500Z', name: 'Pear', endedS: 60, savedToS: 20, problem: full };
  const recording: EventBody<'recording'> = {
    state: 'idle',
    runId: null,
    startedAtIso: null,
    savedToS: null,
    problem: null,
    notSaved: [run],
  };
  const told = [full, other].flatMap((problem) => [
    benchAfter({ ...unknownBench, problem }, { type: 'recording', recording }).problem,
    benchAfter({ ...unknownBench, recording }, { type: 'problem', problem }).problem,
  ]);
  expect(told).toEqual([null, null, other, other]);
});
