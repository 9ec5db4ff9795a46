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
});
