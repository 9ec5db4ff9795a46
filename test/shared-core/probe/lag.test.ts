import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OutOfRangeError } from '#shared-core';
import { lagTimeConstantS } from '../../../shared-core/probe/lag.ts';

describe('lag', () => {
  test('after one t90 a first-order probe has gone 90 % of a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 600, noNaN: true }), (t90S) => {
        expect(1 - Math.exp(-t90S / lagTimeConstantS(t90S))).toBeCloseTo(0.9, 12);
      }),
    );
  });

  test.each([-1, 601, Number.NaN])('a response time of %d s is refused', (t90S) => {
    expect(() => lagTimeConstantS(t90S)).toThrow(OutOfRangeError);
  });
});
