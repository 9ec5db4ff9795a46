/** What a caller asked for, and what the function can answer. */
export interface OutOfRange {
  readonly quantity: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/**
 * A physical function was called outside the range it is valid in (or with NaN).
 *
 * Physics functions throw this instead of returning NaN: a silent NaN in an alarm is a missed alarm.
 * Boundaries (files, serial, contract) check first and answer with a {@link Result}.
 */
export class OutOfRangeError extends RangeError {
  readonly kind = 'out-of-range';
  readonly detail: OutOfRange;

  constructor(detail: OutOfRange) {
    const { quantity, value, low, high } = detail;
    const unit = detail.unit === '' ? '' : ` ${detail.unit}`;
    super(`${quantity} is ${value}${unit}; it must lie between ${low} and ${high}${unit}.`);
    this.name = 'OutOfRangeError';
    this.detail = detail;
  }
}

/** Throws {@link OutOfRangeError} unless `low ≤ value ≤ high`; NaN always throws. */
export function requireInRange(
  quantity: string,
  value: number,
  low: number,
  high: number,
  unit: string,
): void {
  if (!(value >= low && value <= high)) {
    throw new OutOfRangeError({ quantity, value, low, high, unit });
  }
}
