import { describe, expect, test } from 'vitest';
import { createReadingPace } from '../../../../shared-core/monitor/sense/reading-pace.ts';

function paceAfter(...timesS: number[]) {
  const pace = createReadingPace();
  for (const timeS of timesS) pace.see(timeS);
  return pace;
}

describe('the pace of readings', () => {
  test('is given half a minute before the first one', () => {
    const pace = createReadingPace();
    expect([pace.lastS(), pace.patienceS(false)]).toEqual([null, 30]);
  });

  test('is given three minutes while nobody knows a logger’s pace, unless it sends bad readings', () => {
    const pace = paceAfter(0, 60);
    expect([pace.patienceS(false), pace.patienceS(true)]).toEqual([180, 180]);
    const fast = paceAfter(0, 1);
    expect([fast.patienceS(false), fast.patienceS(true)]).toEqual([180, 3]);
  });

  test('is the shorter of the first two intervals, so that an outage does not count as the pace', () => {
    expect(paceAfter(0, 90, 92).patienceS(false)).toBe(6);
    expect(paceAfter(0, 2, 92).patienceS(false)).toBe(6);
  });

  test('follows later intervals by a fifth, and a long gap only as far as four intervals and a second', () => {
    // 10 + 0.2 · (20 − 10) = 12; 10 + 0.2 · (min(500, 41) − 10) = 16.2
    expect(paceAfter(0, 10, 20, 40).patienceS(false)).toBeCloseTo(36, 9);
    expect(paceAfter(0, 10, 20, 520).patienceS(false)).toBeCloseTo(48.6, 9);
  });

  test('is not changed by two readings of one second', () => {
    expect(paceAfter(0, 10, 20, 20).patienceS(false)).toBe(30);
  });
});
