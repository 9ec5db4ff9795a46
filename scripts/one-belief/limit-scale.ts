import type { RunSettings } from '#shared-core';
import { createVapourScale, type VapourScale } from '../../shared-core/monitor/vapour-scale.ts';

/** The scale at the air pressure known and the strength watched for; both may change in mid-run. */
export interface LimitScale {
  scale(): VapourScale;
  limitAbv(): number;
  /** A reading of the barometer; an impossible one is left aside. */
  setPressure(pressureKPa: number): void;
  /** Where purity is weighed against recovery the limit follows the forecast, in half per cents. */
  setLimit(limitAbv: number): void;
}

const pressureStepKPa = 0.02;
/** What a barometer can show where people distil; the model's own range. */
const lowestKPa = 60;
const highestKPa = 110;

export function createLimitScale(settings: RunSettings): LimitScale {
  let limitAbv = settings.leastStrengthAbv;
  let scale = createVapourScale(settings.pressure.pressureKPa, limitAbv);
  return {
    scale: () => scale,
    limitAbv: () => limitAbv,
    setPressure: (pressureKPa) => {
      if (pressureKPa < lowestKPa || pressureKPa > highestKPa) return;
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
