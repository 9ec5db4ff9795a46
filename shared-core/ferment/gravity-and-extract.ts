import { requireInRange } from '../result/index.ts';

/** Density of water at 20 °C [g/L] in hundredths: grams in a litre for each per cent by mass. Source: OIML R 22 (1975). */
const waterPerPercentGPerL = 9.9820123;

/** The cubic's own value at gravity 1, which has to be zero. */
const atWaterPlato = 135.997 - 630.272 + 1111.14 - 616.868;

/**
 * Extract by mass from gravity, `P = 135.997 s³ − 630.272 s² + 1111.14 s − 616.868`, and no less than zero from gravity 1 on.
 * Below 1 it is the apparent extract of a fermented liquid and negative.
 *
 * @param gravity relative density 20/20 [1], 0.97 … 1.2
 * @returns extract [°P = g per 100 g]
 * @throws OutOfRangeError outside this range
 *
 * Source: American Society of Brewing Chemists, fit to Plato's table; checked against a national wine-extract table.
 * @example
 * platoFromGravity(1.04) // ≈ 9.994 ± 0.001
 * platoFromGravity(1) // => 0
 */
export function platoFromGravity(gravity: number): number {
  requireInRange('gravity', gravity, 0.97, 1.2, '');
  const plato = ((135.997 * gravity - 630.272) * gravity + 1111.14) * gravity - 616.868;
  return gravity < 1 ? plato - atWaterPlato : Math.max(0, plato);
}

/**
 * Gravity from extract: the inverse of {@link platoFromGravity}, by Newton's method.
 *
 * @param plato extract [°P], −8 … 40
 * @returns gravity 20/20 [1]
 * @throws OutOfRangeError outside this range
 *
 * Source: see {@link platoFromGravity}.
 * @example
 * gravityFromPlato(9.994) // ≈ 1.04 ± 1e-5
 */
export function gravityFromPlato(plato: number): number {
  requireInRange('extract', plato, -8, 40, '°P');
  const target = plato < 0 ? plato + atWaterPlato : plato;
  let gravity = 1 + plato / 258;
  for (let step = 0; step < 8; step += 1) {
    const excess = ((135.997 * gravity - 630.272) * gravity + 1111.14) * gravity - 616.868 - target;
    const slope = (3 * 135.997 * gravity - 2 * 630.272) * gravity + 1111.14;
    gravity -= excess / slope;
  }
  return plato === 0 ? 1 : gravity;
}

/**
 * Extract in a litre, `c = P s ρ(water)/100`.
 *
 * @param gravity relative density 20/20 [1], 1 … 1.2
 * @returns extract [g/L]
 * @throws OutOfRangeError outside this range
 *
 * Source: definition; checked against GOST's wine-extract table within 0.1 g/L.
 * @example
 * extractGPerL(1.05) // ≈ 129.8 ± 0.1
 */
export function extractGPerL(gravity: number): number {
  requireInRange('gravity', gravity, 1, 1.2, '');
  return platoFromGravity(gravity) * gravity * waterPerPercentGPerL;
}
