import { requireInRange } from '../result/index.ts';
import { vaporizationHeatJPerMl } from '../thermo/index.ts';
import type { Rig } from './rig.ts';

/** Temperatures met while the main fraction comes over [°C]: pot, middle of the column, head. */
const usualC = { pot: 94, column: 82, head: 78.5 };
/** Strength met there [% vol]: what a short packed column gives; common practice, no source. */
const usualDistillateAbv = 92;

/**
 * Heat into the flask at which a rig runs at a reflux ratio while the main fraction comes over:
 * `P = Q_flask + Q + Q/((R + 1)(1 − r) − 1)`, with Q the heat lost by column and head and r the share of the
 * condensate led back. Without a reflux divider (r = 0) this is the drip-rate rule `R = Q ÷ distillate duty`.
 *
 * @param rig losses and returned fraction are used; valid ranges stand beside its fields
 * @param refluxRatio liquid going down per distillate [mol/mol], more than r/(1 − r), at most 1000
 * @param roomTemperatureC [°C], 5 … 40
 * @returns heat [W] that gives a ratio from 2 up within a fifth: the temperatures along the still are taken as
 * usual ones; below, the distillate is weak, the column hotter, and the reflux more than asked for
 * @throws OutOfRangeError outside these ranges
 *
 * Source: heat balance over column and head at steady state; our own derivation.
 * @example
 * heaterPowerForRefluxW(teachingRigs.wirePacking, 3, 20) // ≈ 58 ± 3
 */
export function heaterPowerForRefluxW(
  rig: Rig,
  refluxRatio: number,
  roomTemperatureC: number,
): number {
  const dividerRatio = rig.returnedFraction / (1 - rig.returnedFraction);
  requireInRange('reflux ratio', refluxRatio, dividerRatio + 1e-3, 1000, 'mol/mol');
  const { flaskW, columnW } = lossesW(rig, roomTemperatureC);
  return flaskW + columnW + columnW / ((refluxRatio + 1) * (1 - rig.returnedFraction) - 1);
}

/**
 * Heat into the flask at which a rig drips at a rate while the main fraction comes over:
 * `P = Q_flask + Q + q D/(1 − r)`, with q the heat that vaporizes one mL of a distillate of 92 % vol.
 *
 * @param rig losses and returned fraction (below 1) are used; valid ranges stand beside its fields
 * @param dripRateMlPerMin distillate [mL/min], 0 … 100
 * @param roomTemperatureC [°C], 5 … 40
 * @returns heat [W] that gives the rate within a sixth
 * @throws OutOfRangeError outside these ranges
 *
 * Source: heat balance over the still at steady state; our own derivation; q from {@link vaporizationHeatJPerMl}.
 * @example
 * heaterPowerForDripRateW(teachingRigs.wirePacking, 0.9, 20) // ≈ 60 ± 3
 */
export function heaterPowerForDripRateW(
  rig: Rig,
  dripRateMlPerMin: number,
  roomTemperatureC: number,
): number {
  requireInRange('drip rate', dripRateMlPerMin, 0, 100, 'mL/min');
  requireInRange('returned fraction', rig.returnedFraction, 0, 0.999, '');
  const { flaskW, columnW } = lossesW(rig, roomTemperatureC);
  const dutyJPerMl = vaporizationHeatJPerMl({
    strengthAbv: usualDistillateAbv,
    temperatureC: usualC.head,
  });
  return flaskW + columnW + ((dutyJPerMl / 60) * dripRateMlPerMin) / (1 - rig.returnedFraction);
}

function lossesW(rig: Rig, roomTemperatureC: number): { flaskW: number; columnW: number } {
  requireInRange('room temperature', roomTemperatureC, 5, 40, '°C');
  return {
    flaskW: rig.flask.lossWPerK * (usualC.pot - roomTemperatureC),
    columnW:
      rig.column.lossWPerK * (usualC.column - roomTemperatureC) +
      rig.head.lossWPerK * (usualC.head - roomTemperatureC),
  };
}
