/** Anything that came at a time. */
interface Timed {
  readonly timeS: number;
}

/** A silence shorter than this never breaks a line [s]: a probe may skip some readings. */
const leastGapS = 30;
/** Intervals missed in a row that make a silence. */
const intervalsMissed = 3;
/** Intervals on either side that say how often readings came there. */
const neighbours = 5;

/**
 * The points between silences. A silence is longer than 30 s and than three of the intervals around it (the larger median of
 * five on either side): a logger that writes once a minute, or one that changes its pace, is not silent.
 *
 * @param points in order of timeS [s], as they came: after averaging they no longer tell
 * @returns stretches in order, none empty
 *
 * Source: this project's rule; no standard.
 * @example
 * const at = (...times) => times.map((timeS) => ({ timeS }));
 * unbrokenStretches(at(0, 60, 120, 180, 900, 960)).length // => 2
 * unbrokenStretches(at(0, 1, 2, 60, 120, 180)).length // => 1
 */
export function unbrokenStretches<P extends Timed>(
  points: readonly P[],
): readonly (readonly P[])[] {
  const stretches: P[][] = [];
  points.forEach((point, index) => {
    const open = stretches.at(-1);
    if (open === undefined || isSilence(points, index)) stretches.push([point]);
    else open.push(point);
  });
  return stretches;
}

/** Whether nothing came for long before the point at `index`. */
function isSilence(points: readonly Timed[], index: number): boolean {
  const intervalS = intervalBefore(points, index) ?? 0;
  if (intervalS <= leastGapS) return false;
  const before = medianInterval(points, index - neighbours, index - 1);
  const after = medianInterval(points, index + 1, index + neighbours);
  // Where the pace changes, the slower side counts; alone, two points say nothing of a pace.
  const usualS = Math.max(before ?? 0, after ?? 0) || intervalS;
  return intervalS > intervalsMissed * usualS;
}

function medianInterval(points: readonly Timed[], from: number, to: number): number | null {
  const found: number[] = [];
  for (let index = from; index <= to; index++) {
    const intervalS = intervalBefore(points, index);
    if (intervalS !== null) found.push(intervalS);
  }
  return found.sort((a, b) => a - b)[found.length >> 1] ?? null;
}

function intervalBefore(points: readonly Timed[], index: number): number | null {
  const [before, point] = [points[index - 1], points[index]];
  return before === undefined || point === undefined ? null : point.timeS - before.timeS;
}
