import { describe, expect, test } from 'vitest';
import type { Stage, StageSpan } from '#shared-core';
import { mainFractionLastedS } from '../../../renderer/compare/main-fraction-lasted.ts';

const span = (stage: Stage, fromS: number, toS: number | null): StageSpan => ({
  stage,
  fromS,
  toS,
  because: '',
});
const ended = [
  span('first-fraction', 900, 1000),
  span('main-fraction', 1000, 2000),
  span('tail', 2000, 2300),
  span('cool-down', 2300, null),
];
/** A strength that falls by 1 % vol in 100 s and is 80 at 2000 s, known to so much. */
const falling = (doubtAbv: number, toS: number) =>
  Array.from({ length: Math.floor((toS - 900) / 60) }, (_, index) => {
    const timeS = 900 + 60 * index;
    const value = 80 + (2000 - timeS) / 100;
    return { timeS, headVapourAbv: { value, low: value - doubtAbv, high: value + doubtAbv } };
  });
const lasted = (stages: readonly StageSpan[], estimates: ReturnType<typeof falling>) =>
  mainFractionLastedS({ stages: [...stages], estimates }, 80, 2500);

describe('how long the main fraction lasted', () => {
  test('is as well known as when the vapour passed the limit', () => {
    const around = (inS: number) => ({
      value: 1000,
      low: expect.closeTo(1000 - inS, 6),
      high: expect.closeTo(1000 + inS, 6),
    });
    expect([lasted(ended, falling(2, 2280)), lasted(ended, falling(0.5, 2280))]).toEqual([
      around(200),
      around(50),
    ]);
  });

  test('goes on to where vapour was gone at most, and to where the run was left if it never was', () => {
    expect(lasted(ended, falling(6, 2280))).toEqual({
      value: 1000,
      low: expect.closeTo(400, 6),
      high: 1300,
    });
    expect(lasted(ended.slice(0, 3), falling(6, 2280))?.high).toBe(1500);
  });

  test('is no longer than to the end of vapour that was strong enough all along', () => {
    const cut = [
      ...ended.slice(0, 1),
      span('main-fraction', 1000, 1500),
      span('cool-down', 1500, null),
    ];
    expect(lasted(cut, falling(2, 1500))).toEqual({ value: 500, low: 500, high: 500 });
  });

  test('may have been nothing where the vapour was never surely strong enough, or its strength never known', () => {
    expect(lasted(ended, falling(30, 2280))?.low).toBe(0);
    expect(lasted(ended, [])).toEqual({ value: 1000, low: 0, high: 1300 });
  });

  test('is not told where there was none', () => {
    expect(lasted([span('warm-up', 0, null)], [])).toBeNull();
  });
});
