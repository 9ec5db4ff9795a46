import { describe, expect, test } from 'vitest';
import { createLineStamps } from '../../../../main/probe/link/line-stamps.ts';

const rounded = (moments: readonly number[]) => moments.map((moment) => Number(moment.toFixed(6)));

describe('createLineStamps', () => {
  test('a line that comes alone is stamped when it comes', () => {
    const stamps = createLineStamps();
    expect([stamps.stamp(1, 10), stamps.stamp(1, 11)]).toEqual([[10], [11]]);
  });

  test('lines that come together are spread backwards at the usual interval', () => {
    const stamps = createLineStamps();
    for (const nowS of [10, 11, 12]) stamps.stamp(1, nowS);
    expect(rounded(stamps.stamp(3, 15))).toEqual([13, 14, 15]);
  });

  test('no line is stamped before the one that came last', () => {
    const stamps = createLineStamps();
    for (const nowS of [10, 11, 12]) stamps.stamp(1, nowS);
    const [first = 0] = stamps.stamp(10, 12.5);
    expect(first).toBeGreaterThan(12);
  });

  test('after a long gap, lines are not smeared into the gap', () => {
    const stamps = createLineStamps();
    for (const nowS of [10, 11, 12]) stamps.stamp(1, nowS);
    const [first = 0] = stamps.stamp(2, 100);
    expect(first).toBeGreaterThan(98);
  });
});
