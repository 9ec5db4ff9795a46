import { equilibriumModelUncertaintyK } from '../equilibrium/index.ts';
import { coverageFactor90, type Estimate } from '../uncertainty/index.ts';

/**
 * An equilibrium temperature over the uncertain inputs, with what the equilibrium model itself may be off: half
 * widths add as squares, `√(b² + (1.645 u)²)`, since the two have nothing to do with each other.
 */
export function withModelDoubt(
  temperatureC: Estimate,
  place: { readonly azeotropeC: number; readonly pressureKPa: number },
): Estimate {
  const { value, low, high } = temperatureC;
  const doubtK =
    coverageFactor90 *
    equilibriumModelUncertaintyK({
      temperatureAboveAzeotropeK: value - place.azeotropeC,
      pressureKPa: place.pressureKPa,
    });
  return {
    value,
    low: value - Math.hypot(value - low, doubtK),
    high: value + Math.hypot(high - value, doubtK),
  };
}
