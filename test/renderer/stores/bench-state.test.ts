import { expect, test } from 'vitest';
import type { ProbeStatus, ServiceProblem } from '#shared-core';
import { benchAfter, unknownBench } from '../../../renderer/stores/bench-state.ts';
import { probeStatusSchema } from '../../../shared-core/contract/probe-schemas.ts';

const heard: ProbeStatus = probeStatusSchema.parse({
  state: 'hearing',
  source: null,
  path: '/dev/ttyACM0',
  lastLine: '78.42',
  channels: ['head'],
  latest: [],
  readingsPerS: 1,
  rejectedLines: 0,
  droppedBytes: 0,
  problem: null,
  advice: null,
});

test('a port that would not open is no news once a probe is heard; any other problem stays until it is read', () => {
  const missing: ServiceProblem = { kind: 'port-not-found', path: '/dev/ttyACM0' };
  const full: ServiceProblem = { kind: 'disk-full', path: 'runs' };
  const problemAfter = (problem: ServiceProblem, state: ProbeStatus['state']) =>
    benchAfter({ ...unknownBench, problem }, { type: 'probe', probe: { ...heard, state } }).problem;
  expect([
    problemAfter(missing, 'connecting'),
    problemAfter(missing, 'hearing'),
    problemAfter({ kind: 'no-probe' }, 'hearing'),
    problemAfter(full, 'hearing'),
  ]).toEqual([missing, null, null, full]);
});
