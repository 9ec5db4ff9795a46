import type { Estimate } from '../uncertainty/index.ts';

/** A fraction as expected; null where the run does not give it. */
export interface FractionPlan {
  /** When it begins and ends [s]. */
  readonly fromS: Estimate;
  readonly toS: Estimate;
  /** How long it lasts [s]: beginning and end hang together, so their ranges don't tell. */
  readonly lengthS: Estimate;
  /** [mL at 20 °C]. */
  readonly volumeMl: Estimate;
  /** Mean strength [% vol]. */
  readonly strengthAbv: Estimate;
}

/** One point of what is gained in strength by giving up yield. */
export interface PurityPoint {
  /** Share of the charge's ethanol collected since the first fraction, 0 … 1. */
  readonly recoveredFraction: number;
  /** Mean strength of what is collected until then [% vol]. */
  readonly strengthAbv: Estimate;
  /** Strength of the vapour at that moment [% vol]. */
  readonly vapourStrengthAbv: Estimate;
}

/** The head's temperature as expected at one moment. */
export interface CoursePoint {
  readonly timeS: number;
  readonly headTemperatureC: Estimate;
}

/** Why no main fraction is expected. */
export type NoMainFractionCause =
  | 'no-column'
  | 'too-few-plates'
  | 'too-little-reflux'
  | 'weak-charge';

/** What would help, each taken alone; null where it could not. */
export interface Remedies {
  /** Plates the column would need at the present reflux. */
  readonly plates: number | null;
  /** Heat while collecting that gives enough reflux [W]. */
  readonly collectW: number | null;
  /** Strength the charge would need [% vol]. */
  readonly chargeStrengthAbv: number | null;
  /** Limit that this rig can keep with this charge [% vol]. */
  readonly leastStrengthAbv: number | null;
}

export type PlanVerdict =
  | { readonly kind: 'main-fraction'; readonly probability: number }
  | {
      readonly kind: 'no-main-fraction';
      /** Probability that there is one after all. */
      readonly probability: number;
      readonly cause: NoMainFractionCause;
      /** Reflux ratio expected while collecting, and the one this strength needs; null when none suffices. */
      readonly refluxRatio: number;
      readonly neededRefluxRatio: number | null;
      readonly remedies: Remedies;
    };

/**
 * What to expect of a run. Every interval holds 90 % of the simulated runs; `value` is their median. The first four
 * temperatures also count what the equilibrium model may be off.
 */
export interface RunPlan {
  readonly boilingPointC: Estimate;
  readonly azeotropeC: Estimate;
  /** Head temperature at which the vapour is as weak as the limit. */
  readonly limitTemperatureC: Estimate;
  /** Head temperature in the middle of the main fraction; null without one. */
  readonly plateauC: Estimate | null;
  readonly timeToVapourS: Estimate | null;
  readonly refluxRatio: Estimate | null;
  readonly firstFraction: FractionPlan | null;
  readonly mainFraction: FractionPlan | null;
  readonly tail: FractionPlan | null;
  readonly durationS: Estimate;
  /** Share of the charge's ethanol in the main fraction; null without one. */
  readonly recoveredFraction: Estimate | null;
  readonly purityAgainstRecovery: readonly PurityPoint[];
  readonly course: readonly CoursePoint[];
  readonly verdict: PlanVerdict;
}
