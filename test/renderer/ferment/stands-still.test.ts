import { describe, expect, test } from 'vitest';
import { stateWords } from '../../../renderer/ferment/ferment-words.ts';
import { nextActWords } from '../../../renderer/ferment/next-act-words.ts';
import { judgeFerment, type KeptFerment } from '../../../shared-core/index.ts';

const beganMs = Date.UTC(2026, 4, 1, 8);
/** A litre with 180 g of grape sugar that loses what its gas weighs, and then nothing any more. */
const masses = [0, 24, 48, 72, 96, 120, 144, 168, 192, 216].map((timeH) => ({
  timeH,
  gravity: null,
  massG: 1500 - 84 * (1 - Math.exp(-((timeH / 55) ** 2.5))),
  temperatureC: 25,
  bubblesPerMin: null,
  isDegassed: false,
}));
const kept: KeptFerment = {
  fermentId: 'a',
  stated: {
    name: 'Pears',
    beganAtIso: new Date(beganMs).toISOString(),
    volumeMl: 1000,
    sugarG: null,
    wentIn: '',
  },
  corrections: [],
  entries: [],
  unreadableLines: 0,
};

describe('a good ferment that was only weighed', () => {
  test('stands still, and is not called stuck, while nothing tells where its end is', () => {
    const verdict = judgeFerment(masses, { volumeMl: 1000, sugarG: null });
    expect(stateWords(verdict)).toBe('Stands still');
    expect(nextActWords(kept, verdict)).toBe('Measure its gravity, or say how much sugar went in.');
  });

  test('is finished as soon as its sugar is told, and stuck where that was more', () => {
    const judged = (hexoseG: number) => judgeFerment(masses, { volumeMl: 1000, sugarG: hexoseG });
    expect(stateWords(judged(180))).toBe('Finished');
    expect(stateWords(judged(300))).toBe('Stuck?');
    expect(nextActWords(kept, judged(300))).toContain('Warm it');
  });
});
