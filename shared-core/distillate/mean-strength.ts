import { coverageFactor95, type Estimate } from '../uncertainty/index.ts';
import { placeAmong, strengthBetween } from './place-among.ts';

/** How strong what came over was when so much had come. */
export interface StrengthPoint {
  readonly volumeMl: number;
  /** [% vol at 20 °C] */
  readonly abv: Estimate;
  /** Which of the stretches between two known volumes it lies in, where its own volume is reckoned; null where it was read. */
  readonly stretch: number | null;
}

/**
 * Between two volumes that were read the heat may have been turned down, so that more came early than late, or up: standard uncertainty of how much the flow at the end of such a
 * stretch differs from that at its middle, as a share. By simulation: 0.16 where the heat stays as it was set, 0.36 where a flame is held by hand.
 */
const leanShare = 0.3;

/**
 * Mean strength of what came over between two volumes, `q̄ = (1/V) ∫ q dV`, straight between the points of a course; before the first and after the
 * last it is taken for as strong as there. Every mean of a distillate is worked out here.
 *
 * The ends of the intervals are carried through together, since a thermometer that reads too high does so all along. Joined to them in squares is
 * what is not known of when it came between two volumes read: a flow that leans by a share s over the stretch moves the mean by
 * `s (1/V) ∫ (2τ − 1) q dV`, τ from 0 to 1 over the stretch.
 *
 * Limits: the mean of volume fractions neglects the contraction of the distillate with itself (OIML R 22: below 0.3 % vol between cuts of 60 and 90 % vol).
 *
 * @param course at least one point, in rising order of volume
 * @param fromMl, toMl volumes on the scale of the course [mL], fromMl ≤ toMl; where they are the same it is the strength there
 * @returns [% vol at 20 °C], 95 % interval
 *
 * Source: a balance of ethanol by volume at 20 °C; JCGM 100:2008, equation (10), for what is independent.
 * @example
 * const at = (volumeMl, value) => ({ volumeMl, abv: { value, low: value - 1, high: value + 1 }, stretch: null });
 * meanStrength([at(0, 90), at(10, 80), at(20, 60)], 0, 20) // => { "value": 77.5, "low": 76.5, "high": 78.5 }
 * meanStrength([at(0, 90), at(10, 80)], 5, 5).value // => 85
 */
export function meanStrength(
  course: readonly StrengthPoint[],
  fromMl: number,
  toMl: number,
): Estimate {
  const slices = slicesBetween(course, fromMl, toMl);
  const [first] = slices;
  if (first === undefined) return strengthAt(course, fromMl);
  const mean = (of: keyof Estimate) =>
    slices.reduce((sum, { widthMl, from, to }) => sum + (widthMl * (from[of] + to[of])) / 2, 0) /
    (toMl - fromMl);
  const value = mean('value');
  const reach = coverageFactor95 * leanDoubt(slices, toMl - fromMl);
  return {
    value,
    low: Math.max(0, value - Math.hypot(value - mean('low'), reach)),
    high: Math.min(100, value + Math.hypot(mean('high') - value, reach)),
  };
}

interface Slice {
  readonly widthMl: number;
  readonly from: Estimate;
  readonly to: Estimate;
  readonly stretch: number | null;
}

function slicesBetween(
  course: readonly StrengthPoint[],
  fromMl: number,
  toMl: number,
): readonly Slice[] {
  const inside = course.filter(({ volumeMl }) => volumeMl > fromMl && volumeMl < toMl);
  const end = { volumeMl: toMl, abv: strengthAt(course, toMl) };
  const after = course.find(({ volumeMl }) => volumeMl >= toMl) ?? course.at(-1);
  let left = { volumeMl: fromMl, abv: strengthAt(course, fromMl) };
  return [...inside, { ...end, stretch: after?.stretch ?? null }].flatMap((right) => {
    const widthMl = right.volumeMl - left.volumeMl;
    const slice = { widthMl, from: left.abv, to: right.abv, stretch: right.stretch };
    left = right;
    return widthMl > 0 ? [slice] : [];
  });
}

function strengthAt(course: readonly StrengthPoint[], volumeMl: number): Estimate {
  return strengthBetween(placeAmong(course, (point) => point.volumeMl, volumeMl));
}

/** Standard uncertainty from all stretches together, each by itself. */
function leanDoubt(slices: readonly Slice[], volumeMl: number): number {
  const stretches = new Map<number, Slice[]>();
  for (const slice of slices) {
    if (slice.stretch === null) continue;
    const parts = stretches.get(slice.stretch) ?? [];
    parts.push(slice);
    stretches.set(slice.stretch, parts);
  }
  const doubts = [...stretches.values()].map((parts) => (leanShare * leaningMl(parts)) / volumeMl);
  return Math.hypot(...doubts);
}

/** `∫ (2τ − 1) q dV` over one stretch [% vol · mL]. */
function leaningMl(parts: readonly Slice[]): number {
  const wholeMl = parts.reduce((sum, { widthMl }) => sum + widthMl, 0);
  let beforeMl = 0;
  let sum = 0;
  for (const { widthMl, from, to } of parts) {
    const middle = (2 * beforeMl + widthMl) / wholeMl - 1;
    const step = (2 * widthMl) / wholeMl;
    sum +=
      widthMl * ((middle * (from.value + to.value)) / 2 + (step * (to.value - from.value)) / 12);
    beforeMl += widthMl;
  }
  return sum;
}
