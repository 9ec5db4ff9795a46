import { describe, expect, test } from 'vitest';
import { createRunTime } from '../../../shared-core/monitor/run-time.ts';

function timed() {
  const seconds: number[] = [];
  return { seconds, time: createRunTime((timeS) => seconds.push(timeS)) };
}

describe('the time of a run', () => {
  test('works out a second once, half a second after its end', () => {
    const { seconds, time } = timed();
    time.hearAt(1.49);
    expect(seconds).toEqual([]);
    time.hearAt(1.5);
    time.passTo(3.6);
    expect([seconds, time.steppedS(), time.nowS()]).toEqual([[1, 2, 3], 3, 3.6]);
  });

  test('does not go back for an input that comes late, nor anywhere by what is no time', () => {
    const { seconds, time } = timed();
    time.hearAt(3.6);
    time.hearAt(2);
    time.passTo(Number.NaN);
    time.hearAt(Number.POSITIVE_INFINITY);
    expect([seconds.length, time.nowS()]).toEqual([3, 3.6]);
  });

  test('steps through a silence of a day, then stands until the next input and goes on from there', () => {
    const { seconds, time } = timed();
    time.hearAt(1.5);
    time.passTo(300_000);
    expect(seconds.at(-1)).toBe(86_401);
    time.hearAt(300_001);
    expect(time.steppedS()).toBe(300_000);
    time.passTo(300_002);
    expect(seconds.at(-1)).toBe(300_001);
  });
});
