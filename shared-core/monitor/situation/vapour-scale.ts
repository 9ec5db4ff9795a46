import { alcoholByVolume, massFractionFromMoleFraction } from '../../alcoholometry/index.ts';
import {
  azeotropeSlopeKPerKPa,
  equilibriumModelUncertaintyK,
  headVapourTable,
  limitTemperatureC,
} from '../../equilibrium/index.ts';

/** What head temperatures mean at one air pressure and one least strength. */
export interface VapourScale {
  readonly pressureKPa: number;
  readonly azeotropeC: number;
  /** Dew temperature of vapour at the least strength. */
  readonly limitC: number;
  /** Dew temperature of pure water. */
  readonly waterC: number;
  /** How fast the azeotrope moves with pressure. */
  readonly kelvinPerKPa: number;
  /** Vapour strength in % vol at a head temperature; clamped to the azeotrope and to water. */
  strengthAbv(temperatureC: number): number;
  /** Standard uncertainty of the equilibrium model at a head temperature [K]. */
  modelSdK(temperatureC: number): number;
}

export function createVapourScale(pressureKPa: number, leastStrengthAbv: number): VapourScale {
  const table = headVapourTable(pressureKPa);
  const azeotropeC = table.azeotropeTemperatureC;
  return {
    pressureKPa,
    azeotropeC,
    limitC: limitTemperatureC({ leastStrengthAbv, pressureKPa }),
    waterC: table.waterBoilingTemperatureC,
    kelvinPerKPa: azeotropeSlopeKPerKPa(pressureKPa),
    strengthAbv: (temperatureC) =>
      alcoholByVolume({
        ethanolMassFraction: massFractionFromMoleFraction(
          table.ethanolMoleFractionAt(Math.min(150, Math.max(-50, temperatureC))),
        ),
      }),
    modelSdK: (temperatureC) =>
      equilibriumModelUncertaintyK({
        temperatureAboveAzeotropeK: Math.min(100, Math.max(-100, temperatureC - azeotropeC)),
        pressureKPa,
      }),
  };
}
