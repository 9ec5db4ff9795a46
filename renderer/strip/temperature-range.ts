import type { DrawnPoint, PlateauBand } from '#shared-core';

/** Whole: from room to above boiling water. Plateau: some kelvin round the band. */
export type StripHeight = 'whole' | 'plateau';

export interface TemperatureRange {
  readonly lowC: number;
  readonly highC: number;
}

/** What a run covers: from a room to boiling water. */
export const wholeC = { low: 20, high: 100 } as const;

/** What the strip shows from bottom to top; it always holds the band. */
export function temperatureRange(
  height: StripHeight,
  band: PlateauBand | null,
  drawn: readonly DrawnPoint[],
): TemperatureRange {
  const heights = drawn.flatMap(({ value }) => (value === null ? [] : [value]));
  const least = heights.reduce((low, value) => Math.min(low, value), wholeC.low);
  const greatest = heights.reduce((high, value) => Math.max(high, value), wholeC.high);
  // A little room below, so that a cold head does not lie on the strip's foot.
  if (height === 'whole' || band === null) {
    return { lowC: Math.floor((least - 2) / 10) * 10, highC: Math.ceil((greatest + 1) / 5) * 5 };
  }
  const last = heights[heights.length - 1] ?? band.azeotropeC;
  return {
    lowC: Math.floor(band.azeotropeC - 3),
    highC: Math.ceil(Math.max(band.limitC + 3, Math.min(last, greatest) + 1)),
  };
}
