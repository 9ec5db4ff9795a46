import { z } from 'zod';

const temperature = z.number().min(-60).max(200);

/** The temperature over a stretch of time, from the readings heard in it. */
export const warmthSpanSchema = z.strictObject({
  /** Where the stretch begins. */
  atIso: z.iso.datetime(),
  lowC: temperature,
  meanC: temperature,
  highC: temperature,
  /** Minutes in which anything was heard. */
  minutes: z.number().int().min(1),
});

/** A minute, or a longer stretch of some of them. */
export type WarmthSpan = z.infer<typeof warmthSpanSchema>;

const minuteMs = 60_000;
/** A week of such stretches is a thousand: a picture's worth. */
const stretchMs = 10 * minuteMs;

/**
 * Minutes gathered into stretches of ten, in the order in which they begin; means are weighed by the minutes heard:
 * `mean = Σ mean_i n_i / Σ n_i`.
 *
 * @param minutes any spans, in any order
 *
 * Source: arithmetic.
 * @example
 * const minute = { atIso: '2026-05-01T08:01:00.000Z', lowC: 29, meanC: 30, highC: 31, minutes: 1 };
 * gatherSpans([minute])[0]?.atIso // => "2026-05-01T08:00:00.000Z"
 */
export function gatherSpans(minutes: readonly WarmthSpan[]): readonly WarmthSpan[] {
  const stretches = new Map<number, WarmthSpan>();
  for (const minute of minutes) {
    const beginsMs = Math.floor(Date.parse(minute.atIso) / stretchMs) * stretchMs;
    const known = stretches.get(beginsMs);
    stretches.set(beginsMs, known ? together(known, minute) : beginningAt(beginsMs, minute));
  }
  return [...stretches].sort(([a], [b]) => a - b).map(([, stretch]) => stretch);
}

function beginningAt(wallMs: number, span: WarmthSpan): WarmthSpan {
  return { ...span, atIso: new Date(wallMs).toISOString() };
}

function together(known: WarmthSpan, added: WarmthSpan): WarmthSpan {
  const minutes = known.minutes + added.minutes;
  return {
    atIso: known.atIso,
    lowC: Math.min(known.lowC, added.lowC),
    meanC: (known.meanC * known.minutes + added.meanC * added.minutes) / minutes,
    highC: Math.max(known.highC, added.highC),
    minutes,
  };
}
