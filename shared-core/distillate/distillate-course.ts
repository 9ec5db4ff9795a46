import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import type { RunInput } from '../run/index.ts';
import { molarVolumeMlPerMol } from '../thermo/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { gainsByMarks, type MeasuredReceiver } from './gains-by-marks.ts';
import { gainsByReceiver } from './gains-by-receiver.ts';
import { meanStrength, type StrengthPoint } from './mean-strength.ts';
import { placeAmong, straight, strengthBetween } from './place-among.ts';
import type { VolumeGain, WhileItCame } from './volume-gain.ts';

/** What the volumes of a distillate were known from. */
export type DistillateBasis = 'receiver-volume' | 'receiver-mass' | 'booked' | 'drip-rate';

/** What came over through a run, by the best that there is. */
export interface DistillateCourse {
  /** Null where nobody measured anything: volumes are then to one another as an even heat would give them, and no millilitres. */
  readonly basis: DistillateBasis | null;
  /** Neither time nor volume ever falls; the first is 0 mL when vapour arrived. */
  readonly points: readonly DistillatePoint[];
  /** Until when the sum of all that came over is known [s]: up to the first receiver that nobody measured, or the last reading. */
  readonly knownUntilS: number;
  /** When the head first and last told how strong it was [s]: before and after it is taken for as strong as then. */
  readonly strengths: { readonly knownFromS: number; readonly knownToS: number };
}

export interface DistillatePoint extends StrengthPoint {
  readonly timeS: number;
}

/** What the course of a distillate is made from. */
export interface RunToFollow {
  readonly inputs: readonly RunInput[];
  /** When vapour reached the head [s]: before it nothing came over. */
  readonly arrivedS: number;
  /** When the heat went off or the run ended [s]. */
  readonly untilS: number;
  /** In order of time. */
  readonly receivers: readonly MeasuredReceiver[];
  /** On average while distillate came, as somebody measured it [mL/min]; null where nobody did. */
  readonly dripRateMlPerMin: number | null;
  /** Strength of the vapour at the head where it is known [% vol at 20 °C], in order of time. */
  readonly strengths: readonly { readonly timeS: number; readonly abv: Estimate }[];
  /** When no vapour reached the head, in order of time. */
  readonly gone: readonly { readonly fromS: number; readonly toS: number }[];
}

/** While no vapour reaches the head next to nothing comes over, yet what is read meanwhile must have come some time. */
const trickle = 1e-6;

/**
 * How much distillate had come over by when and how strong it was, from the best that there is: a receiver that is measured all along, volumes and
 * masses written down, or a stated drip rate.
 *
 * Between one known volume and the next an even heat is taken for granted. It boils up equal moles, whatever they are, so that the flow in mL goes with the molar
 * volume of what comes: `dV/dt ∝ V_m(q)`, half as much in a weak tail as in a strong main fraction at the same heat. What nobody measured is reckoned by the heat of what was.
 *
 * @param run inputs in order of time, arrivedS < untilS [s], receivers, drip rate [mL/min], strengths [% vol] of which there is at least one
 * @returns null where no time passed or no strength is known
 *
 * Source: equal molar heats of vaporisation as in W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605; molar volume from OIML R 22 (1975); the rest is
 * this project's rule.
 * @example
 * const read = (timeS, markId, volumeMl) => ({ kind: 'mark', timeS, markId, mark: { type: 'volume-read', volumeMl } });
 * const strengths = [{ timeS: 300, abv: { value: 80, low: 78, high: 82 } }];
 * const run = { inputs: [read(600, 1, 4), read(900, 2, 7)], receivers: [{ toS: 1000, amount: null }], arrivedS: 300, untilS: 1000, dripRateMlPerMin: null, strengths, gone: [] };
 * distillateCourse(run).points.map(({ timeS }) => timeS) // => [300, 600, 900, 1000]
 * distillateCourse(run).knownUntilS // => 900
 * distillateCourse({ ...run, inputs: [], dripRateMlPerMin: 1.2 }).points.at(-1).volumeMl // ≈ 14 ± 1e-9
 */
export function distillateCourse(run: RunToFollow): DistillateCourse | null {
  const { arrivedS, untilS, strengths } = run;
  const [firstKnown, lastKnown] = [strengths[0], strengths.at(-1)];
  if (firstKnown === undefined || lastKnown === undefined || untilS <= arrivedS) return null;
  const { basis, gains } = volumesOf(run);
  const unknown = filledUp(gains, arrivedS, untilS).find(({ gainedMl }) => gainedMl === null);
  return {
    basis,
    points: pointsOfGains(gains, run),
    knownUntilS: unknown?.fromS ?? untilS,
    strengths: { knownFromS: firstKnown.timeS, knownToS: lastKnown.timeS },
  };
}

/** What of a run its points are made from, once it is known what came over between which moments. */
type RunWithGains = Pick<RunToFollow, 'arrivedS' | 'untilS' | 'strengths' | 'gone'>;

/**
 * The points of a course whose volumes are known from one moment to another, as at an even heat between them: see {@link distillateCourse}.
 *
 * @param gains in order of time [mL]
 * @param run arrivedS < untilS [s], strengths [% vol] of which there is at least one
 *
 * Source: see {@link distillateCourse}.
 * @example
 * const strengths = [{ timeS: 300, abv: { value: 80, low: 78, high: 82 } }];
 * const gains = [{ fromS: 300, toS: 900, gainedMl: 12 }];
 * pointsOfGains(gains, { arrivedS: 300, untilS: 900, strengths, gone: [] }).map(({ volumeMl }) => volumeMl) // => [0, 12]
 */
export function pointsOfGains(
  gains: readonly VolumeGain[],
  { arrivedS, untilS, strengths, gone }: RunWithGains,
): readonly DistillatePoint[] {
  const abvAt = (timeS: number) => strengthAmong(strengths, timeS);
  const known = filledUp(gains, arrivedS, untilS);
  const times = [
    ...known.map(({ toS }) => toS),
    ...[...strengths.map(({ timeS }) => timeS), ...gone.flatMap((gap) => [gap.fromS, gap.toS])],
  ].filter((timeS) => timeS > arrivedS);
  const heat = heatCourse(
    [arrivedS, ...new Set(times)].toSorted((a, b) => a - b),
    abvAt,
    gone,
  );
  const heatAt = new Map(heat.map(({ timeS, heat: sum }) => [timeS, sum]));
  const heatOf = ({ fromS, toS }: VolumeGain) => (heatAt.get(toS) ?? 0) - (heatAt.get(fromS) ?? 0);
  const mlPerHeat = averageFlow(known, heatOf);
  const points: DistillatePoint[] = [
    { timeS: arrivedS, volumeMl: 0, abv: abvAt(arrivedS), stretch: 0 },
  ];
  let next = 1;
  let beforeMl = 0;
  for (const [stretch, gain] of known.entries()) {
    const whole = heatOf(gain);
    const gainedMl = gain.gainedMl ?? mlPerHeat * whole;
    for (let at = heat[next]; at !== undefined && at.timeS <= gain.toS; at = heat[next]) {
      const share = (at.heat - (heatAt.get(gain.fromS) ?? 0)) / whole;
      const volumeMl = beforeMl + share * gainedMl;
      points.push({ timeS: at.timeS, volumeMl, abv: abvAt(at.timeS), stretch });
      next += 1;
    }
    beforeMl += gainedMl;
  }
  return points;
}

/**
 * How much had come over by a time [mL], straight between the points of a course; 0 before it and all of it after.
 *
 * @param course from {@link distillateCourse}
 * @param timeS any time [s]
 *
 * Source: linear interpolation.
 * @example
 * const point = (timeS, volumeMl) => ({ timeS, volumeMl, abv: { value: 80, low: 78, high: 82 }, stretch: 0 });
 * const course = { points: [point(300, 0), point(900, 12)] };
 * [0, 450, 1000].map((timeS) => distillateAt(course, timeS)) // => [0, 3, 12]
 */
export function distillateAt({ points }: Pick<DistillateCourse, 'points'>, timeS: number): number {
  const { from, to, share } = placeAmong(points, timeOf, timeS);
  return straight(from.volumeMl, to.volumeMl, share);
}

function strengthAmong(strengths: RunToFollow['strengths'], timeS: number): Estimate {
  return strengthBetween(placeAmong(strengths, timeOf, timeS));
}

const timeOf = ({ timeS }: { readonly timeS: number }) => timeS;

function volumesOf(run: RunToFollow): {
  readonly basis: DistillateBasis | null;
  readonly gains: readonly VolumeGain[];
} {
  const { inputs, receivers, arrivedS, untilS, dripRateMlPerMin, strengths, gone } = run;
  const strengthAt = (timeS: number) => strengthAmong(strengths, timeS).value;
  const came: WhileItCame = {
    arrivedS,
    untilS,
    strengthAt,
    meanStrengthAbv(fromS, toS) {
      if (toS <= fromS) return strengthAt(toS);
      const between = { arrivedS: fromS, untilS: toS, strengths, gone };
      return meanStrength(pointsOfGains([{ fromS, toS, gainedMl: 1 }], between), 0, 1).value;
    },
  };
  const measured = gainsByReceiver(inputs, came);
  if (measured !== null) return measured;
  const gains = gainsByMarks(inputs, receivers, came);
  if (gains.some(({ gainedMl }) => gainedMl !== null)) return { basis: 'booked', gains };
  if (dripRateMlPerMin === null) return { basis: null, gains: [] };
  const gainedMl = (dripRateMlPerMin * (untilS - arrivedS)) / 60;
  return { basis: 'drip-rate', gains: [{ fromS: arrivedS, toS: untilS, gainedMl }] };
}

/** From the arrival to the end without a gap. */
function filledUp(
  gains: readonly VolumeGain[],
  arrivedS: number,
  untilS: number,
): readonly VolumeGain[] {
  let at = arrivedS;
  const filled = gains.flatMap((gain) => {
    const gap = gain.fromS > at ? [{ fromS: at, toS: gain.fromS, gainedMl: null }] : [];
    at = gain.toS;
    return [...gap, gain];
  });
  return at < untilS ? [...filled, { fromS: at, toS: untilS, gainedMl: null }] : filled;
}

/** What an even heat would have brought over by each time, in a unit of its own. */
function heatCourse(
  times: readonly number[],
  abvAt: (timeS: number) => Estimate,
  gone: RunToFollow['gone'],
): readonly { readonly timeS: number; readonly heat: number }[] {
  let heat = 0;
  let before: { readonly timeS: number; readonly flow: number } | null = null;
  return times.map((timeS) => {
    const flow = flowOf(abvAt(timeS).value);
    if (before !== null) {
      const { timeS: fromS } = before;
      const isGone = gone.some((gap) => fromS >= gap.fromS && timeS <= gap.toS);
      heat += ((isGone ? trickle : 1) * (timeS - fromS) * (before.flow + flow)) / 2;
    }
    before = { timeS, flow };
    return { timeS, heat };
  });
}

/** Beyond pure water or ethanol the flow is taken for that of the one or the other. */
function flowOf(strengthAbv: number): number {
  const within = Math.min(100, Math.max(0, strengthAbv));
  return molarVolumeMlPerMol(moleFractionFromStrength(within));
}

function averageFlow(gains: readonly VolumeGain[], heatOf: (gain: VolumeGain) => number): number {
  let volumeMl = 0;
  let heat = 0;
  for (const gain of gains) {
    if (gain.gainedMl === null) continue;
    volumeMl += gain.gainedMl;
    heat += heatOf(gain);
  }
  return volumeMl > 0 ? volumeMl / heat : 1;
}
