import type { PortInfo, SetUp } from '#shared-core';
import { identityAt, isSameDevice, type UsbIdentity, whereIsDevice } from '../probe/index.ts';
import type { RigsFile } from './rigs-file.ts';

/** Which device is at each of a set-up's ports now. */
export function devicesOf(
  source: SetUp['source'],
  ports: readonly PortInfo[],
): (UsbIdentity | null)[] {
  const probes = source === null ? [] : source.kind === 'serial' ? [source] : source.probes;
  return probes.map(({ path }) => identityAt(path, ports));
}

/** A kept set-up whose probes are looked for where they are plugged in today. */
export function withPathsOfToday(
  { setUp, devices }: Pick<NonNullable<RigsFile['last']>, 'setUp' | 'devices'>,
  ports: readonly PortInfo[],
): SetUp {
  const { source } = setUp;
  const today = (path: string, index: number) => whereIs(path, devices[index] ?? null, ports);
  if (source === null) return setUp;
  if (source.kind === 'serial') {
    return { ...setUp, source: { ...source, path: today(source.path, 0) } };
  }
  const probes = source.probes.map((probe, index) => ({
    ...probe,
    path: today(probe.path, index),
  }));
  return { ...setUp, source: { ...source, probes } };
}

/** The kept path may belong to another device by now; then the known one goes before it. */
function whereIs(path: string, device: UsbIdentity | null, ports: readonly PortInfo[]): string {
  const candidates = ports.filter(
    (port) => port.path !== path || device === null || isSameDevice(port, device),
  );
  return whereIsDevice(path, device, candidates);
}
