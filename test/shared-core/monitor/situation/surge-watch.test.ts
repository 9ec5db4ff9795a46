import { describe, expect, test } from 'vitest';
import { createSurgeWatch } from '../../../../shared-core/monitor/situation/surge-watch.ts';

function surgesAt(
  valueC: (timeS: number) => number,
  noiseSdK: number,
  untilS = 600,
): number | null {
  const watch = createSurgeWatch();
  for (let timeS = 0; timeS <= untilS; timeS += 1) {
    if (watch.see(timeS, valueC(timeS), noiseSdK)) return timeS;
  }
  return null;
}
const swinging = (timeS: number): number => 78 + 1.5 * Math.sin((2 * Math.PI * timeS) / 30);

describe('a surging head', () => {
  test('is noticed within three of its swings', () => {
    expect(surgesAt(swinging, 0.05)).toBeLessThan(100);
  });

  test('is not seen in noise as large as the swing', () => {
    expect(surgesAt(swinging, 0.6)).toBeNull();
  });

  test('is neither a slow rise nor heat taken away and brought back twice', () => {
    expect(surgesAt((timeS) => 78 + timeS / 30, 0.05)).toBeNull();
    const removed = (timeS: number): number =>
      [150, 230].some((fromS) => timeS >= fromS && timeS < fromS + 40) ? 70 : 78;
    expect(surgesAt(removed, 0.05)).toBeNull();
  });

  test('has turned five times within two and a half minutes, each by 0.8 K at least and within 24 s', () => {
    /** Up and down by so much, so many seconds each way. */
    const square = (swingK: number, halfS: number) => (timeS: number) =>
      78 + (Math.floor(timeS / halfS) % 2) * swingK;
    // The first turn begins the count: the sixth is at 6 half swings.
    expect([
      surgesAt(square(0.79, 10), 0.05),
      surgesAt(square(0.81, 10), 0.05),
      surgesAt(square(0.81, 10), 0.14),
      surgesAt(square(0.81, 24), 0.05),
      surgesAt(square(0.81, 25), 0.05),
    ]).toEqual([null, 60, null, 144, null]);
  });

  test('is over two and a half minutes after it has turned often enough for the last time', () => {
    const watch = createSurgeWatch();
    const surging: number[] = [];
    for (let timeS = 0; timeS <= 400; timeS += 1)
      if (watch.see(timeS, timeS < 80 ? 78 + (Math.floor(timeS / 10) % 2) : 79, 0.05))
        surging.push(timeS);
    // Turns at 20, 30 … 70 s count, six of them: the second of them is forgotten at 30 + 150 s.
    expect([surging[0], surging.at(-1)]).toEqual([60, 179]);
  });

  test('may begin downwards as well as upwards, and a swing of just the least is none', () => {
    const mirrored = (swingK: number) => (timeS: number) =>
      78 - (Math.floor(timeS / 10) % 2) * swingK;
    expect([surgesAt(mirrored(1), 0.05), surgesAt(mirrored(0.8), 0.05)]).toEqual([60, null]);
    const upwards = (timeS: number) => 78 + (Math.floor(timeS / 10) % 2);
    expect(surgesAt(upwards, 0.05)).toBe(60);
  });
});
