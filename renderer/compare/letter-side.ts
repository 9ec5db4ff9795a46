import type { AlignedPoint } from './aligned-trace.ts';

/** Where a line's letter stands clear of the other lines: above its own, or below when another runs close above it. */
export function letterSide(
  [timeS, value]: AlignedPoint,
  others: readonly (readonly AlignedPoint[])[],
  roomAbove: number,
): 'above' | 'below' {
  if (value === null) return 'above';
  const isCrowded = others.some((points) => {
    const there = points.find(([otherS]) => otherS >= timeS)?.[1] ?? null;
    return there !== null && there > value && there < value + roomAbove;
  });
  return isCrowded ? 'below' : 'above';
}
