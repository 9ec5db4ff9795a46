import { alcoholByVolume, massFractionFromMoleFraction } from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import {
  type CombinedUncertainty,
  combineContributions,
  coverageFactor95,
  type Estimate,
  mapEstimate,
} from '../uncertainty/index.ts';
import { requireAzeotropePressure } from './azeotrope.ts';
import {
  type BelowAzeotropeClues,
  type Explanation,
  explainBelowAzeotrope,
} from './below-azeotrope.ts';
import type { BoilingState } from './boiling-state.ts';
import { dewPressurePerK } from './dew-pressure-slope.ts';
import { type HeadBounds, headBounds, solveHeadState } from './head-state.ts';
import {
  azeotropeMoleFractionUncertainty,
  equilibriumModelUncertaintyK,
} from './model-uncertainty.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/** What the thermometer and the barometer say, with their standard uncertainties (k = 1). */
export interface HeadReading {
  /** Head temperature [°C], −50 … 150. */
  readonly temperatureC: number;
  /** Local (station) air pressure [kPa], 20 … 200. */
  readonly pressureKPa: number;
  /** Standard uncertainty of the temperature [K], 0 … 20. */
  readonly temperatureUncertaintyK: number;
  /** Standard uncertainty of the pressure [kPa], 0 … 20. */
  readonly pressureUncertaintyKPa: number;
  /** What else is known, to tell why a reading may lie below the azeotrope. */
  readonly clues?: BelowAzeotropeClues;
}

/** What the vapour at the head can be. */
export interface HeadVapour {
  /**
   * `below-azeotrope`: too cold for ethanol–water vapour, beyond the 95 % uncertainty; the numbers are
   * then those of the azeotrope. `above-water`: hotter than boiling water, likewise.
   */
  readonly kind: 'below-azeotrope' | 'ethanol-water' | 'above-water';
  readonly ethanolMoleFraction: Estimate;
  readonly ethanolMassFraction: Estimate;
  /** [% vol at 20 °C] */
  readonly alcoholByVolume: Estimate;
  readonly azeotropeTemperatureC: number;
  readonly temperatureAboveAzeotropeK: number;
  /** Budget of the head temperature as a dew temperature [K]. */
  readonly uncertainty: CombinedUncertainty;
  /** Most likely first; empty unless the reading lies below the azeotrope. */
  readonly explanations: readonly Explanation[];
}

/**
 * Composition of the vapour at the still head, with its 95 % interval.
 *
 * The reading is compared with the dew curve, `T = Tdew(y, p)`, on its water-rich side. Thermometer,
 * barometer (through `∂Tdew/∂p` at constant y) and equilibrium model are combined as
 * `u² = u_T² + (u_p ∂T/∂p)² + u_model²`; the ends `T ± 1.96 u` are then carried through the curve itself
 * and stopped at the azeotrope and at water. A linear law would fail where the curve is steep: at the
 * azeotrope `∂y/∂T` is infinite.
 *
 * @param reading temperature [°C], −50 … 150; pressure [kPa], 20 … 200; standard uncertainties [K] and
 * [kPa], 0 … 20
 * @returns kind, and intervals of mole fraction, mass fraction and strength [% vol]
 * @throws OutOfRangeError outside these ranges
 * @see JCGM 100:2008, equation (10); JCGM 101:2008 for the transformed interval and the Monte Carlo test;
 * strength from OIML R 22.
 * @example
 * const reading = { pressureKPa: 101.325, temperatureUncertaintyK: 0.1, pressureUncertaintyKPa: 0.1 };
 * headVapour({ ...reading, temperatureC: 83.5 }).alcoholByVolume.value // ≈ 80 ± 1
 * headVapour({ ...reading, temperatureC: 77 }).kind // => "below-azeotrope"
 * headVapour({ ...reading, temperatureC: 102 }).kind // => "above-water"
 */
export function headVapour(reading: HeadReading): HeadVapour {
  requireHeadReading(reading);
  const bounds = headBounds(reading.pressureKPa);
  const temperatureK = reading.temperatureC + celsiusOffsetK;
  const aboveAzeotropeK = temperatureK - bounds.azeotrope.temperatureK;
  const state = solveHeadState(temperatureK, bounds);
  const uncertainty = dewTemperatureBudget(reading, state, aboveAzeotropeK);
  const reachK = coverageFactor95 * uncertainty.combinedStandardUncertainty;
  const kind =
    aboveAzeotropeK + reachK < 0
      ? 'below-azeotrope'
      : temperatureK - reachK > bounds.waterBoilingK
        ? 'above-water'
        : 'ethanol-water';
  const ethanolMoleFraction = {
    value: state.y,
    low: lowEnd(temperatureK + reachK, bounds),
    high: highEnd(temperatureK - reachK, bounds),
  };
  const ethanolMassFraction = mapEstimate(ethanolMoleFraction, massFractionFromMoleFraction);
  return {
    kind,
    ethanolMoleFraction,
    ethanolMassFraction,
    alcoholByVolume: mapEstimate(ethanolMassFraction, (massFraction) =>
      alcoholByVolume({ ethanolMassFraction: massFraction }),
    ),
    azeotropeTemperatureC: bounds.azeotrope.temperatureK - celsiusOffsetK,
    temperatureAboveAzeotropeK: aboveAzeotropeK,
    uncertainty,
    explanations:
      kind === 'below-azeotrope'
        ? explainBelowAzeotrope({
            shortfallK: -aboveAzeotropeK,
            temperatureUncertaintyK: reading.temperatureUncertaintyK,
            pressureUncertaintyKPa: reading.pressureUncertaintyKPa,
            pressurePerK: dewPressurePerK(bounds.azeotrope, reading.pressureKPa),
            ...reading.clues,
          })
        : [],
  };
}

function requireHeadReading(reading: HeadReading): void {
  requireInRange('head temperature', reading.temperatureC, -50, 150, '°C');
  requireAzeotropePressure(reading.pressureKPa);
  requireInRange('temperature uncertainty', reading.temperatureUncertaintyK, 0, 20, 'K');
  requireInRange('pressure uncertainty', reading.pressureUncertaintyKPa, 0, 20, 'kPa');
}

/** Doubts about the reading as a dew temperature, at the composition it points to. */
function dewTemperatureBudget(
  reading: HeadReading,
  state: BoilingState,
  temperatureAboveAzeotropeK: number,
): CombinedUncertainty {
  return combineContributions([
    {
      name: 'Thermometer',
      distribution: 'normal',
      inputStandardUncertainty: reading.temperatureUncertaintyK,
      sensitivity: 1,
      reason: 'as entered for the head probe [K]',
    },
    {
      name: 'Air pressure',
      distribution: 'normal',
      inputStandardUncertainty: reading.pressureUncertaintyKPa,
      sensitivity: -1 / dewPressurePerK(state, reading.pressureKPa),
      reason: 'as entered for the air pressure [kPa], through the slope of the dew curve [K/kPa]',
    },
    {
      name: 'Equilibrium model',
      distribution: 'normal',
      inputStandardUncertainty: equilibriumModelUncertaintyK({
        temperatureAboveAzeotropeK,
        pressureKPa: reading.pressureKPa,
      }),
      sensitivity: 1,
      reason: 'published measurements left out of the fit [K]',
    },
  ]);
}

/** Weakest vapour that agrees with the reading. */
function lowEnd(temperatureK: number, bounds: HeadBounds): number {
  if (temperatureK > bounds.azeotrope.temperatureK) return solveHeadState(temperatureK, bounds).y;
  return bounds.azeotrope.x - coverageFactor95 * azeotropeMoleFractionUncertainty;
}

/** Strongest vapour that agrees with the reading; where the azeotrope lies is itself uncertain. */
function highEnd(temperatureK: number, bounds: HeadBounds): number {
  if (temperatureK > bounds.azeotrope.temperatureK) return solveHeadState(temperatureK, bounds).y;
  return Math.min(1, bounds.azeotrope.x + coverageFactor95 * azeotropeMoleFractionUncertainty);
}
