import { describe, expect, test } from 'vitest';
import type { PortInfo } from '#shared-core';
import { deviceName, identityAt, whereIsDevice } from '../../../../main/probe/port/same-device.ts';

function port(path: string, serialNumber: string | null): PortInfo {
  return {
    path,
    manufacturer: null,
    vendorId: '1a86',
    productId: '7523',
    serialNumber,
    likelyProbe: true,
  };
}

test('a device is named alike at every port by its serial number, by the port where it has none', () => {
  const nameAt = (path: string, serialNumber: string | null) =>
    deviceName(path, identityAt(path, [port(path, serialNumber)]));
  expect(nameAt('/dev/ttyUSB1', 'one')).toBe(nameAt('/dev/ttyUSB0', 'one'));
  const names = [
    nameAt('/dev/ttyUSB0', 'one'),
    nameAt('/dev/ttyUSB0', 'two'),
    nameAt('/dev/ttyUSB0', null),
    nameAt('/dev/ttyUSB1', null),
    deviceName('/dev/ttyUSB0', null),
  ];
  expect(new Set(names).size).toBe(names.length);
});

describe('whereIsDevice', () => {
  const identity = identityAt('/dev/ttyUSB0', [port('/dev/ttyUSB0', 'one')]);

  test('follows a device that came back under another name', () => {
    const now = [port('/dev/ttyUSB1', 'one'), port('/dev/ttyUSB2', 'two')];
    expect(whereIsDevice('/dev/ttyUSB0', identity, now)).toBe('/dev/ttyUSB1');
  });

  test('does not choose between two devices that look alike', () => {
    const now = [port('/dev/ttyUSB1', 'one'), port('/dev/ttyUSB2', 'one')];
    expect(whereIsDevice('/dev/ttyUSB0', identity, now)).toBe('/dev/ttyUSB0');
  });

  test('never follows another device', () => {
    expect(whereIsDevice('/dev/ttyUSB0', identity, [port('/dev/ttyUSB1', 'two')])).toBe(
      '/dev/ttyUSB0',
    );
  });

  test('stays with a typed-in path that no list shows', () => {
    expect(whereIsDevice('/dev/pts/4', null, [port('/dev/ttyUSB1', 'one')])).toBe('/dev/pts/4');
  });
});
