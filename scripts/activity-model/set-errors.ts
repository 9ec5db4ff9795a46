import {
  boilingState,
  type NrtlParameters,
  nrtlParameters,
  solveBubblePoint,
} from '../../shared-core/equilibrium/index.ts';
import type { VleSet } from './vle-set.ts';

/** Root-mean-square deviations of the model from one set, each found by a full solve. */
export interface SetErrors {
  readonly name: string;
  readonly temperatureRmsK: number;
  readonly temperatureBiasK: number;
  readonly pressureRmsPercent: number;
  readonly vapourRms: number | null;
}

/** Boiling temperature at the measured pressure; pressure at the measured temperature; and y. */
export function setErrors(set: VleSet, parameters: NrtlParameters = nrtlParameters): SetErrors {
  const deviations = set.points.map(({ temperatureK, pressureKPa, x, y }) => {
    const atPressure = solveBubblePoint(x, pressureKPa, parameters);
    const atTemperature = boilingState(x, temperatureK, parameters);
    const vapour = set.kind === 'isobaric' ? atPressure.y : atTemperature.y;
    return {
      temperatureK: atPressure.temperatureK - temperatureK,
      pressurePercent: 100 * (Math.exp(atTemperature.logPressure) / pressureKPa - 1),
      vapour: y === null ? null : vapour - y,
    };
  });
  const temperatures = deviations.map((d) => d.temperatureK);
  const vapours = deviations.flatMap((d) => (d.vapour === null ? [] : [d.vapour]));
  return {
    name: set.name,
    temperatureRmsK: rootMeanSquare(temperatures),
    temperatureBiasK: temperatures.reduce((sum, value) => sum + value, 0) / temperatures.length,
    pressureRmsPercent: rootMeanSquare(deviations.map((d) => d.pressurePercent)),
    vapourRms: vapours.length > 0 ? rootMeanSquare(vapours) : null,
  };
}

/** √(Σ v²/n). */
export function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}
