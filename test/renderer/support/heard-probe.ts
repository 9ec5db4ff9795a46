import { type ProbeStatus, serialSourceSchema } from '#shared-core';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';

/** A probe on a serial port that is heard, with nothing read yet. */
export const heardProbe: ProbeStatus = {
  ...noProbeStatus,
  state: 'hearing',
  source: serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' }),
  path: '/dev/ttyACM0',
  lastLine: '21.43',
  channels: ['head'],
  readingsPerS: 1,
};
