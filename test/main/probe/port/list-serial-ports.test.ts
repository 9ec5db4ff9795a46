import { describe, expect, test } from 'vitest';
import { describePorts } from '../../../../main/probe/port/list-serial-ports.ts';

describe('describePorts', () => {
  test('puts plugs with a USB identity first and marks motherboard ports as unlikely', () => {
    const ports = describePorts(
      [
        { path: '/dev/ttyS0' },
        { path: '/dev/ttyUSB0', manufacturer: 'A maker', vendorId: '1A86', productId: '7523' },
      ],
      'linux',
    );
    expect(ports).toEqual([
      {
        path: '/dev/ttyUSB0',
        manufacturer: 'A maker',
        vendorId: '1a86',
        productId: '7523',
        serialNumber: null,
        likelyProbe: true,
      },
      {
        path: '/dev/ttyS0',
        manufacturer: null,
        vendorId: null,
        productId: null,
        serialNumber: null,
        likelyProbe: false,
      },
    ]);
  });

  test('on macOS shows each plug once, by its cu name', () => {
    const ports = describePorts(
      [
        { path: '/dev/tty.usbserial-1', vendorId: '0403' },
        { path: '/dev/cu.usbserial-1', vendorId: '0403' },
      ],
      'darwin',
    );
    expect(ports.map(({ path }) => path)).toEqual(['/dev/cu.usbserial-1']);
  });
});
