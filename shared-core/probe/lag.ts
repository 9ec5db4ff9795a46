import { fail, type Result, requireInRange, succeed } from '../result/index.ts';
import type { TimedTemperature } from './regression-line.ts';

/**
 * Time constant of a first-order probe from its 90 % response time: `τ = t90 / ln 10`.
 *
 * @param t90S time to show 90 % of a step [s], 0 … 600
 * @returns time constant [s]
 * @throws OutOfRangeError outside this range
 *
 * Source: step response of a first-order system, `1 − e^(−t/τ) = 0.9`.
 *
 * @example
 * lagTimeConstantS(15) // ≈ 6.514 ± 0.001
 */
export function lagTimeConstantS(t90S: number): number {
  requireInRange('response time t90', t90S, 0, 600, 's');
  return t90S / Math.LN10;
}

/**
 * How far a first-order probe stays behind a steady ramp: `lag = τ dT/dt`, reached after about 3 τ.
 *
 * @param ramp time constant [s], 0 … 300; slope [K/s], any finite number −10 … 10
 * @returns what the probe shows too little (positive while heating) [K]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: ramp response of a first-order system.
 *
 * @example
 * rampLagK({ timeConstantS: 6.5, slopeKPerS: 0.1 }) // ≈ 0.65 ± 1e-9
 */
export function rampLagK(ramp: {
  readonly timeConstantS: number;
  readonly slopeKPerS: number;
}): number {
  requireInRange('time constant', ramp.timeConstantS, 0, 300, 's');
  requireInRange('slope', ramp.slopeKPerS, -10, 10, 'K/s');
  return ramp.timeConstantS * ramp.slopeKPerS;
}

/** Readings while the probe is moved from one steady bath to another. */
export interface Plunge {
  /** In the order of time, the first at or after the plunge. */
  readonly readings: readonly TimedTemperature[];
  readonly plungeTimeS: number;
  readonly startC: number;
  readonly endC: number;
}

/** Why a plunge gives no response time. */
export type PlungeProblem =
  | { readonly kind: 'not-a-number' }
  | { readonly kind: 'step-too-small'; readonly stepK: number; readonly leastK: number }
  | { readonly kind: 'never-reached'; readonly lastC: number; readonly targetC: number };

const leastStepK = 10;

/**
 * 90 % response time from a plunge, by the rule `T(t90) = start + 0.9 (end − start)`, interpolated between readings.
 * It belongs to the bath: in moving vapour a bulb answers otherwise than in stirred water.
 *
 * @param plunge times [s], temperatures [°C]; start and end must be at least 10 K apart
 * @returns t90 [s], or why there is none
 *
 * Source: definition of the response time, IEC 60751:2008, 6.5.2 (from memory).
 *
 * @example
 * const readings = Array.from({ length: 41 }, (_, timeS) => ({ timeS, temperatureC: 100 * (1 - Math.exp(-timeS / 6)) }));
 * t90FromPlunge({ readings, plungeTimeS: 0, startC: 0, endC: 100 }).value // ≈ 13.82 ± 0.02
 */
export function t90FromPlunge(plunge: Plunge): Result<number, PlungeProblem> {
  const { readings, plungeTimeS, startC, endC } = plunge;
  const numbers = readings.flatMap(({ timeS, temperatureC }) => [timeS, temperatureC]);
  if (![...numbers, plungeTimeS, startC, endC].every((value) => Number.isFinite(value))) {
    return fail({ kind: 'not-a-number' });
  }
  const stepK = endC - startC;
  if (Math.abs(stepK) < leastStepK) {
    return fail({ kind: 'step-too-small', stepK, leastK: leastStepK });
  }
  const partOf = (temperatureC: number) => (temperatureC - startC) / stepK;
  let before: TimedTemperature = { timeS: plungeTimeS, temperatureC: startC };
  for (const reading of readings) {
    const reached = partOf(reading.temperatureC);
    if (reached >= 0.9) {
      const from = partOf(before.temperatureC);
      const share = reached === from ? 1 : (0.9 - from) / (reached - from);
      return succeed(before.timeS + share * (reading.timeS - before.timeS) - plungeTimeS);
    }
    before = reading;
  }
  return fail({
    kind: 'never-reached',
    lastC: before.temperatureC,
    targetC: startC + 0.9 * stepK,
  });
}
