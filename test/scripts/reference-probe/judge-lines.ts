import type { HeardLine } from './faulty-wire.ts';

/** How a board's lines compare with what its sensor was exposed to. */
export interface LineVerdict {
  readonly lines: number;
  readonly readings: number;
  readonly faultsTold: number;
  /** Lines that are neither a temperature the head had nor the word that there is none. */
  readonly untrue: readonly string[];
  /** Readings told while the sensor could not be heard. */
  readonly invented: number;
  /** Lines without a reading though nothing was wrong. */
  readonly withheld: number;
}

export function judgeLines(heard: Iterable<HeardLine>): LineVerdict {
  let lines = 0;
  let faultsTold = 0;
  let invented = 0;
  let withheld = 0;
  const untrue: string[] = [];
  for (const { text, possibleC, wasFaulty } of heard) {
    const isFault = text === 'head,nan';
    lines += 1;
    if (isFault) faultsTold += 1;
    if (isFault && wasFaulty === 'never') withheld += 1;
    if (!isFault && wasFaulty === 'always') invented += 1;
    if (!isFault && !possibleC.some((value) => text === `head,${value.toFixed(4)}`))
      untrue.push(text);
  }
  return { lines, readings: lines - faultsTold, faultsTold, untrue, invented, withheld };
}
