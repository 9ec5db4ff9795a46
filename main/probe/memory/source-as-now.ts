import { isDeepStrictEqual } from 'node:util';
import type { PortInfo, ProbeSource, SerialSource } from '#shared-core';

/**
 * A source as it was, with the ports' names of today: a device may come back under another one. It is known again by its USB
 * identity, as how it was understood is remembered with that; where two could be meant, the name stays.
 */
export function sourceAsNow(source: ProbeSource, ports: readonly PortInfo[]): ProbeSource {
  if (source.kind === 'several') {
    return { ...source, probes: source.probes.map((probe) => serialAsNow(probe, ports)) };
  }
  return source.kind === 'serial' ? serialAsNow(source, ports) : source;
}

function serialAsNow(source: SerialSource, ports: readonly PortInfo[]): SerialSource {
  const alike = ports.filter(
    ({ path, remembered }) =>
      remembered !== undefined && isDeepStrictEqual(remembered, { ...source, path }),
  );
  const isWhereItWas = ports.some(
    ({ path, remembered }) =>
      path === source.path &&
      (remembered === undefined || alike.some((port) => port.path === path)),
  );
  const [only] = alike;
  return isWhereItWas || only === undefined || alike.length > 1
    ? source
    : { ...source, path: only.path };
}
