/** A best value with the ends of its 95 % coverage interval (JCGM 101, 3.12), all in one unit. */
export interface Interval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The same interval in another quantity: each number through a rising function. */
export function mapInterval(interval: Interval, rising: (value: number) => number): Interval {
  return {
    value: rising(interval.value),
    low: rising(interval.low),
    high: rising(interval.high),
  };
}
