import type { Reading } from '../../run/index.ts';
import type { ChannelValue } from './channel-senses.ts';
import { createSecondBin, type SecondBin } from './second-bin.ts';

/** Gathers the readings of all channels but the head into whole seconds. */
export interface ChannelSeconds {
  see(reading: Reading): void;
  /** What came since it was last taken, each channel as one value. */
  take(atS: number): Iterable<ChannelValue>;
}

export function createChannelSeconds(): ChannelSeconds {
  const channels = new Map<string, { readonly bin: SecondBin; unit: string }>();
  return {
    see: ({ channel, timeS, value, unit, quality }) => {
      if (quality !== 'good' || !Number.isFinite(value)) return;
      let known = channels.get(channel);
      if (known === undefined) {
        known = { bin: createSecondBin(), unit };
        channels.set(channel, known);
      }
      known.unit = unit;
      known.bin.add(timeS, value);
    },
    *take(atS) {
      for (const [channel, { bin, unit }] of channels) {
        const binned = bin.take();
        if (binned !== null) yield { channel, unit, value: binned.value, atS };
      }
    },
  };
}
