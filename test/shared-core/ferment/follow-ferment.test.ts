import { expect, test } from 'vitest';
import { followFerment } from '../../../shared-core/ferment/follow-ferment.ts';
import { gatherEvidence } from '../../../shared-core/ferment/gather-evidence.ts';

const hoursOf = (...timesH: readonly number[]) => {
  const readings = timesH.map((timeH, at) => ({
    timeH,
    gravity: 1.06 - 0.01 * at,
    massG: null,
    temperatureC: null,
    bubblesPerMin: null,
    isDegassed: false,
  }));
  const beliefs = followFerment(gatherEvidence(readings), { volumeMl: 1000, sugarG: null });
  return Array.from(beliefs, ({ timeH }) => timeH);
};

test('a log counts from the yeast on, and one that begins after three days from its first reading', () => {
  expect([hoursOf(0, 24), hoursOf(72, 96), hoursOf(73, 97)]).toEqual([
    [0, 24],
    [72, 96],
    [0, 24],
  ]);
});
