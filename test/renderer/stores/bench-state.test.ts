import { expect, test } from 'vitest';
import type { ProbeStatus, ServiceProblem } from '#shared-core';
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
