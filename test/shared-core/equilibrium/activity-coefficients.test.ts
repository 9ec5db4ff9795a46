import { describe, expect, test } from 'vitest';
import { logActivityCoefficients } from '../../../shared-core/equilibrium/activity-coefficients.ts';

const fractions = [0, 1e-12, 1e-4, 0.02, 0.1, 0.35, 0.6, 0.9, 0.999, 1 - 1e-12, 1];
const temperaturesK = [273.15, 303.15, 350, 373.15, 403.15];
const states = fractions.flatMap((x) => temperaturesK.map((temperatureK) => ({ x, temperatureK })));

describe('logActivityCoefficients', () => {
  test('has analytic slopes that agree with central differences', () => {
    const step = 1e-5;
    for (const { x, temperatureK } of states) {
      const analytic = logActivityCoefficients(x, temperatureK);
      const at = (dx: number, dK: number) => logActivityCoefficients(x + dx, temperatureK + dK);
      const numeric = {
        ln1PerX: (at(step, 0).ln1 - at(-step, 0).ln1) / (2 * step),
        ln2PerX: (at(step, 0).ln2 - at(-step, 0).ln2) / (2 * step),
        ln1PerK: (at(0, 0.01).ln1 - at(0, -0.01).ln1) / 0.02,
        ln2PerK: (at(0, 0.01).ln2 - at(0, -0.01).ln2) / 0.02,
      };
      expect(analytic.ln1PerX).toBeCloseTo(numeric.ln1PerX, 5);
      expect(analytic.ln2PerX).toBeCloseTo(numeric.ln2PerX, 5);
      expect(analytic.ln1PerK).toBeCloseTo(numeric.ln1PerK, 8);
      expect(analytic.ln2PerK).toBeCloseTo(numeric.ln2PerK, 8);
    }
  });

  test('satisfies the Gibbs–Duhem equation', () => {
    for (const { x, temperatureK } of states) {
      const { ln1PerX, ln2PerX } = logActivityCoefficients(x, temperatureK);
      expect(Math.abs(x * ln1PerX + (1 - x) * ln2PerX)).toBeLessThan(1e-12);
    }
  });

  test('is exactly 1 for a pure component', () => {
    expect(logActivityCoefficients(1, 333.15).ln1).toBe(0);
    expect(logActivityCoefficients(0, 333.15).ln2).toBe(0);
  });

  test('agrees with the published reduction of measurements at 55 °C within 3 %', () => {
    // Kurihara et al., J. Chem. Eng. Data 40 (1995) 679, columns gamma1 and gamma2.
    const published = [
      [0.2338, 2.0638, 1.1119],
      [0.4123, 1.3946, 1.3576],
      [0.6194, 1.1142, 1.7173],
      [0.8334, 1.0154, 2.1741],
    ] as const;
    for (const [ethanolMoleFraction, ethanol, water] of published) {
      const { ln1, ln2 } = logActivityCoefficients(ethanolMoleFraction, 328.15);
      expect(Math.abs(Math.exp(ln1) / ethanol - 1)).toBeLessThan(0.03);
      expect(Math.abs(Math.exp(ln2) / water - 1)).toBeLessThan(0.03);
    }
  });
});
