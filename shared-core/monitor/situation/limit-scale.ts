import type { RunSettings } from '../../run/index.ts';
import { createVapourScale, type VapourScale } from './vapour-scale.ts';

/** The scale at the air pressure known and the strength watched for; both may change in mid-run. */
export interface LimitScale {
  scale(): VapourScale;
  limitAbv(): number;
  /** The run's settings with the air pressure as it is known by now, and how well. */
  settings(): RunSettings;
  /** A reading of the barometer; an impossible one is left aside. */
  setPressure(pressureKPa: number): void;
  /** Where purity is weighed against recovery the limit follows the forecast, in half per cents. */
  setLimit(limitAbv: number): void;
}

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
  return {
    scale: () => scale,
    limitAbv: () => limitAbv,
    settings: () => known,
    setPressure: (pressureKPa) => {
      if (pressureKPa < lowestKPa || pressureKPa > highestKPa) return;
      const { standardUncertaintyKPa, altitudeM } = settings.pressure;
      known = {
        ...settings,
        pressure: {
          pressureKPa,
          standardUncertaintyKPa: Math.min(standardUncertaintyKPa, readSdKPa),
          source: 'barometer',
          altitudeM,
        },
      };
      if (Math.abs(pressureKPa - scale.pressureKPa) < pressureStepKPa) return;
      scale = createVapourScale(pressureKPa, limitAbv);
    },
    setLimit: (wantedAbv) => {
      const bounded = Math.round(2 * Math.max(10, Math.min(95, wantedAbv))) / 2;
      if (bounded === limitAbv) return;
      limitAbv = bounded;
      scale = createVapourScale(scale.pressureKPa, limitAbv);
    },
  };
}
