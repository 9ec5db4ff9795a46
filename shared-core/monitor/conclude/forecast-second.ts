import type { Stage } from '../../stages/index.ts';
import type { Situation } from '../situation/situation.ts';
import type { HeadState } from '../situation/vapour-filter.ts';
import type { VapourScale } from '../situation/vapour-scale.ts';

/** One second, as far as the forecast needs it. */
export interface ForecastSecond {
  readonly timeS: number;
  readonly stage: Stage;
  readonly head: HeadState;
  readonly situation: Situation;
  readonly scale: VapourScale;
  /** What the offset may be by what was stated [K]. */
  readonly statedSdK: number;
  /** What of it the air pressure leaves open [K]. */
  readonly pressureSdK: number;
  readonly potC: number | null;
  /** Distillate by a balance or level channel [mL]; null without one. */
  readonly receiverMl: number | null;
  /** All that rises runs back: the pot keeps what it has. */
  readonly nothingCollected: boolean;
  /** The same by what people have booked alone. */
  readonly nothingCollectedByMarks: boolean;
  readonly suspended: boolean;
}
