import { describe, expect, test } from 'vitest';
import { createHeldLevel } from '../../../../shared-core/monitor/situation/held-level.ts';

const noise = { whiteSdK: 0.03, slowSdK: 0.02, slowCorrelationS: 15 };
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
  test('is left by a steady ramp', () => {
    const ramp = (timeS: number) => 78.4 + Math.max(0, timeS - settledS) * 0.004;
    const [first = 0] = departures(ramp, settledS + 600, []);
    expect(ramp(first) - 78.4).toBeGreaterThan(0.4);
    expect(ramp(first) - 78.4).toBeLessThan(0.5);
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

  test('is left above all heights it came back from', () => {
    const rising = (timeS: number) =>
      78.4 + surge(timeS - settledS, 1.5) + Math.max(0, timeS - 3 * settledS) * 0.004;
    const [first = 0] = departures(rising, 5 * settledS, [settledS + 201]).filter(
      (timeS) => timeS > settledS + 201,
    );
    expect(rising(first) - 78.4).toBeGreaterThan(1.9);
    expect(rising(first) - 78.4).toBeLessThan(2.1);
  });
});
