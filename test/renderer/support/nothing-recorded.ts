import type { EventBody } from '#shared-core';

/** What the services say while no run is under way. */
export const nothingRecorded = {
  state: 'idle',
  runId: null,
  startedAtIso: null,
  savedToS: null,
  problem: null,
} as const satisfies EventBody<'recording'>;
