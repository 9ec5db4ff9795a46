import type { RunSettings } from '../run/index.ts';
import type { ForecastView } from '../snapshot/forecast-view.ts';
import type { Condition, Stage } from '../snapshot/stage.ts';
import type { BiasBelief } from './bias-belief.ts';
import type { DoubtfulRise } from './doubtful-rise-watch.ts';
import type { Dropouts } from './dropout-watch.ts';
import type { HeadNoise, HeadState } from './head-filter.ts';
import type { LimitOutlook } from './limit-outlook.ts';
import type { Heat } from './marks-ledger.ts';
import type { PlateauView } from './plateau-watch.ts';
import type { BulbDoubt, ProbeFault } from './probe-fault.ts';
import type { VapourScale } from './vapour-scale.ts';

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
  readonly pressureSdKPa: number;
  readonly bias: BiasBelief;
  readonly plateau: PlateauView;
  readonly outlook: LimitOutlook;
  /** True once the head has been held below the limit: only then is there something to call off. */
  readonly heatOffArmed: boolean;
  /** How long the vapour has been weaker than the limit without doubt [s]. */
  readonly overLimitForS: number;
  /** How long it may be before that is told of [s]. */
  readonly overLimitPatienceS: number;
  /** How long the limit has been passed by a head that came below it but hardly held there [s]. */
  readonly limitPassedUnheldForS: number;
  readonly firstFraction: FirstFractionProgress;
  readonly fault: ProbeFault | null;
  readonly faultSinceS: number;
  /** Dropouts of the probe that follow each other closely. */
  readonly dropouts: Dropouts;
  /** What speaks against trusting a head that is staged all the same. */
  readonly doubt: BulbDoubt | null;
  /** How a head that was doubted has risen clear of all it read before. */
  readonly doubtfulRise: DoubtfulRise | null;
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
