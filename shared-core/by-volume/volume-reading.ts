import type { RunInput } from '../run/index.ts';

/** The head temperature when so much distillate had come over. */
export interface VolumeReading {
  /** All distillate so far [mL]. */
  readonly volumeMl: number;
  /** As read [°C]. */
  readonly headC: number;
}

/** Fewer points are no course. */
const leastReadings = 3;

/**
 * The readings of a table that has volumes and no times, as it is taken in: all at time 0, each head temperature
 * after the volume it belongs to. Null for a run with times, and for anything with fewer than three such pairs.
 *
 * @param inputs readings of a run in their order: `receiver` in mL, `head` in °C
 * @returns volumes [mL] and head temperatures [°C] in the order of the volumes
 *
 * Source: this project's rule; no standard.
 * @example
 * const pair = (volumeMl, headC) => [['receiver', volumeMl, 'mL'], ['head', headC, '°C']].map(([channel, value, unit]) => ({ kind: 'reading', timeS: 0, channel, value, unit, quality: 'good' }));
 * volumeReadings([...pair(1, 83), ...pair(2, 84), ...pair(3, 86)])?.map(({ headC }) => headC) // => [83, 84, 86]
 * volumeReadings(pair(1, 83)) // => null
 */
export function volumeReadings(inputs: readonly RunInput[]): readonly VolumeReading[] | null {
  const found: VolumeReading[] = [];
  let volumeMl: number | null = null;
  for (const input of inputs) {
    if (input.kind !== 'reading') continue;
    if (input.timeS !== 0) return null;
    if (input.channel === 'receiver') volumeMl = input.unit === 'mL' ? input.value : null;
    if (input.channel !== 'head' || input.quality !== 'good' || volumeMl === null) continue;
    found.push({ volumeMl, headC: input.value });
    volumeMl = null;
  }
  return found.length < leastReadings ? null : found.toSorted((a, b) => a.volumeMl - b.volumeMl);
}

/**
 * Whether a run is a table by volume, whose readings have no times.
 *
 * @param inputs of the run
 *
 * Source: see `volumeReadings`.
 * @example
 * isVolumeTable([]) // => false
 */
export function isVolumeTable(inputs: readonly RunInput[]): boolean {
  return volumeReadings(inputs) !== null;
}
