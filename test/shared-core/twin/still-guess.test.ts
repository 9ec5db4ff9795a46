import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { guessPrior } from '../../../shared-core/twin/still-guess.ts';

const vapourAt = 3;
const priorOf = (tookS: number | null, volumeMl = 350, eased: boolean | null = null) =>
  guessPrior(
    { ...defaultRunSettings, charge: { ...defaultRunSettings.charge, volumeMl } },
    { tookS, eased },
    0.3,
  );
const vapour = ({ mean }: ReturnType<typeof guessPrior>): number => Math.exp(mean[vapourAt] ?? 0);

describe('how much vapour is believed to rise before the head is seen', () => {
  test.each([0, 41, 98, 239])(
    'a first mark only %s s before the vapour came is no start of heating: it tells no more than none',
    (tookS) => {
      for (const eased of [null, false, true]) {
        expect(priorOf(tookS, 860, eased)).toEqual(priorOf(null, 860, eased));
      }
    },
  );

  test('a start that was seen makes it surer, and a slower one means less vapour', () => {
    expect(priorOf(900).sd[vapourAt]).toBeLessThan(priorOf(null).sd[vapourAt] ?? 0);
    expect(vapour(priorOf(1800))).toBeLessThan(vapour(priorOf(900)));
  });

  test('where no start was seen, a larger charge stands over a stronger heat', () => {
    expect(vapour(priorOf(null, 900)) / vapour(priorOf(null, 300))).toBeGreaterThan(2.5);
  });
});
