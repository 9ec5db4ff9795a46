import type { KeptFerment } from '../ferment-log/index.ts';
import type { FermentOrigin } from '../run/index.ts';
import { standardFromNinety } from '../uncertainty/index.ts';
import type { FermentVerdict } from './ferment-log.ts';
import { extractGPerL } from './gravity-and-extract.ts';
import { standingEntries } from './readings-of-ferment.ts';

/** Of volumes from a jug's or a bucket's scale; common practice, no source. */
const volumeShare = 0.02;
/** Extract of a juice that is no sugar [g/L], taken as even between the ends; common practice, no source. */
const otherExtractGPerL = { low: 8, high: 30 } as const;
/** Extract for each unit of gravity [g/L]. Source: slope of `extractGPerL`. */
const extractPerGravity = 2590;

/**
 * Where a charge came from, for the run's settings: the ferment as judged, and the sugar that a litre of it began with. That is what
 * was stated, or else the extract of the original gravity less what of it is no sugar: `s = E − 19 g/L`.
 *
 * @param kept a ferment with its entries, `unreadableLines` [1] aside
 * @param verdict what it was judged to be; its strength known, 0 to 25 % vol
 * @param chargedAtIso when the still was charged with it
 * @returns the origin; null where no strength is known yet
 *
 * Source: see `extractGPerL`; rectangular distributions by JCGM 100, 4.3.7.
 * @example
 * const stated = { name: 'Pears', beganAtIso: '2026-05-01T08:00:00Z', volumeMl: 1000, sugarG: { low: 180, high: 180 }, wentIn: '' };
 * const verdict = { state: 'finished', strengthAbv: { low: 9.6, value: 10, high: 10.4 }, originalGravity: null };
 * originOfFerment({ fermentId: 'a', stated, corrections: [], entries: [], unreadableLines: 0 }, verdict, '2026-05-09T08:00:00Z').sugarGPerL // => { "value": 180, "standardUncertainty": 3.6 }
 */
export function originOfFerment(
  kept: KeptFerment,
  {
    state,
    strengthAbv,
    originalGravity,
  }: Pick<FermentVerdict, 'state' | 'strengthAbv' | 'originalGravity'>,
  chargedAtIso: string,
): FermentOrigin | null {
  if (strengthAbv === null) return null;
  const { fermentId, stated } = kept;
  return {
    fermentId,
    name: stated.name,
    wentIn: stated.wentIn,
    beganAtIso: stated.beganAtIso,
    chargedAtIso,
    entries: standingEntries(kept).length,
    state,
    strengthAbv,
    sugarGPerL: sugarStated(stated) ?? sugarByGravity(originalGravity),
  };
}

function sugarStated({ sugarG, volumeMl }: KeptFerment['stated']): FermentOrigin['sugarGPerL'] {
  if (sugarG === null) return null;
  const value = (sugarG.low + sugarG.high) / 2 / (volumeMl / 1000);
  const share = (sugarG.high - sugarG.low) / (sugarG.low + sugarG.high) / Math.sqrt(3);
  return quantity(value, value * Math.hypot(share, volumeShare));
}

function sugarByGravity(
  originalGravity: FermentVerdict['originalGravity'],
): FermentOrigin['sugarGPerL'] {
  if (originalGravity === null) return null;
  const other = (otherExtractGPerL.low + otherExtractGPerL.high) / 2;
  const otherDoubt = (otherExtractGPerL.high - otherExtractGPerL.low) / Math.sqrt(12);
  const gravityDoubt = extractPerGravity * standardFromNinety(originalGravity);
  return quantity(
    extractGPerL(originalGravity.value) - other,
    Math.hypot(otherDoubt, gravityDoubt),
  );
}

function quantity(value: number, standardUncertainty: number): FermentOrigin['sugarGPerL'] {
  if (value <= 0) return null;
  return {
    value: Number(value.toFixed(1)),
    standardUncertainty: Number(standardUncertainty.toFixed(2)),
  };
}
