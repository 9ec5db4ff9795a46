import { z } from 'zod';
import { warmthSpanSchema } from '#shared-core';
import type { WarmthSpan } from './warmth-lines.ts';

const { atIso, lowC, meanC, highC } = warmthSpanSchema.shape;

/** A minute as far as it was heard. */
export const minuteSoFarSchema = z.strictObject({
  atIso,
  lowC,
  meanC,
  highC,
  readings: z.number().int().min(1),
});

export type MinuteSoFar = z.infer<typeof minuteSoFarSchema>;

/** Readings of the minute that is not over yet. */
export interface MinuteInHand {
  /** Takes a reading heard at a moment [ms since 1970]; answers the minute before, where this reading begins another. */
  take(wallMs: number, temperatureC: number): WarmthSpan | null;
  /** The minute in hand, where it is over by now, or whatever the time where the watch ends. */
  endedBy(wallMs: number): WarmthSpan | null;
  soFar(): MinuteSoFar | null;
}

const minuteMs = 60_000;

/** Begins with what was heard of a minute before the program ended, or with nothing. */
export function createMinuteInHand(from: MinuteSoFar | null = null): MinuteInHand {
  let inHand = from;

  const give = (): WarmthSpan | null => {
    const given = inHand;
    inHand = null;
    return given === null ? null : minuteOf(given);
  };

  return {
    take: (wallMs, temperatureC) => {
      const begins = new Date(beginningOf(wallMs)).toISOString();
      const ended = inHand?.atIso === begins ? null : give();
      inHand = withReading(inHand, begins, temperatureC);
      return ended;
    },
    endedBy: (wallMs) => {
      const isUnderWay = inHand !== null && beginningOf(wallMs) === Date.parse(inHand.atIso);
      return isUnderWay ? null : give();
    },
    soFar: () => inHand,
  };
}

/** A minute that nothing more is heard of. */
export function minuteOf({ readings: _, ...minute }: MinuteSoFar): WarmthSpan {
  const { lowC: low, meanC: mean, highC: high } = minute;
  return { ...minute, lowC: rounded(low), meanC: rounded(mean), highC: rounded(high), minutes: 1 };
}

function withReading(
  before: MinuteSoFar | null,
  begins: string,
  temperatureC: number,
): MinuteSoFar {
  if (before === null) {
    return {
      atIso: begins,
      lowC: temperatureC,
      meanC: temperatureC,
      highC: temperatureC,
      readings: 1,
    };
  }
  const readings = before.readings + 1;
  return {
    atIso: before.atIso,
    lowC: Math.min(before.lowC, temperatureC),
    meanC: before.meanC + (temperatureC - before.meanC) / readings,
    highC: Math.max(before.highC, temperatureC),
    readings,
  };
}

function beginningOf(wallMs: number): number {
  return Math.floor(wallMs / minuteMs) * minuteMs;
}

/** Finer than any probe [K]. */
function rounded(temperatureC: number): number {
  return Math.round(temperatureC * 1000) / 1000;
}
