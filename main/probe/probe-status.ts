import type { ProbeStatus } from '#shared-core';

/** Nothing is connected and nothing was tried. */
export const noProbeStatus: ProbeStatus = {
  state: 'none',
  source: null,
  path: null,
  device: null,
  lastLine: null,
  recentLines: [],
  identity: null,
  channels: [],
  latest: [],
  readingsPerS: 0,
  rejectedLines: 0,
  droppedBytes: 0,
  problem: null,
  advice: null,
};
