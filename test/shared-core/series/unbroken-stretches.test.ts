import { describe, expect, test } from 'vitest';
import { unbrokenStretches } from '../../../shared-core/series/unbroken-stretches.ts';

/** The times at which stretches begin, of points that come after such intervals, the first at 0. */
function begins(...intervalsS: readonly number[]): readonly number[] {
  let timeS = 0;
  const points = [0, ...intervalsS].map((intervalS) => {
    timeS += intervalS;
    return { timeS };
  });
  const stretches = unbrokenStretches(points);
  expect(stretches.flat()).toEqual(points);
  return stretches.map(([first]) => first?.timeS ?? Number.NaN);
}

const times = (count: number, intervalS: number): readonly number[] =>
  Array<number>(count).fill(intervalS);

describe('a silence', () => {
  test('of a probe that reads every second is longer than half a minute', () => {
    expect(begins(...times(6, 1), 30, ...times(6, 1))).toEqual([0]);
    expect(begins(...times(6, 1), 30.5, ...times(6, 1))).toEqual([0, 36.5]);
  });

  test('of a slow logger is longer than three of its intervals', () => {
    expect(begins(...times(6, 60), 180, ...times(6, 60))).toEqual([0]);
    expect(begins(...times(6, 60), 181, ...times(6, 60))).toEqual([0, 541]);
  });

  test('is none where the pace changes: the slower side counts, before as after', () => {
    expect(begins(...times(6, 1), 90, ...times(6, 60))).toEqual([0]);
    expect(begins(...times(6, 60), 90, ...times(6, 1))).toEqual([0]);
  });

  test('is told by the five intervals on either side, of which one that is odd does not count', () => {
    expect(begins(1, 1, 1, 1, 100, 40, 1, 1, 1, 100, 1)).toEqual([0, 104, 144, 247]);
    // Ten quick intervals, then five slow ones: what lies further back than five says nothing.
    expect(begins(...times(10, 1), ...times(5, 20), 55, ...times(5, 20))).toEqual([0]);
    expect(begins(...times(5, 60), ...times(5, 1), 40, ...times(5, 1), ...times(5, 60))).toEqual([
      0, 345,
    ]);
  });

  test('is none between two points alone, which say nothing of a pace', () => {
    expect(begins(4000)).toEqual([0]);
    expect(begins()).toEqual([0]);
    expect(unbrokenStretches([])).toEqual([]);
  });
});
