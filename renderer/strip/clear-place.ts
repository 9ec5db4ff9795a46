/** A rectangle on the drawing [px]. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export type Point = readonly [xPx: number, yPx: number];

/** The first of the places that no line runs through; null where all are taken. */
export function clearPlace(
  places: readonly Box[],
  lines: readonly (readonly Point[])[],
): Box | null {
  return places.find((place) => !lines.some((line) => runsThrough(line, place))) ?? null;
}

/** Whether a line of straight pieces touches the box; a single point counts too. */
export function runsThrough(line: readonly Point[], box: Box): boolean {
  const [only] = line;
  if (line.length === 1 && only) return pieceTouches(only, only, box);
  return line.some((to, index) => {
    const from = line[index - 1];
    return from !== undefined && pieceTouches(from, to, box);
  });
}

/** Cuts the piece down to what lies between the box's four sides; nothing left means it passes by. */
function pieceTouches([x0, y0]: Point, [x1, y1]: Point, box: Box): boolean {
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  if (Math.max(x0, x1) < box.left || Math.min(x0, x1) > right) return false;
  if (Math.max(y0, y1) < box.top || Math.min(y0, y1) > bottom) return false;
  const across = between(x0, x1, box.left, right);
  const down = between(y0, y1, box.top, bottom);
  return Math.max(across.from, down.from) <= Math.min(across.to, down.to);
}

/** From which to which share of the way from `start` to `end` one is between `low` and `high`. */
function between(start: number, end: number, low: number, high: number) {
  if (start === end) return { from: 0, to: 1 };
  const atLow = (low - start) / (end - start);
  const atHigh = (high - start) / (end - start);
  return { from: Math.max(0, Math.min(atLow, atHigh)), to: Math.min(1, Math.max(atLow, atHigh)) };
}
