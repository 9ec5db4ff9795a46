import {
  alcoholByVolume,
  massFractionFromAlcoholByVolume,
  massFractionFromMoleFraction,
  moleFractionFromMassFraction,
} from '../alcoholometry/index.ts';
import { azeotrope, dewPoint } from '../equilibrium/index.ts';

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
}

const nodes = 48;

/**
 * Tabulates the dew curve from the azeotrope to water once per pressure, so that every second of a
 * run costs a look-up. Nodes lie denser towards the azeotrope, where strength changes fastest.
 */
export function createVapourScale(pressureKPa: number, leastStrengthAbv: number): VapourScale {
  const peak = azeotrope(pressureKPa);
  const above = azeotrope(pressureKPa + 0.5).temperatureC;
  const below = azeotrope(pressureKPa - 0.5).temperatureC;
  const temperatures = new Float64Array(nodes + 1);
  const strengths = new Float64Array(nodes + 1);
  for (let node = 0; node <= nodes; node += 1) {
    const y = peak.ethanolMoleFraction * (1 - (node / nodes) ** 1.5);
    temperatures[node] =
      node === 0
        ? peak.temperatureC
        : dewPoint({ ethanolMoleFraction: y, pressureKPa }).temperatureC;
    strengths[node] = alcoholByVolume({ ethanolMassFraction: massFractionFromMoleFraction(y) });
  }
  const strengthAbv = (temperatureC: number): number => {
    if (temperatureC <= (temperatures[0] as number)) return strengths[0] as number;
    let low = 0;
    let high = nodes;
    if (temperatureC >= (temperatures[high] as number)) return strengths[high] as number;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((temperatures[middle] as number) <= temperatureC) low = middle;
      else high = middle;
    }
    const from = temperatures[low] as number;
    const share = (temperatureC - from) / ((temperatures[high] as number) - from);
    return (strengths[low] as number) * (1 - share) + (strengths[high] as number) * share;
  };
  const limitMoleFraction = Math.min(
    peak.ethanolMoleFraction,
    moleFractionFromMassFraction(
      massFractionFromAlcoholByVolume({ alcoholByVolume: leastStrengthAbv }),
    ),
  );
  return {
    pressureKPa,
    azeotropeC: peak.temperatureC,
    limitC: dewPoint({ ethanolMoleFraction: limitMoleFraction, pressureKPa }).temperatureC,
    waterC: temperatures[nodes] as number,
    kelvinPerKPa: above - below,
    strengthAbv,
  };
}
