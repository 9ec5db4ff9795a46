import { expect, test } from 'vitest';
import { sourceAsNow } from '#main';
import {
  type PortInfo,
  type ProbeSource,
  type SerialSource,
  serialSourceSchema,
} from '#shared-core';
import { portInfoSchema } from '../../../../shared-core/contract/probe-schemas.ts';

const probe = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyUSB0', baudRate: 9600 });
const other = { ...probe, baudRate: 4800 };

function port(path: string, remembered?: SerialSource): PortInfo {
  return portInfoSchema.parse({
    path,
    manufacturer: null,
    vendorId: '0403',
    productId: '6001',
    serialNumber: path,
    likelyProbe: true,
    ...(remembered && { remembered: { ...remembered, path } }),
  });
}

test.each([
  ['stays where it is', [port('/dev/ttyUSB0', probe)], '/dev/ttyUSB0'],
  [
    'stays where nothing is remembered',
    [port('/dev/ttyUSB0'), port('/dev/ttyUSB1', probe)],
    '/dev/ttyUSB0',
  ],
  ['is found under another name', [port('/dev/ttyUSB1', probe)], '/dev/ttyUSB1'],
  [
    'is found where another took its name',
    [port('/dev/ttyUSB0', other), port('/dev/ttyUSB1', probe)],
    '/dev/ttyUSB1',
  ],
  [
    'is not guessed where two are alike',
    [port('/dev/ttyUSB1', probe), port('/dev/ttyUSB2', probe)],
    '/dev/ttyUSB0',
  ],
  ['keeps a name that no list shows', [], '/dev/ttyUSB0'],
])('a probe that a run had %s', (_, ports, path) => {
  expect(sourceAsNow(probe, ports)).toEqual({ ...probe, path });
  const several: ProbeSource = { kind: 'several', probes: [other, probe], timeScale: 1 };
  expect(sourceAsNow(several, [])).toEqual(several);
});
