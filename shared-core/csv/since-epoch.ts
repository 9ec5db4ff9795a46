/** Numbers in these ranges are dates: 2001 to 2286, in seconds or milliseconds since 1970. */
const epochS = [1e9, 1e10] as const;
const epochMs = [1e12, 1e13] as const;

const isWithin = (value: number, [from, to]: readonly [number, number]) =>
  value >= from && value < to;

/** Whether a number can be nothing but a moment counted from 1970. */
export function isSinceEpoch(value: number): boolean {
  return isWithin(value, epochS) || isWithin(value, epochMs);
}

/** Seconds since 1970 of such a number. */
export function sinceEpochS(value: number): number {
  return isWithin(value, epochMs) ? value / 1000 : value;
}
