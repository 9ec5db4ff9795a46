import { expect } from 'vitest';
import { OutOfRangeError } from '#shared-core';

/** What a physics function promises of one of its arguments. */
export interface StatedRange {
  readonly quantity: string;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/**
 * A function answers at both ends of its range, and refuses what lies just outside, and NaN, with the name, the limits and the unit of
 * what it refuses: that is what stands in the report of a fault.
 */
export function expectRange(act: (value: number) => unknown, stated: StatedRange): void {
  const { low, high } = stated;
  for (const value of [low, high]) expect(() => act(value)).not.toThrow();
  for (const value of [low - beside(low), high + beside(high), Number.NaN])
    expect(refusalOf(() => act(value))).toEqual({ ...stated, value });
}

/** The least difference that shows in sums with numbers of that size. */
function beside(limit: number): number {
  return limit === Number.MIN_VALUE ? limit : Math.max(1e-9, Math.abs(limit) * 1e-9);
}

function refusalOf(act: () => unknown): unknown {
  try {
    return act();
  } catch (error) {
    return error instanceof OutOfRangeError ? error.detail : error;
  }
}
