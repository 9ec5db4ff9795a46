import type { Charge, Rig } from '../column/index.ts';

/** How far the inputs of a plan may be off, as standard uncertainties. */
export interface PlanUncertainty {
  /** Plates, relative, 0 … 0.5. */
  readonly platesShare: number;
  /** Heat losses of column and head, relative, 0 … 0.5. */
  readonly lossShare: number;
  /** Heat that reaches the flask, relative, 0 … 0.5. */
  readonly heatShare: number;
  /** Strength of the charge [% vol], 0 … 5. */
  readonly strengthAbv: number;
  /** Air pressure [kPa], 0 … 6. */
  readonly pressureKPa: number;
}

/** What a person who has not measured the rig knows of it: common practice, no source. */
export const usualPlanUncertainty: PlanUncertainty = {
  platesShare: 0.15,
  lossShare: 0.15,
  heatShare: 0.07,
  strengthAbv: 0.4,
  pressureKPa: 0.15,
};

/** Heat while collecting: a heater setting [W], 1 … 5000, or whatever gives a drip rate [mL/min], 0.01 … 100. */
export type CollectingHeat =
  | { readonly kind: 'heat'; readonly powerW: number }
  | { readonly kind: 'drip-rate'; readonly mlPerMin: number };

/** A run as planned the day before. */
export interface PlanRequest {
  readonly charge: Charge;
  readonly rig: Rig;
  /** Air pressure [kPa], 50 … 110. */
  readonly pressureKPa: number;
  /** Weakest distillate wanted [% vol], 10 … 94. */
  readonly leastStrengthAbv: number;
  /** How the heat is set once the pot boils; left at the rig's setting when left out, so without easing. */
  readonly collect?: CollectingHeat;
  /** Volume set aside as first fraction [mL], 0 … 1000; 1 when left out. */
  readonly firstFractionMl?: number;
  /** [°C], 5 … 40; 20 when left out. */
  readonly roomTemperatureC?: number;
  readonly uncertainty?: PlanUncertainty;
  /** Simulated runs [number], 8 … 400; 48 when left out. */
  readonly runs?: number;
}
