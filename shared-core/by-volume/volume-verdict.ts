import { meanStrength, type StrengthPoint } from '../distillate/index.ts';
import { limitTemperatureC } from '../equilibrium/index.ts';
import type { RunSettings } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { intervalWords, worded } from '../wording/index.ts';
import type { CourseByVolume, VolumePoint } from './volume-course.ts';

/** One part of the distillate, from volume to volume. */
export interface VolumeCut {
  readonly cut: 'first' | 'as-wanted' | 'weaker';
  readonly fromMl: number;
  readonly toMl: number;
  /** Mean strength of this part [% vol]. */
  readonly meanAbv: Estimate;
}

/** What a part of the distillate is called. */
export const volumeCutWords: Readonly<Record<VolumeCut['cut'], string>> = {
  first: worded('Low-boiling first fraction'),
  'as-wanted': worded('As strong as wanted'),
  weaker: worded('Weaker'),
};

export interface VolumeVerdict {
  readonly mainFraction: boolean;
  /** In a sentence with its numbers. */
  readonly because: string;
  readonly cuts: readonly VolumeCut[];
}

type Strong = VolumePoint & { readonly vapourAbv: Estimate };

/**
 * Whether and up to which volume the vapour was as strong as wanted, and the cut that follows. The cut lies where the strength falls
 * through the limit for the last time, found between two readings on a straight line. Where the first fraction was set in millilitres, it is
 * set apart before.
 *
 * @param course in rising order of volume, from `volumeCourse`
 * @param settings pressure [kPa], least strength wanted [% vol] and the convention of the first fraction
 *
 * Source: this project's rule; limit from `limitTemperatureC`.
 * @example
 * const at = (volumeMl, headC) => ({ volumeMl, headC });
 * const settings = { ...defaultRunSettings, leastStrengthAbv: 80 };
 * volumeVerdict(volumeCourse([at(1, 90), at(2, 91), at(3, 93)], settings), settings).mainFraction // => false
 */
export function volumeVerdict(
  { points, strengths, allMl }: CourseByVolume,
  settings: Pick<RunSettings, 'pressure' | 'leastStrengthAbv' | 'firstFraction'>,
): VolumeVerdict {
  const { leastStrengthAbv } = settings;
  const { pressureKPa } = settings.pressure;
  const limit = worded('{strength} % vol ({temperature} °C at {pressure} kPa)', {
    strength: leastStrengthAbv,
    temperature: limitTemperatureC({ leastStrengthAbv, pressureKPa }).toFixed(1),
    pressure: pressureKPa.toFixed(1),
  });
  const wet = points.filter((point): point is Strong => point.vapourAbv !== null);
  const [firstWet] = wet;
  if (firstWet === undefined) {
    const because = worded(
      'No reading is warm enough for vapour of ethanol and water, so nothing can be said of {limit}.',
      { limit },
    );
    return { mainFraction: false, because, cuts: [] };
  }
  const until = lastStrong(wet, leastStrengthAbv);
  if (until === null) {
    const best = wet.reduce((a, b) => (b.vapourAbv.value > a.vapourAbv.value ? b : a));
    const because = worded(
      'At no volume was the vapour as strong as {limit}: at its strongest it held {strength}, at {volumeMl} mL and {head} °C.',
      {
        limit,
        strength: rangeWords(best.vapourAbv),
        volumeMl: best.volumeMl,
        head: best.headC.toFixed(1),
      },
    );
    return { mainFraction: false, because, cuts: [part(strengths, 0, allMl, 'weaker')] };
  }
  const firstMl = Math.min(allMl, firstFractionMl(settings));
  const first = firstMl > 0 ? [part(strengths, 0, firstMl, 'first')] : [];
  if (until <= firstMl) {
    const because = worded(
      'The vapour was as strong as {limit} only up to {until} mL, within the {first} mL of the first fraction that were set: nothing was left for a main fraction.',
      { limit, until: until.toFixed(1), first: firstMl.toFixed(1) },
    );
    const rest = firstMl < allMl ? [part(strengths, firstMl, allMl, 'weaker')] : [];
    return { mainFraction: false, because, cuts: [...first, ...rest] };
  }
  const strong = part(strengths, firstMl, until, 'as-wanted');
  const isWeakLater = until < allMl;
  const isDoubtful = strong.meanAbv.low < leastStrengthAbv;
  const values = {
    limit,
    until: until.toFixed(1),
    strength: rangeWords(strong.meanAbv),
    doubt: isDoubtful
      ? worded(', so by the thermometer’s uncertainty it may have been weaker all along')
      : '',
    after: isWeakLater
      ? worded('what came later was weaker')
      : worded('the readings end before it grew weaker'),
  };
  const because =
    firstMl > 0
      ? worded(
          'After {first} mL of first fraction the vapour was as strong as {limit} up to {until} mL, {strength} on average{doubt}; {after}.',
          { ...values, first: firstMl.toFixed(1) },
        )
      : worded(
          'The vapour was as strong as {limit} up to {until} mL, {strength} on average{doubt}; {after}.',
          values,
        );
  return {
    mainFraction: true,
    because,
    cuts: [...first, strong, ...(isWeakLater ? [part(strengths, until, allMl, 'weaker')] : [])],
  };
}

/** What was set to be the first fraction, as far as it is a volume [mL]: drops and minutes have no place in a table of volumes. */
function firstFractionMl({ firstFraction }: Pick<RunSettings, 'firstFraction'>): number {
  return firstFraction.kind === 'volume' ? firstFraction.volumeMl : 0;
}

/** The volume at which the strength falls through the limit for the last time; null if it never reached it. */
function lastStrong(wet: readonly Strong[], leastAbv: number): number | null {
  const at = wet.findLastIndex(({ vapourAbv }) => vapourAbv.value >= leastAbv);
  const [strong, weak] = [wet[at], wet[at + 1]];
  if (strong === undefined) return null;
  if (weak === undefined) return strong.volumeMl;
  const fall = strong.vapourAbv.value - weak.vapourAbv.value;
  const share = fall <= 0 ? 0 : (strong.vapourAbv.value - leastAbv) / fall;
  return strong.volumeMl + share * (weak.volumeMl - strong.volumeMl);
}

function part(
  strengths: readonly StrengthPoint[],
  fromMl: number,
  toMl: number,
  cut: VolumeCut['cut'],
): VolumeCut {
  return { cut, fromMl, toMl, meanAbv: meanStrength(strengths, fromMl, toMl) };
}

const rangeWords = (strength: Estimate) => intervalWords(strength, '% vol');
