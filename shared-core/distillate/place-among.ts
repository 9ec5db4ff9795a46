import type { Estimate } from '../uncertainty/index.ts';

/** Where something lies between two points: a share from 0 to 1 of the way from one to the other. */
interface PlaceBetween<Point> {
  readonly from: Point;
  readonly to: Point;
  readonly share: number;
}

/** Between which two points of a rising course something lies; before the first and after the last at that one. */
export function placeAmong<Point>(
  points: readonly Point[],
  along: (point: Point) => number,
  at: number,
): PlaceBetween<Point> {
  let [low, high] = [0, points.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (along(points[middle] as Point) >= at) high = middle;
    else low = middle + 1;
  }
  const isBeyond = low === points.length;
  const [after, before] = [points[low] ?? points.at(-1), isBeyond ? undefined : points[low - 1]];
  if (after === undefined) throw new RangeError('a course without a point has no place in it');
  if (before === undefined) return { from: after, to: after, share: 0 };
  return {
    from: before,
    to: after,
    share: (at - along(before)) / (along(after) - along(before)),
  };
}

/** On a straight line from number to number. */
export function straight(from: number, to: number, share: number): number {
  return from + share * (to - from);
}

/** The same with both ends of the interval. */
export function strengthBetween({
  from,
  to,
  share,
}: PlaceBetween<{ readonly abv: Estimate }>): Estimate {
  const of = (end: keyof Estimate) => straight(from.abv[end], to.abv[end], share);
  return { value: of('value'), low: of('low'), high: of('high') };
}
