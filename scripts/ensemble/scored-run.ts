import type { RunInput, RunSettings } from '#shared-core';

/** What scoring must know of one true second, whichever still it was. */
export interface TrueSecond {
  readonly timeS: number;
  /** Share of the bulb in vapour, 0 … 1. */
  readonly bathedFraction: number;
  readonly bulbTemperatureC: number;
  readonly headVapourStrengthAbv: number;
  readonly distillateVolumeMl: number;
  /** Collected so far while the vapour was at least as strong as the limit, and while it was weaker. */
  readonly aboveLimitMl: number;
  readonly belowLimitMl: number;
  readonly aboveLimitEthanolMol: number;
}

/** A run whose truth is known: what happened, and what the probe and the person reported of it. */
export interface ScoredRun {
  readonly settings: RunSettings;
  /** Second by second from 0. */
  readonly samples: readonly TrueSecond[];
  readonly inputs: readonly RunInput[];
  readonly endS: number;
  /** Heat taken off for good. */
  readonly heatOffS: number;
  readonly readsVolumes: boolean;
}
