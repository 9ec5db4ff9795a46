import {
  atStandardPressureC,
  type HeadPoint,
  longestPlateau,
  type PlateauStatistics,
  plateauStatistics,
  type Quantity,
  type TimeSpan,
} from '../bookkeeping/index.ts';
import { azeotrope, azeotropeSlopeKPerKPa, limitTemperatureC } from '../equilibrium/index.ts';
import { scaleDoubts } from '../probe/index.ts';
import type { RunInput, RunSettings } from '../run/index.ts';
import { unbrokenStretches } from '../series/index.ts';
import { type Estimate, median } from '../uncertainty/index.ts';
import { type HeadRow, type HeadToFollow, headCourse } from './head-course.ts';
import { marksAmong } from './marks-among.ts';
import { pressureCourse } from './pressure-course.ts';

/** The plateau of a run: what was read, and what it means at the local pressure. */
export interface RunPlateau {
  readonly statistics: PlateauStatistics;
  /** How long it lasted by the rule below [s], 95 %: with noise against the ruler, the limit's own doubt, and the time that is seen through. */
  readonly lastedS: Estimate;
  /** Mean with everything in it: scatter and the probe [°C], k = 1. */
  readonly mean: Quantity;
  readonly pressureKPa: number;
  readonly azeotropeC: number;
  readonly aboveAzeotropeK: Quantity;
  /** As it would read at 101.325 kPa [°C], k = 1. */
  readonly standard: Quantity;
}

/** Height of the band that counts as a plateau [K]: about 10 % vol of vapour strength near the azeotrope. */
export const plateauBandK = 1;
/** A shorter stretch than this is no plateau [s]; common practice, no source. */
export const leastPlateauS = 120;
/** A head so far below the azeotrope is no vapour's, whatever probe and barometer are off by [K]; chosen here. */
const mostBelowAzeotropeK = 5;
/** A ruler on the plot sees through a probe's noise: the head is judged by means over this time [s]. */
const seenThroughS = 20;

/**
 * The plateau of a run, the same for report, key, library and comparison: the longest stretch, of at least 2 min, in which
 * the head stays within 1 K while it is no hotter than vapour of the least strength wanted and heat is on. The rule is of
 * the curve alone, so it does not change with the monitor's stages.
 *
 * @param run settings (probe, pressure [kPa], least strength [% vol]), inputs in order of time, endS [s] ≥ 0
 * @param rows the run's head, where the caller already has it
 * @returns temperatures [°C], k = 1; null when the head never held there
 *
 * Source: this project's definition; the method of a ruler laid along the plot is common practice, no source.
 * @example
 * const inputs = Array.from({ length: 30 }, (_, index) => ({ kind: 'reading', timeS: 20 * index, channel: 'head', value: index < 10 ? 20 + 5.8 * index : 78.5, unit: '°C', quality: 'good' }));
 * plateauOfRun({ settings: defaultRunSettings, inputs, endS: 600 }).mean.value // ≈ 78.5 ± 1e-9
 * plateauOfRun({ settings: { ...defaultRunSettings, leastStrengthAbv: 96 }, inputs, endS: 600 }) // => null
 */
export function plateauOfRun(
  run: HeadToFollow & {
    readonly settings: Pick<RunSettings, 'probe' | 'pressure' | 'leastStrengthAbv'>;
  },
  rows: readonly HeadRow[] = headCourse(run),
): RunPlateau | null {
  const stretches = unbrokenStretches(rows).map(seenThrough);
  const rule = ruleOf(run);
  const span = longestHeld(stretches, rule);
  if (span === null || lengthS(span) < leastPlateauS) return null;
  const held = rows.filter(({ timeS }) => isWithin(timeS, span));
  if (held.length < 3) return null;
  const { probe, pressure } = run.settings;
  const middleS = (span.fromS + span.toS) / 2;
  const then = { probe, pressure: pressureCourse(pressure, run.inputs)(middleS) };
  const found = plateauBetween(held, then);
  const between = lastedBetweenS(stretches, rule, span, scaleDoubtK(then));
  return { ...found, lastedS: { value: lengthS(found.statistics.span), ...between } };
}

/** When heat was off, and between which temperatures the head may be that of vapour as strong as wanted. */
interface Rule {
  readonly heatOff: readonly TimeSpan[];
  readonly range: ReturnType<typeof rangeAtPressure>;
}

const ruleOf = ({ settings, inputs }: Parameters<typeof plateauOfRun>[0]): Rule => ({
  heatOff: heatOffSpans(inputs),
  range: rangeAtPressure(settings.leastStrengthAbv),
});

/** What else the ruler and the limit may be [K]. */
interface Otherwise {
  readonly bandK: number;
  readonly limitK: number;
}
const asStated: Otherwise = { bandK: 0, limitK: 0 };

function longestHeld(
  stretches: readonly (readonly SeenPoint[])[],
  rule: Rule,
  { bandK, limitK }: Otherwise = asStated,
): TimeSpan | null {
  const inRange = stretches.flatMap((stretch) => stretchesInRange(stretch, rule, limitK));
  return longest(inRange.map((stretch) => longestPlateau(stretch, plateauBandK + bandK)));
}

/**
 * The same rule with the ruler and the limit as small and as large as noise and doubt leave them (k = 2): a larger one never makes a
 * plateau shorter. Where it begins and ends is known no better than the means are apart.
 */
function lastedBetweenS(
  stretches: readonly (readonly SeenPoint[])[],
  rule: Rule,
  span: TimeSpan,
  doubtOfLimitK: number,
): Omit<Estimate, 'value'> {
  const held = stretches.flat().filter(({ timeS }) => isWithin(timeS, span));
  const apartS =
    median(held.slice(1).map(({ timeS }, index) => timeS - (held[index]?.timeS ?? 0))) ?? 0;
  // Of the difference between two means, and never so much that no ruler is left.
  const bandK = Math.min(2 * Math.SQRT2 * noiseOfMeansK(held), plateauBandK / 2);
  const limitK = 2 * doubtOfLimitK;
  const otherwiseS = (sign: 1 | -1) => {
    const found = longestHeld(stretches, rule, { bandK: sign * bandK, limitK: sign * limitK });
    return Math.max(0, (found === null ? 0 : lengthS(found)) + sign * apartS);
  };
  return { low: otherwiseS(-1), high: otherwiseS(1) };
}

/** Noise of one mean [K], by how far each lies from the middle of its neighbours: a drift makes nothing of that, a single jump little. */
function noiseOfMeansK(means: readonly HeadPoint[]): number {
  const off = means.slice(1, -1).map(({ temperatureC }, index) => {
    const [before, after] = [means[index], means[index + 2]];
    return Math.abs(temperatureC - ((before?.temperatureC ?? 0) + (after?.temperatureC ?? 0)) / 2);
  });
  // Of a normal quantity the median of its size is 0.674 of its standard deviation, here √1.5 that of one mean.
  return (median(off) ?? 0) / 0.674 / Math.sqrt(1.5);
}

/** How far a head and the temperature it is held against may be apart by probe and air pressure together [K], k = 1. */
function scaleDoubtK(
  settings: Pick<RunSettings, 'probe' | 'pressure'>,
  pressureKPa: number = settings.pressure.pressureKPa,
): number {
  const { temperatureUncertaintyK, pressureUncertaintyKPa } = scaleDoubts(settings);
  return Math.hypot(
    temperatureUncertaintyK,
    azeotropeSlopeKPerKPa(pressureKPa) * pressureUncertaintyKPa,
  );
}

/** Stretches in which the head may be that of vapour as strong as wanted, heat on. */
function stretchesInRange(
  points: readonly SeenPoint[],
  { heatOff, range }: Rule,
  limitK: number,
): readonly (readonly SeenPoint[])[] {
  const stretches: SeenPoint[][] = [[]];
  for (const point of points) {
    const { timeS, temperatureC, pressureKPa } = point;
    const { lowC, highC } = range(pressureKPa);
    const isHeated = !heatOff.some(({ fromS, toS }) => timeS > fromS && timeS < toS);
    if (isHeated && temperatureC >= lowC && temperatureC <= highC + limitK)
      stretches.at(-1)?.push(point);
    else if (stretches.at(-1)?.length !== 0) stretches.push([]);
  }
  return stretches;
}

/** Both ends are costly to find and hardly move, so they are found once for each hundredth of a kilopascal. */
function rangeAtPressure(leastStrengthAbv: number) {
  const known = new Map<number, { readonly lowC: number; readonly highC: number }>();
  return (pressureKPa: number) => {
    const key = Math.round(100 * pressureKPa);
    const found = known.get(key) ?? {
      lowC: azeotrope(pressureKPa).temperatureC - mostBelowAzeotropeK,
      highC: limitTemperatureC({ leastStrengthAbv, pressureKPa }),
    };
    known.set(key, found);
    return found;
  };
}

/** When the heat was off, by the marks: what holds then is no vapour. */
function heatOffSpans(inputs: Iterable<RunInput>): readonly TimeSpan[] {
  const spans: { fromS: number; toS: number }[] = [];
  for (const { timeS, mark } of marksAmong(inputs)) {
    const last = spans.at(-1);
    if (mark.type === 'heat-off') spans.push({ fromS: timeS, toS: Number.POSITIVE_INFINITY });
    if (mark.type === 'heat-on' && last !== undefined) last.toS = Math.min(last.toS, timeS);
  }
  return spans;
}

interface SeenPoint extends HeadPoint {
  readonly pressureKPa: number;
}

function seenThrough(stretch: readonly HeadRow[]): readonly SeenPoint[] {
  const slices: HeadRow[][] = [];
  for (const row of stretch) {
    const open = slices.at(-1);
    if (open?.[0] !== undefined && row.timeS - open[0].timeS < seenThroughS) open.push(row);
    else slices.push([row]);
  }
  const mean = (slice: readonly HeadRow[], of: (row: HeadRow) => number) =>
    slice.reduce((sum, row) => sum + of(row), 0) / slice.length;
  return slices.map((slice) => ({
    timeS: mean(slice, ({ timeS }) => timeS),
    temperatureC: mean(slice, ({ headC }) => headC),
    pressureKPa: mean(slice, ({ pressureKPa }) => pressureKPa),
  }));
}

function longest(spans: readonly (TimeSpan | null)[]): TimeSpan | null {
  return spans.reduce(
    (best, span) =>
      span !== null && (best === null || lengthS(span) > lengthS(best)) ? span : best,
    null,
  );
}

const lengthS = ({ fromS, toS }: TimeSpan) => toS - fromS;
const isWithin = (timeS: number, { fromS, toS }: TimeSpan) => timeS >= fromS && timeS <= toS;

function plateauBetween(
  held: readonly HeadRow[],
  settings: Pick<RunSettings, 'probe' | 'pressure'>,
): Omit<RunPlateau, 'lastedS'> {
  const statistics = plateauStatistics(
    held.map(({ timeS, headC }) => ({ timeS, temperatureC: headC })),
  );
  const pressureKPa = held.reduce((sum, row) => sum + row.pressureKPa, 0) / held.length;
  const azeotropeC = azeotrope(pressureKPa).temperatureC;
  const standardUncertainty = Math.hypot(
    settings.probe.standardUncertaintyK,
    statistics.standardUncertaintyOfMeanK,
  );
  const withPressure = Math.hypot(
    scaleDoubtK(settings, pressureKPa),
    statistics.standardUncertaintyOfMeanK,
  );
  return {
    statistics,
    mean: { value: statistics.meanC, standardUncertainty },
    pressureKPa,
    azeotropeC,
    aboveAzeotropeK: {
      value: statistics.meanC - azeotropeC,
      standardUncertainty: withPressure,
    },
    standard: {
      value: atStandardPressureC({ temperatureC: statistics.meanC, pressureKPa }),
      standardUncertainty: withPressure,
    },
  };
}
