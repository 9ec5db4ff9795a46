import { describe, expect, test } from 'vitest';
import { gatherEvidence } from '../../../shared-core/ferment/gather-evidence.ts';
import { readingAt } from './support/at-hour.ts';

describe('readings as evidence', () => {
  test('are gathered by three hours, the median of each kind; what was not read is not there', () => {
    const evidence = gatherEvidence([
      readingAt(0, { gravity: 1.06, temperatureC: 20 }),
      readingAt(1, { massG: 1500, temperatureC: 26, bubblesPerMin: 4 }),
      readingAt(2.9, { massG: 1498, temperatureC: 21, isDegassed: true }),
      readingAt(3, { bubblesPerMin: 10 }),
    ]);
    expect(evidence).toEqual([
      {
        timeH: 1,
        gravity: { value: 1.06, uncertainty: expect.any(Number) },
        massG: { value: 1499, uncertainty: expect.any(Number) },
        bubblesPerMin: 4,
        temperatureC: 21,
        isDegassed: true,
      },
      {
        timeH: 3,
        gravity: null,
        massG: null,
        bubblesPerMin: 10,
        temperatureC: null,
        isDegassed: false,
      },
    ]);
    expect(gatherEvidence([])).toEqual([]);
  });

  test('have the uncertainty of the step they were read in, and of a least scatter', () => {
    const uncertainty = (key: 'gravity' | 'massG', values: readonly number[]) =>
      gatherEvidence(values.map((value, index) => readingAt(10 * index, { [key]: value })))[0]?.[
        key
      ]?.uncertainty;
    // u² = q²/12 + s²: steps of 0.005 with a quarter of them, of 0.0001 with the least of 0.0008.
    expect(uncertainty('gravity', [1.08, 1.075, 1.06, 1.045])).toBeCloseTo(
      Math.hypot(0.005 / Math.sqrt(12), 0.005 / 4),
      9,
    );
    expect(uncertainty('gravity', [1.0811, 1.0763, 1.0622, 1.0459])).toBeCloseTo(
      Math.hypot(0.0001 / Math.sqrt(12), 0.0008),
      9,
    );
    expect(uncertainty('massG', [1200, 1198, 1186, 1170])).toBeCloseTo(
      Math.hypot(2 / Math.sqrt(12), 1),
      9,
    );
    expect(uncertainty('massG', [1200.1, 1199.4, 1186.2, 1171.7])).toBeCloseTo(
      Math.hypot(0.1 / Math.sqrt(12), 0.4),
      9,
    );
  });
});
