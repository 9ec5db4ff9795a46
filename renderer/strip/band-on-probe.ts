import type { PlateauBand } from '#shared-core';

/**
 * The band where this probe is believed to show it, to the tenth people read: what stands beside the
 * probe's own trace must be on the probe's own scale, and a line must stand where its label says.
 */
export function bandOnProbe(band: PlateauBand): PlateauBand {
  const { azeotropeC, limitC, probeReadsHighK } = band;
  return {
    ...band,
    azeotropeC: toTenth(azeotropeC + probeReadsHighK),
    limitC: toTenth(limitC + probeReadsHighK),
  };
}

function toTenth(temperatureC: number): number {
  return Math.round(10 * temperatureC) / 10;
}
