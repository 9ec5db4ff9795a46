import type { NrtlParameters } from '../../shared-core/equilibrium/index.ts';
import { boilingState, logSaturationPressure } from '../../shared-core/equilibrium/index.ts';
import {
  excessEnthalpyGuide,
  excessEnthalpyJPerMol,
  excessEnthalpyUncertaintyJPerMol,
} from './excess-enthalpy.ts';
import { fitLeastSquares } from './least-squares.ts';
import { realVapourFactors } from './vapour-correction.ts';
import type { VlePoint, VleSet } from './vle-set.ts';

/** What may be switched to see whether it helps. */
export interface ModelVariant {
  readonly alpha: 'constant' | 'linear in T';
  readonly guide: 'none' | 'excess enthalpy';
  readonly vapour: 'ideal' | 'virial';
}

export const chosenVariant: ModelVariant = {
  alpha: 'linear in T',
  guide: 'excess enthalpy',
  vapour: 'ideal',
};

/** Fits one variant to some sets. */
export function fitModel(sets: readonly VleSet[], variant: ModelVariant): NrtlParameters {
  const linear = variant.alpha === 'linear in T';
  const start = [0, 0, 0, 1.5, 0.3, ...(linear ? [0] : [])];
  const residualsOf = (values: readonly number[]) => {
    const parameters = toParameters(values);
    return [
      ...sets.flatMap((set) =>
        set.points.flatMap((point) => weighted(set, point, parameters, variant)),
      ),
      ...(variant.guide === 'none' ? [] : guideResiduals(parameters)),
    ];
  };
  return toParameters(fitLeastSquares(residualsOf, start));
}

/** Model minus measurement at one point: as a temperature [K] and as a vapour mole fraction. */
export function deviations(
  point: VlePoint,
  parameters: NrtlParameters,
  variant: ModelVariant,
): { readonly temperatureK: number; readonly vapour: number | null } {
  const { temperatureK, pressureKPa, x, y } = point;
  const ideal = boilingState(x, temperatureK, parameters);
  let pressure = Math.exp(ideal.logPressure);
  let vapour = ideal.y;
  if (variant.vapour === 'virial') {
    const saturation = {
      ethanolKPa: Math.exp(logSaturationPressure('ethanol', temperatureK).value),
      waterKPa: Math.exp(logSaturationPressure('water', temperatureK).value),
    };
    const idealPressure = pressure;
    for (let pass = 0; pass < 8; pass++) {
      const factors = realVapourFactors(temperatureK, pressure, saturation);
      const ethanol = idealPressure * ideal.y * factors.ethanol;
      pressure = ethanol + idealPressure * (1 - ideal.y) * factors.water;
      vapour = ethanol / pressure;
    }
  }
  return {
    // A pressure too high by one part is a boiling temperature too low.
    temperatureK: -Math.log(pressure / pressureKPa) / ideal.logPressurePerK,
    vapour: y === null ? null : vapour - y,
  };
}

function weighted(
  set: VleSet,
  point: VlePoint,
  parameters: NrtlParameters,
  variant: ModelVariant,
): readonly number[] {
  const { temperatureK, vapour } = deviations(point, parameters, variant);
  return [
    temperatureK / set.temperatureUncertaintyK,
    ...(vapour === null ? [] : [vapour / set.vapourUncertainty]),
  ];
}

function guideResiduals(parameters: NrtlParameters): readonly number[] {
  return excessEnthalpyGuide.map(
    ({ temperatureK, x, valueJPerMol }) =>
      (excessEnthalpyJPerMol(x, temperatureK, parameters) - valueJPerMol) /
      excessEnthalpyUncertaintyJPerMol,
  );
}

function toParameters(values: readonly number[]): NrtlParameters {
  const [a12 = 0, b12 = 0, a21 = 0, b21 = 0, alpha0 = 0, alpha1 = 0] = values;
  return { a12, b12, a21, b21, alpha0, alpha1 };
}
