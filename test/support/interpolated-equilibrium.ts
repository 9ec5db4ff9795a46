import type { EquilibriumCurve } from '../../shared-core/column/steady/equilibrium-curve.ts';
import { requireInRange } from '../../shared-core/result/index.ts';

/** One measured pair of liquid and vapour composition. */
export interface EquilibriumPoint {
  /** Ethanol in the liquid [mol/mol]. */
  readonly x: number;
  /** Ethanol in the vapour [mol/mol]. */
  readonly y: number;
}

/**
 * A smooth curve through measured equilibrium points and the pure ends. The logarithm of the relative
 * volatility, `ln α = ln(y(1 − x)/((1 − y)x))`, is joined by monotone cubics: it is nearly straight between
 * neighbours even where y bends sharply, and y stays between 0 and 1.
 *
 * @param points at least two, x and y strictly rising, all in 0 < x, y < 1 [mol/mol]
 * @returns y*(x) that passes through every point
 * @throws OutOfRangeError for points outside the range or out of order
 *
 * Source: F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238, in the harmonic-mean form of
 * F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300.
 * @example
 * const curve = interpolatedEquilibrium([{ x: 0.1, y: 0.44 }, { x: 0.5, y: 0.65 }, { x: 0.9, y: 0.9 }]);
 * curve(0.5) // ≈ 0.65 ± 1e-9
 * curve(0) // => 0
 */
export function interpolatedEquilibrium(points: readonly EquilibriumPoint[]): EquilibriumCurve {
  requireInRange('number of points', points.length, 2, 10_000, '');
  let previous: EquilibriumPoint = { x: 0, y: 0 };
  for (const point of points) {
    requireInRange('x of a point', point.x, previous.x + 1e-9, 1 - 1e-9, 'mol/mol');
    requireInRange('y of a point', point.y, previous.y + 1e-9, 1 - 1e-9, 'mol/mol');
    previous = point;
  }
  const xs = points.map(({ x }) => x);
  const logs = points.map(({ x, y }) => Math.log((y * (1 - x)) / ((1 - y) * x)));
  const slopes = monotoneSlopes(xs, logs);
  return (ethanolMoleFraction) => {
    const x = ethanolMoleFraction;
    requireInRange('ethanol mole fraction', x, 0, 1, 'mol/mol');
    const alpha = Math.exp(hermite(xs, logs, slopes, x));
    return (alpha * x) / (1 + (alpha - 1) * x);
  };
}

function monotoneSlopes(xs: readonly number[], values: readonly number[]): readonly number[] {
  const secants = xs.slice(1).map((x, index) => {
    const rise = (values[index + 1] as number) - (values[index] as number);
    return rise / (x - (xs[index] as number));
  });
  return xs.map((_, index) => {
    const before = secants[index - 1];
    const after = secants[index];
    if (before === undefined || after === undefined) return (before ?? after) as number;
    if (before * after <= 0) return 0;
    const widthBefore = (xs[index] as number) - (xs[index - 1] as number);
    const widthAfter = (xs[index + 1] as number) - (xs[index] as number);
    const share = (widthBefore + 2 * widthAfter) / (3 * (widthBefore + widthAfter));
    return (before * after) / (share * after + (1 - share) * before);
  });
}

/** Cubic between the neighbours; a straight line beyond the first and last point. */
function hermite(
  xs: readonly number[],
  values: readonly number[],
  slopes: readonly number[],
  x: number,
): number {
  const last = xs.length - 1;
  const end = x <= (xs[0] as number) ? 0 : x >= (xs[last] as number) ? last : -1;
  if (end >= 0) {
    return (values[end] as number) + (slopes[end] as number) * (x - (xs[end] as number));
  }
  const right = xs.findIndex((node) => node > x);
  const left = right - 1;
  const width = (xs[right] as number) - (xs[left] as number);
  const t = (x - (xs[left] as number)) / width;
  return (
    (1 + 2 * t) * (1 - t) ** 2 * (values[left] as number) +
    t * (1 - t) ** 2 * width * (slopes[left] as number) +
    t * t * (3 - 2 * t) * (values[right] as number) +
    t * t * (t - 1) * width * (slopes[right] as number)
  );
}
