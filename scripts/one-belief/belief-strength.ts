import { lagTimeConstantS, type RunSettings } from '#shared-core';
import type { VapourScale } from '../../shared-core/monitor/vapour-scale.ts';
import type { HeadNow } from './head-course.ts';
import { trueTemperatureQuantileC } from './scale-belief.ts';

/** The bulb must be as surely in vapour as that, and the vapour move slower than this [K/s]. */
const surelyWet = 0.7;
const fastestKPerS = 4 / 60;
/** How well the lag of the bulb is known, as a share of it; chosen here. */
const lagShareSd = 0.3;

/** Strength of the vapour at the head with its 95 % interval; null where none can be told. */
export function beliefStrength(
  { head, situation, belief }: HeadNow,
  scale: VapourScale,
  settings: RunSettings,
): { readonly value: number; readonly low: number; readonly high: number } | null {
  if (head === null || situation.bathedS === null || situation.recededSinceS !== null) return null;
  if (head.wet < surelyWet || Math.abs(head.rateKPerS) > fastestKPerS) return null;
  const vapourC = head.vapourC - belief.meanK;
  const lagSdK = lagShareSd * Math.abs(head.vapourC - head.bulbC);
  const rateSdK = lagShareSd * lagTimeConstantS(settings.probe.lagT90S) * Math.abs(head.rateKPerS);
  const headSdK = Math.hypot(head.vapourSdK, scale.modelSdK(vapourC), lagSdK, rateSdK);
  const at = (probability: number): number =>
    trueTemperatureQuantileC(belief, head.vapourC, headSdK, probability);
  const leastSure = scale.strengthAbv(scale.azeotropeC + Math.hypot(headSdK, belief.sdK));
  return {
    value: scale.strengthAbv(vapourC),
    low: Math.min(scale.strengthAbv(at(0.975)), leastSure),
    high: scale.strengthAbv(at(0.025)),
  };
}
