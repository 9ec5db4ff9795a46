import type { LineOutcome, Reading } from '#shared-core';
import type { ProbeReading } from '../probe-hub.ts';
import { createLineStamps } from './line-stamps.ts';

/** Turns understood lines into stamped readings and remembers the last one of each channel. */
export interface ReadingStamper {
  stamp(outcomes: readonly LineOutcome[], atS: number): readonly ProbeReading[];
  /** These two are the same arrays until something else is stamped. */
  channels(): Reading['channel'][];
  latest(): Reading[];
}

/** A probe that keeps inventing channel names is broken; the first ones are kept. */
const mostChannels = 32;

export function createReadingStamper(): ReadingStamper {
  const stamps = createLineStamps();
  const latest = new Map<Reading['channel'], ProbeReading>();
  let shown: { readonly channels: Reading['channel'][]; readonly latest: Reading[] } | null = null;

  const show = () => ({
    channels: [...latest.keys()],
    latest: [...latest.values()].map(({ atS, ...rest }): Reading => {
      return { kind: 'reading', timeS: atS, ...rest };
    }),
  });

  function remember(reading: ProbeReading): boolean {
    if (!latest.has(reading.channel) && latest.size >= mostChannels) return false;
    latest.set(reading.channel, reading);
    shown = null;
    return true;
  }

  return {
    stamp(outcomes, atS) {
      const moments = stamps.stamp(outcomes.length, atS);
      return outcomes.flatMap((outcome, index) =>
        outcome.values
          .map(({ channel, value, unit, quality }) => ({
            atS: moments[index] ?? atS,
            channel,
            value,
            unit,
            quality,
          }))
          .filter(remember),
      );
    },
    channels() {
      shown ??= show();
      return shown.channels;
    },
    latest() {
      shown ??= show();
      return shown.latest;
    },
  };
}
