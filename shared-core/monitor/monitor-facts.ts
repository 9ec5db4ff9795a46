import type { RunSettings } from '../run/index.ts';
import type { Condition, ForecastView, Stage } from '../stages/index.ts';
import type { Heat } from './marks-ledger.ts';
import type { Dropouts } from './sense/dropout-watch.ts';
import type { HeadNoise } from './sense/head-noise.ts';
import type { BulbDoubt, ProbeFault } from './sense/probe-fault.ts';
import type { LimitOutlook } from './situation/limit-outlook.ts';
import type { ScaleBelief } from './situation/scale-belief.ts';
import type { Situation } from './situation/situation.ts';
import type { HeadState } from './situation/vapour-filter.ts';
import type { VapourScale } from './situation/vapour-scale.ts';

/** Everything the monitor holds true after one second: numbers only, made into words on demand. */
export interface MonitorFacts {
  readonly settings: RunSettings;
  readonly timeS: number;
  readonly stage: Stage;
  readonly stageSinceS: number;
  readonly probability: number;
  readonly condition: Condition | null;
  /** Lag-corrected, noise-freed head on the probe's own scale; null before the first reading. */
  readonly head: HeadState | null;
  readonly noise: HeadNoise;
  readonly scale: VapourScale;
  /** The strength the heat-off call watches for: the least strength, or the stop of purity against recovery. */
  readonly limitAbv: number;
  readonly bias: ScaleBelief;
  readonly situation: Situation;
  readonly outlook: LimitOutlook;
  /** How long the vapour may have been weaker than the limit before that is told of [s]. */
  readonly overLimitPatienceS: number;
  readonly firstFraction: FirstFractionProgress;
  readonly fault: ProbeFault | null;
  readonly faultSinceS: number;
  /** Dropouts of the probe that follow each other closely. */
  readonly dropouts: Dropouts;
  /** What speaks against trusting a head that is staged all the same. */
  readonly doubt: BulbDoubt | null;
  /** The last reading that was believed; the head's own state runs on without one [°C]. */
  readonly lastTrustedC: number | null;
  readonly potC: number | null;
  readonly condenserC: number | null;
  readonly heat: Heat;
  readonly heatChangedS: number | null;
  readonly attentionDueS: number | null;
  readonly forecast: ForecastView | null;
}

/** How far the person's convention for the first fraction has been met. */
export interface FirstFractionProgress {
  readonly over: boolean;
  readonly done: number;
  readonly wanted: number;
  readonly unit: 'mL' | 'drops' | 'min';
  /** True when the amount is estimated because nothing was booked. */
  readonly estimated: boolean;
}
