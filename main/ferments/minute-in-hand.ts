import type { WarmthSpan } from './warmth-lines.ts';

/** Readings of the minute that is not over yet. */
export interface MinuteInHand {
  /** Takes a reading heard at a moment [ms since 1970]; answers the minute before, where this reading begins another. */
  take(wallMs: number, temperatureC: number): WarmthSpan | null;
  /** The minute in hand, where it is over by now, or whatever the time where the program ends. */
  endedBy(wallMs: number): WarmthSpan | null;
}

const minuteMs = 60_000;

export function createMinuteInHand(): MinuteInHand {
  let beginsMs = 0;
  let values: number[] = [];

  const give = (): WarmthSpan | null => {
    const given = spanOf(beginsMs, values);
    values = [];
    return given;
  };

  return {
    take: (wallMs, temperatureC) => {
      const minute = beginningOf(wallMs);
      const ended = minute === beginsMs ? null : give();
      beginsMs = minute;
      values.push(temperatureC);
      return ended;
    },
    endedBy: (wallMs) => (beginningOf(wallMs) === beginsMs ? null : give()),
  };
}

function beginningOf(wallMs: number): number {
  return Math.floor(wallMs / minuteMs) * minuteMs;
}

function spanOf(beginsMs: number, values: readonly number[]): WarmthSpan | null {
  if (values.length === 0) return null;
  const sum = values.reduce((total, value) => total + value, 0);
  return {
    atIso: new Date(beginsMs).toISOString(),
    lowC: rounded(Math.min(...values)),
    meanC: rounded(sum / values.length),
    highC: rounded(Math.max(...values)),
    minutes: 1,
  };
}

/** Finer than any probe [K]. */
function rounded(temperatureC: number): number {
  return Math.round(temperatureC * 1000) / 1000;
}
