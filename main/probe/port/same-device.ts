import { z } from 'zod';
import type { PortInfo } from '#shared-core';

/** What a USB device says of itself; the port's name may change with every plug-in. */
export const usbIdentitySchema = z.object({
  vendorId: z.string().nullable(),
  productId: z.string().nullable(),
  serialNumber: z.string().nullable(),
});

export type UsbIdentity = z.infer<typeof usbIdentitySchema>;

/** The identity of the device at `path`, null when it has none. */
export function identityAt(path: string, ports: readonly PortInfo[]): UsbIdentity | null {
  const port = ports.find((candidate) => candidate.path === path);
  return port === undefined || port.vendorId === null ? null : usbIdentitySchema.parse(port);
}

export function isSameDevice(a: UsbIdentity, b: UsbIdentity): boolean {
  return (
    a.vendorId !== null &&
    a.vendorId === b.vendorId &&
    a.productId === b.productId &&
    a.serialNumber === b.serialNumber
  );
}

/** A device's own name: the same at every port where it has a serial number; where it has none, it hangs on the port. */
export function deviceName(path: string, identity: UsbIdentity | null): string {
  if (identity === null || identity.vendorId === null) return path;
  const { vendorId, productId, serialNumber } = identity;
  return [vendorId, productId ?? '', serialNumber ?? path].join(' ');
}

/**
 * Where a device that was at `path` is now: the same path, or another path with its USB identity if
 * exactly one device has it. Two cheap adapters without serial numbers look alike, and the wrong one
 * must never be opened. A path that no list shows (a pseudo-terminal, a typed-in link) stays as it is.
 */
export function whereIsDevice(
  path: string,
  identity: UsbIdentity | null,
  ports: readonly PortInfo[],
): string {
  if (identity === null || ports.some((port) => port.path === path)) return path;
  const alike = ports.filter((port) => isSameDevice(port, identity));
  return alike.length === 1 && alike[0] !== undefined ? alike[0].path : path;
}
