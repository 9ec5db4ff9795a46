import { expect, test } from 'vitest';
import { calculationsIn, evaluate } from './support/printed-arithmetic.ts';

test('a printed calculation is read as it stands', () => {
  expect(calculationsIn('R T²/ΔH = 8.314·10⁻³ × 351.65²/40.7 = 25.26 K.')).toMatchObject([
    { words: '8.314·10⁻³ × 351.65²/40.7 = 25.26', printed: 25.26, rounding: 0.005 },
  ]);
  expect(calculationsIn('Fermentation 21.70/30.68 = 70.8 %, overall 19.31/30.68 = 62.9 %')).toEqual(
    [
      expect.objectContaining({ printed: 70.8, computed: 100 * (21.7 / 30.68) }),
      expect.objectContaining({ printed: 62.9 }),
    ],
  );
  expect(evaluate('ln[(0.725/0.275) × 2]/ln √(11.4 × 1.27)')).toBeCloseTo(1.24413, 4);
  expect(evaluate('78.15 − (−0.47) + 1')).toBeCloseTo(79.62, 9);
});
