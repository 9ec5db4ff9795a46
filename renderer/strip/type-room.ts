import type { Box } from './clear-place.ts';

/** How far the pale rim around a name reaches [of the type's height]: half of its stroke in strip.css. */
const rimShare = 0.33 / 2;
/** From its baseline a name reaches so far up and down, without its rim [of the type's height]. */
const aboveShare = 0.85;
const belowShare = 0.25;

/** All that a name covers, its rim with it: a line that runs through here would be broken by it. */
export function roomOfName(
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
  textPx: number,
): Box {
  const rim = rimShare * textPx;
  return {
    left: x - rim,
    top: y - aboveShare * textPx - rim,
    width: width + 2 * rim,
    height: (aboveShare + belowShare) * textPx + 2 * rim,
  };
}

/** How far above a line a name’s baseline stands, so that its rim leaves the whole of the line, thick as it may be [px]. */
export function aboveLinePx(textPx: number): number {
  const halfOfLinePx = 2.5;
  return (belowShare + rimShare) * textPx + halfOfLinePx;
}
