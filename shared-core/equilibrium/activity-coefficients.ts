import { requireInRange } from '../result/index.ts';
import {
  type NrtlParameters,
  nrtlParameters,
  nrtlReferenceTemperatureK,
} from './nrtl-parameters.ts';

/** Logarithms of both activity coefficients with their derivatives; index 1 ethanol, 2 water. */
export interface LogActivityCoefficients {
  readonly ln1: number;
  readonly ln2: number;
  readonly ln1PerX: number;
  readonly ln2PerX: number;
  readonly ln1PerK: number;
  readonly ln2PerK: number;
}

/**
 * Activity coefficients of ethanol and water in the liquid by the NRTL equation, without range checks: ln γ and its analytic
 * derivatives in mole fraction and temperature.
 * `ln γ1 = x2² [τ21 (G21/(x1 + x2 G21))² + τ12 G12/(x2 + x1 G12)²]`, `G = exp(−ατ)`, and the same with
 * indices exchanged; `τ = a + b T0/T`, `α = α0 + α1 (T/T0 − 1)`.
 *
 * @param x mole fraction of ethanol in the liquid [mol/mol], 0 … 1
 * @param temperatureK of the liquid [K], 300 … 400 by the fit
 * @param parameters a12, b12, a21, b21, alpha0, alpha1 of the activity model [1], near the fitted ones
 *
 * @see Renon & Prausnitz, AIChE J. 14 (1968) 135; parameters fitted here, see nrtl-parameters.ts.
 * @example
 * logActivityCoefficients(1, 351).ln1 // => 0
 */
export function logActivityCoefficients(
  x: number,
  temperatureK: number,
  parameters: NrtlParameters = nrtlParameters,
): LogActivityCoefficients {
  const { a12, b12, a21, b21, alpha0, alpha1 } = parameters;
  const inverse = nrtlReferenceTemperatureK / temperatureK;
  const w = 1 - x;

  const t12 = a12 + b12 * inverse;
  const t21 = a21 + b21 * inverse;
  const alpha = alpha0 + alpha1 * (1 / inverse - 1);
  const t12PerK = (-b12 * inverse) / temperatureK;
  const t21PerK = (-b21 * inverse) / temperatureK;
  const alphaPerK = alpha1 / nrtlReferenceTemperatureK;

  const g12 = Math.exp(-alpha * t12);
  const g21 = Math.exp(-alpha * t21);
  const g12PerK = -g12 * (alphaPerK * t12 + alpha * t12PerK);
  const g21PerK = -g21 * (alphaPerK * t21 + alpha * t21PerK);

  // s1 and s2 are the local-composition sums around an ethanol and a water molecule.
  const s1 = x + w * g21;
  const s2 = w + x * g12;
  const r21 = g21 / s1;
  const r12 = g12 / s2;
  const r21PerX = (-r21 * (1 - g21)) / s1;
  const r12PerX = (-r12 * (g12 - 1)) / s2;
  const r21PerK = (g21PerK - r21 * w * g21PerK) / s1;
  const r12PerK = (g12PerK - r12 * x * g12PerK) / s2;

  const near1 = t21 * r21 * r21;
  const far1 = (t12 * r12) / s2;
  const near2 = t12 * r12 * r12;
  const far2 = (t21 * r21) / s1;
  const near1PerX = 2 * t21 * r21 * r21PerX;
  const near2PerX = 2 * t12 * r12 * r12PerX;
  const far1PerX = 2 * far1 * (r12PerX / r12);
  const far2PerX = 2 * far2 * (r21PerX / r21);
  const near1PerK = t21PerK * r21 * r21 + 2 * t21 * r21 * r21PerK;
  const near2PerK = t12PerK * r12 * r12 + 2 * t12 * r12 * r12PerK;
  const far1PerK = (t12PerK * r12 + t12 * (r12PerK - (r12 * x * g12PerK) / s2)) / s2;
  const far2PerK = (t21PerK * r21 + t21 * (r21PerK - (r21 * w * g21PerK) / s1)) / s1;

  return {
    ln1: w * w * (near1 + far1),
    ln2: x * x * (near2 + far2),
    ln1PerX: w * (w * (near1PerX + far1PerX) - 2 * (near1 + far1)),
    ln2PerX: x * (x * (near2PerX + far2PerX) + 2 * (near2 + far2)),
    ln1PerK: w * w * (near1PerK + far1PerK),
    ln2PerK: x * x * (near2PerK + far2PerK),
  };
}

/** A liquid mixture at a temperature. */
export interface LiquidState {
  /** Mole fraction of ethanol in the liquid, 0 … 1. */
  readonly ethanolMoleFraction: number;
  /** Temperature [°C]. */
  readonly temperatureC: number;
}

/** Throws unless the liquid lies in the range in which the activity model may be evaluated. */
export function requireLiquidState({ ethanolMoleFraction, temperatureC }: LiquidState): void {
  requireInRange('ethanol mole fraction', ethanolMoleFraction, 0, 1, 'mol/mol');
  requireInRange('temperature', temperatureC, 0, 130, '°C');
}
