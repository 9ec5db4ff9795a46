import { describe, expect, test } from 'vitest';
import { createHeldLevel } from '../../../../shared-core/monitor/situation/held-level.ts';
import { createRandom } from '../../../../shared-core/random/index.ts';

const noise = { whiteSdK: 0.03, slowSdK: 0.02 };
const settledS = 400;

/** Seconds in which the head was seen to leave its level. */
function departures(courseC: (timeS: number) => number, endS: number, upsetsS: readonly number[]) {
  const level = createHeldLevel();
  level.begin(courseC(0));
  const seen: number[] = [];
  for (let timeS = 1; timeS <= endS; timeS += 1) {
    if (upsetsS.includes(timeS)) level.interrupt();
    level.see(timeS, courseC(timeS), noise);
    if (level.departedS() !== null) seen.push(timeS);
  }
  return seen;
}

/** Up by a height within a minute and a half, held, and down again when the flame is taken away. */
const surge = (sinceS: number, heightK: number): number =>
  sinceS < 0 || sinceS > 200 ? 0 : heightK * Math.min(1, sinceS / 90);

describe('the level a head is held at', () => {
  test('is left by a steady ramp that will be 0.4 K above it in a minute', () => {
    const ramp = (timeS: number) => 78.4 + Math.max(0, timeS - settledS) * 0.004;
    const [first = 0] = departures(ramp, settledS + 600, []);
    expect(ramp(first + 60) - 78.4).toBeGreaterThan(0.4);
    expect(ramp(first + 60) - 78.4).toBeLessThan(0.5);
  });

  test('is seen to be left by 0.3 K a minute within forty seconds where the head is quiet', () => {
    const delays = Array.from({ length: 20 }, (_, seed) => {
      const random = createRandom(`quiet ${seed}`);
      const ramp = (timeS: number) =>
        78.4 + Math.max(0, timeS - 2 * settledS) * 0.005 + 0.02 * random.normal();
      return (departures(ramp, 3 * settledS, [])[0] ?? Number.NaN) - 2 * settledS;
    });
    expect(Math.min(...delays)).toBeGreaterThan(0);
    expect(delays.reduce((sum, delayS) => sum + delayS) / delays.length).toBeLessThan(40);
  });

  test('is not left by a head that rises by less than 0.4 K and stays there, as it does after the heat was eased', () => {
    const eased = (timeS: number) => 78.4 + Math.min(0.3, Math.max(0, timeS - settledS) * 0.001);
    expect(departures(eased, settledS + 1200, [])).toEqual([]);
  });

  test('is left by what a head that came back before has risen, and not by what it may', () => {
    const again = (timeS: number) =>
      78.4 + surge(timeS - settledS, 0.6) + Math.max(0, timeS - 3 * settledS) * 0.004;
    const seen = departures(again, 4 * settledS, []);
    const [first = 0] = seen.filter((timeS) => timeS > 3 * settledS);
    expect(seen.some((timeS) => timeS < 2 * settledS)).toBe(true);
    expect(again(first) - 78.4).toBeGreaterThan(0.4 + 0.6);
    expect(again(first) - 78.4).toBeLessThan(0.4 + 0.7);
  });

  test.each([
    [2, 0],
    [2, 1],
    [10, 0],
    [10, 5],
    [10, 7],
  ])('is left by a steady ramp, read every %s s, %s s off', (everyS, phaseS) => {
    const settledSlowlyS = 2 * settledS;
    const ramp = (timeS: number) => 78.4 + Math.max(0, timeS - settledSlowlyS) * 0.004;
    const level = createHeldLevel();
    level.begin(ramp(0));
    let departedAtC = Number.NaN;
    for (let timeS = phaseS; timeS <= 2 * settledSlowlyS; timeS += everyS) {
      level.see(timeS, ramp(timeS), noise);
      if (level.departedS() === timeS) departedAtC = ramp(timeS);
    }
    expect(departedAtC + 0.004 * 60 - 78.4).toBeGreaterThan(0.4);
    expect(departedAtC + 0.004 * 60 - 78.4).toBeLessThan(0.6);
  });

  test('is not left again where the head has stood before and come back from', () => {
    const byHand = (timeS: number) =>
      78.4 + surge(timeS - settledS, 1.5) + surge(timeS - 2 * settledS - 201, 1.6);
    const seen = departures(byHand, 3 * settledS, [settledS + 201]);
    expect(seen.some((timeS) => timeS < settledS + 201)).toBe(true);
    expect(seen.filter((timeS) => timeS > settledS + 201)).toEqual([]);
  });

  test('stays where the head left it while the head is away, and is the head again once that has gone back', () => {
    const level = createHeldLevel();
    level.begin(78.4);
    const course = (timeS: number) => 78.4 + surge(timeS - settledS, 1.5);
    const levels = Array.from({ length: 2 * settledS }, (_, timeS) => {
      level.see(timeS + 1, course(timeS + 1), noise);
      return { left: level.departedS() !== null, levelC: level.levelC() ?? 0 };
    });
    const away = levels.filter(({ left }) => left).map(({ levelC }) => levelC);
    expect(new Set(away).size).toBe(1);
    expect(Math.abs((away[0] ?? 0) - 78.4)).toBeLessThan(0.05);
    expect(levels.at(-1)?.left).toBe(false);
  });

  test('is the mean of all readings for a minute, and follows only slowly then, until it is held against the head', () => {
    const level = createHeldLevel();
    level.begin(78);
    const means: number[] = [];
    const course = (timeS: number) => 78 + (timeS % 7) / 10;
    const levelAt: (number | null)[] = [];
    for (let timeS = 1; timeS <= 60; timeS += 1) {
      level.see(timeS, course(timeS), noise);
      if (timeS % 2 === 1) continue;
      means.push((course(timeS - 1) + course(timeS)) / 2);
      levelAt.push(level.levelC());
      expect(level.levelC()).toBeCloseTo(means.reduce((sum, mean) => sum + mean) / means.length, 9);
    }
    // From the thirtieth block of two seconds on each counts for a thirtieth.
    const before = levelAt.at(-1)!;
    level.see(61, 79, noise);
    level.see(62, 79, noise);
    expect(level.levelC()).toBeCloseTo(before + (79 - before) / 30, 9);
  });

  test('is found from twelve readings of a slow logger, however long they take', () => {
    const level = createHeldLevel();
    level.begin(78);
    const levels = Array.from({ length: 14 }, (_, index) => {
      level.see(10 * (index + 1), index < 12 ? 78 + index / 11 : 80, noise);
      return level.levelC()!;
    });
    expect(levels[11]).toBeCloseTo(78.5, 9);
    expect(levels[12]).toBeCloseTo(78.5 + 1.5 / 12, 9);
  });

  test('was left when that was first seen, as long as the head is away', () => {
    const level = createHeldLevel();
    level.begin(78.4);
    const left = new Set<number>();
    for (let timeS = 1; timeS <= settledS + 300; timeS += 1) {
      level.see(timeS, 78.4 + Math.max(0, timeS - settledS) * 0.01, noise);
      const departedS = level.departedS();
      if (departedS !== null) left.add(departedS);
    }
    expect(left.size).toBe(1);
    expect([...left][0]).toBeGreaterThan(settledS);
    expect([...left][0]).toBeLessThan(settledS + 30);
  });

  test('is seen to be left sooner by a poor probe that is read more often', () => {
    const poor = { whiteSdK: 0.4, slowSdK: 0.01 };
    const departed = (everyS: number): number => {
      const level = createHeldLevel();
      level.begin(78.4);
      let timeS = 0;
      while (level.departedS() === null && timeS < 2 * settledS) {
        timeS += everyS;
        level.see(timeS, 78.4 + Math.max(0, timeS - settledS) * 0.01, poor);
      }
      return timeS;
    };
    expect(departed(1)).toBeLessThan(departed(2));
    expect(departed(2)).toBeLessThan(2 * settledS);
  });

  test('is left above all heights it came back from', () => {
    const rising = (timeS: number) =>
      78.4 + surge(timeS - settledS, 1.5) + Math.max(0, timeS - 3 * settledS) * 0.004;
    const [first = 0] = departures(rising, 5 * settledS, [settledS + 201]).filter(
      (timeS) => timeS > settledS + 201,
    );
    expect(rising(first) - 78.4).toBeGreaterThan(1.9);
    expect(rising(first) - 78.4).toBeLessThan(2.1);
  });

  test('is held against the head from four minutes on, and found anew then', () => {
    const level = createHeldLevel();
    level.begin(78);
    const levelAt = new Map<number, number | null>();
    for (let timeS = 1; timeS <= 244; timeS += 1) {
      level.see(timeS, timeS < 239 ? 78 : 79, noise);
      levelAt.set(timeS, level.levelC());
    }
    // The block that ends at 240 s still counts for a thirtieth; the next is the first that is held against anything.
    expect(levelAt.get(240)).toBeCloseTo(78 + 1 / 30, 9);
    expect(levelAt.get(242)).toBeCloseTo(79, 9);
    expect(level.departedS()).toBeNull();
  });

  test('is nothing before it has begun, and an upset lets the head settle for four minutes more', () => {
    const level = createHeldLevel();
    level.see(2, 78, noise);
    expect([level.levelC(), level.departedS()]).toEqual([null, null]);
    const ramp = (timeS: number) => 78.4 + Math.max(0, timeS - settledS) * 0.01;
    const seen = departures(ramp, settledS + 500, [settledS + 150]);
    expect(seen.filter((timeS) => timeS > settledS + 150 && timeS < settledS + 390)).toEqual([]);
    expect(seen[0]).toBeLessThan(settledS + 150);
  });
});
