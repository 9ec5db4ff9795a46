import { describe, expect, test } from 'vitest';
import { createRunClock } from '../../../main/session/run-clock.ts';

describe('the clock of a run', () => {
  test('counts seconds since the run began to the millisecond, and none before it', () => {
    const clock = createRunClock(1000, 1);
    expect([999.999, 1000, 1001.2344, 1001.2346].map((atS) => clock.stamp(atS))).toEqual([
      null,
      0,
      1.234,
      1.235,
    ]);
  });

  test('runs as many times as fast in a rehearsal, and goes on from where another process left it', () => {
    expect(createRunClock(1000, 60).stamp(1002)).toBe(120);
    const continued = createRunClock(1000, 1, 300);
    expect([1000, 1002.5].map((atS) => continued.stamp(atS))).toEqual([300, 302.5]);
  });

  test('went on while the computer slept, for what came after it alone', () => {
    const clock = createRunClock(1000, 2);
    clock.skip(1010, 60);
    clock.skip(1020, 30);
    expect([1005, 1010, 1011, 1020, 1021].map((atS) => clock.stamp(atS))).toEqual([
      10, 20,
      // Twice as fast: 22 and 120 that were slept through.
      142, 160,
      // And 60 more.
      222,
    ]);
  });

  test('lets the monitor go on to a quarter past a whole second, once what was on its way has come', () => {
    const clock = createRunClock(1000, 1);
    // 0.3 s for what came in one piece, and a quarter past the second.
    expect(
      [1000.1, 1001.54, 1001.56, 1002, 1002.54, 1007.9].map((atS) => clock.advance(atS)),
    ).toEqual([null, 0.25, 1.25, null, null, 7.25]);
    expect(clock.advance(1003)).toBeNull();
  });

  test('stamps nothing before the second that the monitor has closed', () => {
    const clock = createRunClock(1000, 1);
    clock.advance(1010.6);
    // Advanced to 10.25 s: the seconds up to 9.5 s are worked out.
    expect([1003, 1009.4, 1009.6, 1011].map((atS) => clock.stamp(atS))).toEqual([
      9.5, 9.5, 9.6, 11,
    ]);
  });
});
