import type { RunSettings } from '../../run/index.ts';
import { unlikelySds } from '../certainty.ts';
import { createVapourScale, type VapourScale } from './vapour-scale.ts';

/** The scale at the air pressure known and the strength watched for; both may change in mid-run. */
export interface LimitScale {
  scale(): VapourScale;
  limitAbv(): number;
  /** The run's settings with the air pressure as it is known by now, and how well. */
  settings(): RunSettings;
  /** What a person read from a barometer in the run; an impossible reading is left aside. */
  setPressure(pressureKPa: number): void;
  /**
   * What a channel shows of the air pressure, which nobody vouches for: it fills in what no person has read, as far as
   * that leaves room for it, and never takes the place of what one has.
   */
  hearPressure(pressureKPa: number): void;
  /** Where purity is weighed against recovery the limit follows the forecast, in half per cents. */
  setLimit(limitAbv: number): void;
}

/** Less moves the limit by 5 mK, which no probe shows: it is not reckoned anew [kPa]. */
const pressureStepKPa = 0.02;
/** What a barometer can show where people distil; the model's own range. */
const lowestKPa = 60;
const highestKPa = 110;
/** How well a barometer that was read in the run is believed [kPa]; a wall or pocket instrument, common practice, no source. */
const readSdKPa = 0.3;

export function createLimitScale(settings: RunSettings): LimitScale {
  let known = settings;
  let limitAbv = settings.leastStrengthAbv;
  let scale = createVapourScale(settings.pressure.pressureKPa, limitAbv);

  const know = (pressure: RunSettings['pressure']): void => {
    if (pressure === known.pressure) return;
    known = { ...settings, pressure };
    if (Math.abs(pressure.pressureKPa - scale.pressureKPa) < pressureStepKPa) return;
    scale = createVapourScale(pressure.pressureKPa, limitAbv);
  };

  return {
    scale: () => scale,
    limitAbv: () => limitAbv,
    settings: () => known,
    setPressure: (pressureKPa) => know(withPressure(known.pressure, pressureKPa, 'barometer')),
    hearPressure: (pressureKPa) => know(withHeardPressure(known.pressure, pressureKPa)),
    setLimit: (wantedAbv) => {
      const bounded = Math.round(2 * Math.max(10, Math.min(95, wantedAbv))) / 2;
      if (bounded === limitAbv) return;
      limitAbv = bounded;
      scale = createVapourScale(scale.pressureKPa, limitAbv);
    },
  };
}

/** The pressure as it is known once somebody or something has shown it, whatever it was known by; as before where no air pressure can be like that. */
export function withPressure(
  before: RunSettings['pressure'],
  pressureKPa: number,
  source: RunSettings['pressure']['source'],
): RunSettings['pressure'] {
  if (!(pressureKPa >= lowestKPa && pressureKPa <= highestKPa)) return before;
  const standardUncertaintyKPa = Math.min(before.standardUncertaintyKPa, readSdKPa);
  return { ...before, pressureKPa, standardUncertaintyKPa, source };
}

/** The pressure as it is known once a channel has shown it: as before where that leaves no room for it. */
export function withHeardPressure(
  before: RunSettings['pressure'],
  pressureKPa: number,
): RunSettings['pressure'] {
  return leavesRoomFor(before, pressureKPa) ? withPressure(before, pressureKPa, 'channel') : before;
}

/**
 * No place has had a higher air pressure than this, reduced to sea level (Tosontsengel, 2001; from memory of the World Meteorological
 * Organization's archive of extremes) [kPa].
 */
const highestEverKPa = 108.5;

/** Whether a pressure was only guessed at, and may be this one. What stands at an end of what can be shown may lie anywhere beyond it. */
function leavesRoomFor(
  { source, pressureKPa, standardUncertaintyKPa }: RunSettings['pressure'],
  heardKPa: number,
): boolean {
  if (source === 'assumed') return heardKPa > lowestKPa && heardKPa <= highestEverKPa;
  const withinKPa = unlikelySds * standardUncertaintyKPa;
  return source === 'altitude' && Math.abs(heardKPa - pressureKPa) <= withinKPa;
}
