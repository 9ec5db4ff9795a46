import { describe, expect, test } from 'vitest';
import { createReceiverWatch } from '../../../../shared-core/monitor/sense/receiver-watch.ts';

/** A flask of 85 g, vapour at 100 s, then 0.02 g/s until it is let stand or changed. */
function weigh(massG: (timeS: number) => number, untilS: number) {
  const watch = createReceiverWatch();
  for (let timeS = 0; timeS <= untilS; timeS += 1) {
    watch.see(timeS, massG(timeS), 1 / 0.829, timeS >= 100);
  }
  return watch;
}
const flowing = (timeS: number): number => 85 + 0.02 * Math.max(0, timeS - 100);

describe('a balance under the receiver', () => {
  test('takes what stands there before vapour for the empty receiver', () => {
    expect(weigh(flowing, 1100).collectedMl()).toBeCloseTo(20 / 0.829, 6);
  });

  test('keeps what was collected when a heavier or lighter receiver is put there', () => {
    for (const nextG of [40, 140]) {
      const watch = weigh(
        (timeS) => (timeS < 600 ? flowing(timeS) : nextG + 0.02 * (timeS - 600)),
        1100,
      );
      // The five seconds in which the reading settles are lost: 0.1 g.
      expect(watch.collectedMl()).toBeCloseTo((10 + 9.9) / 0.829, 0);
    }
  });

  test('tells a receiver that nothing runs into from one that fills', () => {
    expect(weigh(flowing, 700).isStill()).toBe(false);
    expect(weigh((timeS) => flowing(Math.min(timeS, 500)), 600).isStill()).toBe(false);
    expect(weigh((timeS) => flowing(Math.min(timeS, 500)), 720).isStill()).toBe(true);
  });

  test('says nothing without a reading of the empty receiver', () => {
    const watch = createReceiverWatch();
    watch.see(200, 103, 1, true);
    watch.see(600, 103, 1, true);
    expect([watch.collectedMl(), watch.isStill()]).toEqual([null, false]);
  });
});
