import type { PlacedTrace } from './place-trace.ts';

/** What a trace did, read with all of it at hand. */
export interface TraceTruth {
  /** From here the head rises for good; null where it never leaves the plateau. */
  readonly bendS: number | null;
  /** From here the head stays above the limit; null where it never does. */
  readonly limitS: number | null;
}

type Point = PlacedTrace['measured'][number];

/** Means over so long are looked at: noise is gone and a bend is not yet smeared [s]. */
const meanForS = 10;
const aboveForS = 60;
/** A head has left its plateau for good once it ends so far above it [K]; the bend is sought up to there. */
const leftK = 1;
/** The bend lies within so long before [s]. */
const bendWithinS = 2400;
const leastPoints = 6;

/** The bend by the least squares of two straight lines that meet, and the limit by where the head passes it for good. */
export function traceTruth(
  { measured }: PlacedTrace,
  plateauC: number,
  limitC: number,
): TraceTruth {
  const means = tenSecondMeans(measured);
  const leftS = passesForGood(means, plateauC + leftK);
  return {
    bendS:
      leftS === null
        ? null
        : bendOf(means.filter(({ timeS }) => timeS <= leftS && timeS > leftS - bendWithinS)),
    limitS: passesForGood(means, limitC),
  };
}

function tenSecondMeans(points: readonly Point[]): Point[] {
  const groups = new Map<number, Point[]>();
  for (const point of points) {
    const key = Math.floor(point.timeS / meanForS);
    groups.set(key, [...(groups.get(key) ?? []), point]);
  }
  return [...groups].map(([key, group]) => ({
    timeS: key * meanForS + meanForS / 2,
    headC: group.reduce((sum, { headC }) => sum + headC, 0) / group.length,
  }));
}

function passesForGood(means: readonly Point[], levelC: number): number | null {
  const lastBelow = means.findLastIndex(({ headC }) => headC <= levelC);
  const first = means[lastBelow + 1];
  const last = means.at(-1);
  if (first === undefined || last === undefined || lastBelow < 0) return null;
  return last.timeS - first.timeS >= aboveForS ? first.timeS : null;
}

function bendOf(means: readonly Point[]): number | null {
  let best: { readonly timeS: number; readonly misfit: number } | null = null;
  for (const { timeS } of means.slice(leastPoints, -leastPoints)) {
    const misfit = misfitOfBend(means, timeS);
    if (best === null || misfit < best.misfit) best = { timeS, misfit };
  }
  return best?.timeS ?? null;
}

/** Sum of squares about `a + b t + c max(0, t − bend)`: what is left of the head once line and hinge are taken out. */
function misfitOfBend(means: readonly Point[], bendS: number): number {
  const one = means.map(() => 1);
  const line = without(
    means.map(({ timeS }) => timeS - bendS),
    [one],
  );
  const hinge = without(
    means.map(({ timeS }) => Math.max(0, timeS - bendS)),
    [one, line],
  );
  const left = without(
    means.map(({ headC }) => headC),
    [one, line, hinge],
  );
  return dot(left, left);
}

/** What of a column is at right angles to others that are so to each other (Gram–Schmidt). */
function without(
  column: readonly number[],
  others: readonly (readonly number[])[],
): readonly number[] {
  return others.reduce<readonly number[]>((left, other) => {
    const share = dot(left, other) / Math.max(Number.MIN_VALUE, dot(other, other));
    return left.map((value, index) => value - share * (other[index] as number));
  }, column);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, index) => sum + value * (b[index] as number), 0);
}
