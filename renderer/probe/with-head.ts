import type { ProbeSource, ProbeStatus, SerialSource } from '#shared-core';

type ChannelOrigin = NonNullable<ProbeStatus['origins']>[number];

/**
 * The source whose shown channel is the one in the still head; null where that can't be said of it: the simulated still has none to
 * choose, and of several probes it must be known which brings the channel.
 */
export function withHead(
  source: ProbeSource,
  shown: string,
  origins: readonly ChannelOrigin[] = [],
): ProbeSource | null {
  if (source.kind === 'demo') return null;
  if (source.kind === 'serial') return probeWithHead(source, shown);
  const origin = origins.find(({ channel }) => channel === shown);
  if (origin === undefined) return null;
  const probes = source.probes.map((probe, index) =>
    index === origin.probe ? probeWithHead(probe, origin.own) : probe,
  );
  return { ...source, probes };
}

/** The source with the channel that is shown under this name as its still head. */
function probeWithHead(source: SerialSource, shown: string): SerialSource {
  const renamed = Object.entries(source.channels ?? {});
  // What the probe itself calls it, under whatever name it is shown.
  const spoken = renamed.find(([, name]) => name === shown)?.[0] ?? shown;
  const others = renamed.filter(([from, name]) => from !== spoken && name !== 'head');
  return { ...source, channels: { ...Object.fromEntries(others), [spoken]: 'head' } };
}
