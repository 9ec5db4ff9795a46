import { expect, test } from 'vitest';
import { type PortInfo, type SetUp, serialSourceSchema, setUpSchema } from '#shared-core';
import { devicesOf, withPathsOfToday } from '../../../main/rigs/devices.ts';

const charge = { volumeMl: 350, strengthAbv: 9 };
const port = (path: string, serialNumber: string | null): PortInfo => ({
  path,
  manufacturer: null,
  vendorId: serialNumber === null ? null : '1a86',
  productId: serialNumber === null ? null : '7523',
  serialNumber,
  likelyProbe: true,
});
const device = (serialNumber: string) => ({ vendorId: '1a86', productId: '7523', serialNumber });
const serial = (path: string) => serialSourceSchema.parse({ kind: 'serial', path });
const setUp = (source: SetUp['source']): SetUp => ({
  ...setUpSchema.parse({ name: 'Pear', charge }),
  source,
});
const several = (...paths: readonly string[]): SetUp['source'] => ({
  kind: 'several',
  probes: paths.map(serial),
  timeScale: 1,
});

test('of a set-up’s ports it is kept which device is at each, and none where nothing tells', () => {
  const ports = [
    port('/dev/ttyUSB0', 'one'),
    port('/dev/ttyUSB1', 'two'),
    port('/dev/ttyS0', null),
  ];
  expect([
    devicesOf(null, ports),
    devicesOf(serial('/dev/ttyUSB1'), ports),
    devicesOf(several('/dev/ttyUSB1', '/dev/ttyS0', '/dev/ttyUSB0', '/dev/nowhere'), ports),
  ]).toEqual([[], [device('two')], [device('two'), null, device('one'), null]]);
});

test('each of several probes is looked for where it is plugged in today, and all else stays as it was', () => {
  const kept = {
    setUp: setUp(several('/dev/ttyUSB0', '/dev/ttyUSB1')),
    devices: [device('one'), device('two')],
  };
  const swapped = [port('/dev/ttyUSB0', 'two'), port('/dev/ttyUSB1', 'one')];
  expect(withPathsOfToday(kept, swapped)).toEqual(setUp(several('/dev/ttyUSB1', '/dev/ttyUSB0')));
  // A device that is not there leaves its name.
  expect(withPathsOfToday(kept, [port('/dev/ttyUSB7', 'two')])).toEqual(
    setUp(several('/dev/ttyUSB0', '/dev/ttyUSB7')),
  );
});

test('a probe of which nothing is known stays at its port, whatever is there now', () => {
  const kept = { setUp: setUp(serial('/dev/ttyS0')), devices: [null] };
  expect(withPathsOfToday(kept, [port('/dev/ttyS0', null), port('/dev/ttyUSB0', 'one')])).toEqual(
    kept.setUp,
  );
  expect(withPathsOfToday({ ...kept, devices: [] }, [port('/dev/ttyS0', 'other')])).toEqual(
    kept.setUp,
  );
  const none = { setUp: setUp(null), devices: [] };
  expect(withPathsOfToday(none, [port('/dev/ttyUSB0', 'one')])).toEqual(none.setUp);
});

test('the kept port counts while the same device is there', () => {
  const kept = { setUp: setUp(serial('/dev/ttyUSB0')), devices: [device('one')] };
  const both = [port('/dev/ttyUSB0', 'one'), port('/dev/ttyUSB1', 'one')];
  expect(withPathsOfToday(kept, both)).toEqual(kept.setUp);
  // Another one is there now, and the known one elsewhere.
  const moved = [port('/dev/ttyUSB0', 'two'), port('/dev/ttyUSB1', 'one')];
  expect(withPathsOfToday(kept, moved)).toEqual(setUp(serial('/dev/ttyUSB1')));
});
