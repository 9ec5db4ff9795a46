import type { ProbeStatus, Reading } from '#shared-core';
import type { ProbeLinkView } from './link/probe-link.ts';
import type { ProbeReading } from './probe-hub.ts';

type ChannelOrigin = NonNullable<ProbeStatus['origins']>[number];

/** One map of channels for several probes: whoever brings a channel first keeps its name. */
export interface ChannelMap {
  rename(probe: number, readings: readonly ProbeReading[]): readonly ProbeReading[];
  renameView(probe: number, view: ProbeLinkView): ProbeLinkView;
  /** Every channel heard so far, and whose it is. */
  origins(): readonly ChannelOrigin[];
  /** The probe in the still head; the first one until a head was heard. */
  headCarrier(): number;
}

export function createChannelMap(): ChannelMap {
  const owners = new Map<Reading['channel'], number>();
  const origins = new Map<Reading['channel'], ChannelOrigin>();

  /** The second probe's `head` becomes `head-2`; its readings are kept, never mixed with the first's. */
  function nameFor(probe: number, channel: Reading['channel']): Reading['channel'] {
    const owner = owners.get(channel) ?? probe;
    owners.set(channel, owner);
    const name = owner === probe ? channel : `${channel.slice(0, 29)}-${probe + 1}`;
    if (!origins.has(name)) origins.set(name, { channel: name, probe, own: channel });
    return name;
  }

  return {
    rename: (probe, readings) =>
      readings.map((reading) => ({ ...reading, channel: nameFor(probe, reading.channel) })),
    renameView: (probe, view) => ({
      ...view,
      channels: view.channels.map((channel) => nameFor(probe, channel)),
      latest: view.latest.map((reading) => ({
        ...reading,
        channel: nameFor(probe, reading.channel),
      })),
    }),
    origins: () => [...origins.values()],
    headCarrier: () => owners.get('head') ?? 0,
  };
}
