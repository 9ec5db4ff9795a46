import type { Estimate } from '#shared-core';

/** How much of the run the strip shows. */
export type StripSpan = 'whole' | 'last-30-min' | 'last-10-min';

export interface TimeRange {
  readonly fromS: number;
  readonly toS: number;
}

const wholeSpansS = [10, 20, 30, 45, 60, 90, 120, 180, 240, 360, 480, 720, 1440].map((m) => m * 60);
/** What has been seen keeps so much of the width: a range that says little of the end must not squeeze it together. */
const leastShareSeen = 1 / 3;
export const spanS = { 'last-30-min': 1800, 'last-10-min': 600 } as const;

/**
 * The stretch of time in view. Ends move in steps, not with every reading: the eye can rest on the
 * line, and the reduced columns stay the same from one redraw to the next. The likely end is always in view, the far end of its
 * range where it is not too far.
 */
export function timeRange(span: StripSpan, nowS: number, expectedEndS: Estimate | null): TimeRange {
  if (span === 'whole') {
    const { value = 0, high = 0 } = expectedEndS ?? {};
    const needed = Math.max(nowS * 1.04, value, Math.min(high, nowS / leastShareSeen));
    const toS = wholeSpansS.find((known) => known >= needed) ?? Math.ceil(needed / 86_400) * 86_400;
    return { fromS: 0, toS };
  }
  const length = spanS[span];
  const stepS = length / 10;
  const toS = Math.max(length, Math.ceil((nowS + stepS) / stepS) * stepS);
  return { fromS: toS - length, toS };
}
