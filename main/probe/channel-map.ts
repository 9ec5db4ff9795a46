import type { Channel } from '#shared-core';
import type { ProbeLinkView } from './link/probe-link.ts';
import type { ProbeReading } from './probe-hub.ts';

/** One map of channels for several probes: whoever brings a channel first keeps its name. */
export interface ChannelMap {
  rename(probe: number, readings: readonly ProbeReading[]): readonly ProbeReading[];
  renameView(probe: number, view: ProbeLinkView): ProbeLinkView;
  /** The probe in the still head; the first one until a head was heard. */
  headCarrier(): number;
}

export function createChannelMap(): ChannelMap {
  const owners = new Map<Channel, number>();

  /** The second probe's `head` becomes `head-2`; its readings are kept, never mixed with the first's. */
  function nameFor(probe: number, channel: Channel): Channel {
    const owner = owners.get(channel) ?? probe;
    owners.set(channel, owner);
    return owner === probe ? channel : `${channel.slice(0, 29)}-${probe + 1}`;
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
    headCarrier: () => owners.get('head') ?? 0,
  };
}
