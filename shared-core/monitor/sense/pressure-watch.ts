import { unlikelySds } from '../certainty.ts';
import { lastsAfterS } from '../patience.ts';

/** Whether a barometer on the line says otherwise than the pressure that is reckoned by. */
export interface PressureWatch {
  /** @param shownKPa what the channel shows now; null where it shows nothing */
  second(
    timeS: number,
    shownKPa: number | null,
    reckonedKPa: number,
    standardUncertaintyKPa: number,
  ): void;
  /** Where the two differ: since when, and by what [s, kPa]; null while they don't. */
  difference(): PressureDifference | null;
}

export interface PressureDifference {
  readonly sinceS: number;
  readonly shownKPa: number;
  readonly reckonedKPa: number;
}

/** Further apart than the weather of a run and a barometer leave open [kPa]; chosen here. */
const leastKPa = 0.8;

export function createPressureWatch(): PressureWatch {
  let difference: PressureDifference | null = null;
  let changesSinceS: number | null = null;
  return {
    second: (timeS, shownKPa, reckonedKPa, standardUncertaintyKPa) => {
      const apartKPa = shownKPa === null ? 0 : Math.abs(shownKPa - reckonedKPa);
      const differs = apartKPa > Math.max(leastKPa, unlikelySds * standardUncertaintyKPa);
      if (differs === (difference !== null)) {
        changesSinceS = null;
        return;
      }
      changesSinceS ??= timeS;
      if (timeS - changesSinceS < lastsAfterS) return;
      difference =
        differs && shownKPa !== null ? { sinceS: changesSinceS, shownKPa, reckonedKPa } : null;
      changesSinceS = null;
    },
    difference: () => difference,
  };
}
