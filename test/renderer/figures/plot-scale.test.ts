import { describe, expect, test } from 'vitest';
import type { Axis } from '../../../renderer/figures/axis.ts';
import { plotScale } from '../../../renderer/figures/plot-scale.ts';

const axis = (low: number, high: number): Axis => ({
  low,
  high,
  ticks: [],
  name: '',
  tickWords: String,
});

describe('plotScale', () => {
  const edges = { left: 100, right: 300, top: 20, bottom: 120 };
  const scale = plotScale(edges, axis(0, 10), axis(70, 80), 15);

  test('places values between the edges, stops what lies outside, and finds the way back', () => {
    expect([scale.xOf(5), scale.yOf(75), scale.xOf(-1), scale.yOf(99)]).toEqual([200, 70, 100, 20]);
    expect([scale.xAt(200), scale.xAt(0), scale.xAt(999)]).toEqual([5, 0, 10]);
  });

  test('interrupts a line where a height is missing', () => {
    const path = scale.line([
      [0, 70],
      [1, null],
      [5, 75],
      [10, 80],
    ]);
    expect(path).toBe('M100.0 120.0M200.0 70.0L300.0 20.0');
  });
});
