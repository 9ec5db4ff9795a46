import type { EquilibriumCurve } from './equilibrium-curve.ts';

/** Liquid composition whose vapour is y: the equilibrium curve read backwards, by bisection. */
export function liquidUnderVapour(equilibrium: EquilibriumCurve, y: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (equilibrium(middle) < y) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
