import { fail, type PortInfo, type Result, type ServiceProblem, succeed } from '#shared-core';
import { preferCallout } from './open-serial-line.ts';

/** A port as the serial library lists it. */
export interface ListedPort {
  readonly path: string;
  readonly manufacturer?: string | undefined;
  readonly vendorId?: string | undefined;
  readonly productId?: string | undefined;
  readonly serialNumber?: string | undefined;
}

/** All serial ports; those without a USB identity are marked so that windows can hide them. */
export async function listSerialPorts(): Promise<Result<readonly PortInfo[], ServiceProblem>> {
  try {
    const { SerialPort } = await import('serialport');
    return succeed(describePorts(await SerialPort.list(), process.platform));
  } catch (error) {
    // On Linux the list comes from `udevadm`, which a minimal system may lack; typing a path works.
    return fail({ kind: 'internal', message: `Ports could not be listed: ${String(error)}` });
  }
}

/** The contract's form of a port list: `cu.` names on macOS, likely probes first, each path once. */
export function describePorts(
  listed: readonly ListedPort[],
  platform: string,
): readonly PortInfo[] {
  const byPath = new Map<string, PortInfo>();
  for (const port of listed) {
    const path = preferCallout(port.path, platform);
    byPath.set(path, {
      path,
      manufacturer: port.manufacturer ?? null,
      vendorId: port.vendorId?.toLowerCase() ?? null,
      productId: port.productId?.toLowerCase() ?? null,
      serialNumber: port.serialNumber ?? null,
      likelyProbe: port.vendorId !== undefined && port.vendorId !== '',
    });
  }
  return [...byPath.values()].sort(
    (a, b) => Number(b.likelyProbe) - Number(a.likelyProbe) || a.path.localeCompare(b.path),
  );
}
