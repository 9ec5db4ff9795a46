import type { ChargeSetting } from './run-settings.ts';

/**
 * Of a volume read in a 100 mL measuring cylinder to half a mark: so much at any volume, and a share of it [mL, 1].
 * Common practice, no source.
 */
export const cylinderDoubt = { constantMl: 0.5, share: 0.005 } as const;
/** Of a strength by an instrument of a classroom [% vol]; common practice, no source. */
export const usualChargeDoubtAbv = 0.5;

/**
 * Standard uncertainty of the volume that was charged: as stated, or that of a measuring cylinder, `u = √(0.5² + (0.005 V)²)` mL.
 *
 * @param charge volume [mL] 0 … 50 000, and its standard uncertainty [mL] where somebody stated one
 * @returns standard uncertainty (k = 1) [mL]
 *
 * Source: common practice, no source; see `cylinderDoubt`.
 * @example
 * chargeDoubtMl({ volumeMl: 350 }) // ≈ 1.82 ± 0.01
 * chargeDoubtMl({ volumeMl: 350, standardUncertaintyMl: 5 }) // => 5
 */
export function chargeDoubtMl({
  volumeMl,
  standardUncertaintyMl,
}: Pick<ChargeSetting, 'volumeMl' | 'standardUncertaintyMl'>): number {
  return (
    standardUncertaintyMl ?? Math.hypot(cylinderDoubt.constantMl, cylinderDoubt.share * volumeMl)
  );
}
