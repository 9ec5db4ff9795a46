import { expect, test } from 'vitest';
import type { ServiceProblem } from '#shared-core';
import { createCommands } from '../../../renderer/parts/commands.ts';
import { createBenchStore } from '../../../renderer/stores/index.ts';

async function told(error: ServiceProblem): Promise<ServiceProblem | null> {
  const bench = createBenchStore();
  const service = {
    request: async () => ({ ok: false, error }) as never,
    on: () => () => {},
    connection: () => 'open' as const,
    onConnection: () => () => {},
  };
  const source = { kind: 'serial', path: '/dev/ttyACM0', language: 'auto' } as never;
  expect(await createCommands(service, bench).connect(source)).toBe(false);
  return bench.getState().problem;
}

test('what could not be done is put before the person, but not what a later wish took the place of', async () => {
  expect([await told({ kind: 'unanswered' }), await told({ kind: 'superseded' })]).toEqual([
    { kind: 'unanswered' },
    null,
  ]);
});
