import type { FermentEntry, KeptFerment } from '../ferment-log/index.ts';
import type { FermentFacts, FermentReading } from './ferment-log.ts';
import { gravityAt20C } from './gravity-at-20.ts';

const hourMs = 3_600_000;

/** A kept entry that counts, with the hours since the ferment was begun. */
export interface StandingEntry {
  readonly timeH: number;
  readonly entry: FermentEntry;
}

/**
 * The entries that were not withdrawn, in the order of their moments: `t = (at − began)/3600 s`.
 *
 * @param kept a ferment with its entries in the order in which they were kept
 * @returns entries with their times [h], 0 or more within the clocks' doubt
 *
 * Source: this project's rule; no standard.
 * @example
 * standingEntries({ stated: { beganAtIso: '2026-05-01T08:00:00Z' }, entries: [] }).length // => 0
 */
export function standingEntries({
  stated,
  entries,
}: {
  readonly stated: Pick<KeptFerment['stated'], 'beganAtIso'>;
  readonly entries: readonly FermentEntry[];
}): readonly StandingEntry[] {
  const beganMs = Date.parse(stated.beganAtIso);
  return entries
    .filter(({ withdrawnAtIso }) => withdrawnAtIso === null)
    .map((entry) => ({ timeH: (Date.parse(entry.read.atIso) - beganMs) / hourMs, entry }))
    .sort((a, b) => a.timeH - b.timeH || a.entry.entryId - b.entry.entryId);
}

/**
 * What the judge is given of a ferment kept by hand: withdrawn entries left out, gravities brought to 20 °C by {@link gravityAt20C}.
 * The temperature in the hydrometer's jar is not taken for the ferment's. `t = (t_entry − t_began) / 3600 s`.
 *
 * @param kept a ferment with its entries
 * @returns readings in time order; times in hours since the beginning
 *
 * Source: see {@link gravityAt20C}.
 * @example
 * readingsOfFerment({ stated: { beganAtIso: '2026-05-01T08:00:00Z' }, entries: [] }) // => []
 */
export function readingsOfFerment(
  kept: Parameters<typeof standingEntries>[0],
): readonly FermentReading[] {
  return standingEntries(kept).map(({ timeH, entry: { read } }) => ({
    timeH: Math.max(0, timeH),
    gravity:
      read.gravity === null
        ? null
        : gravityAt20C(read.gravity.indicated, read.gravity.temperatureC),
    massG: read.massG,
    temperatureC: read.temperatureC,
    bubblesPerMin: read.bubblesPerMin,
    isDegassed: read.treatments.includes('degassed'),
  }));
}

/** Ends of a sugar farther apart than this tell the judge less than the gravity does. */
const widestRatio = 1.08;

/**
 * What the judge is told of a ferment beside its readings: the volume, and the sugar where both ends of it lie within 8 %. Sugar
 * that nobody weighed is a fruit's: the form asks for no other.
 *
 * @param stated volume [mL] > 0 and the two ends of the sugar [g], or null
 *
 * Source: this project's rule; the judge takes a stated sugar to be known within 4 %.
 * @example
 * factsOfFerment({ volumeMl: 1000, sugarG: { low: 178, high: 182 } }) // => { "volumeMl": 1000, "sugarG": 180, "isFromFruit": false }
 * factsOfFerment({ volumeMl: 1000, sugarG: { low: 100, high: 122 } }) // => { "volumeMl": 1000, "sugarG": null, "isFromFruit": true }
 */
export function factsOfFerment({
  volumeMl,
  sugarG,
}: Pick<KeptFerment['stated'], 'volumeMl' | 'sugarG'>): FermentFacts {
  const isNarrow = sugarG !== null && sugarG.high <= widestRatio * sugarG.low;
  return {
    volumeMl,
    sugarG: isNarrow ? (sugarG.low + sugarG.high) / 2 : null,
    isFromFruit: !isNarrow,
  };
}
