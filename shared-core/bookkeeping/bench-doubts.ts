import type { AmountMeasurement } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';

/**
 * Standard uncertainties taken for numbers that were written down without one: a 100 mL measuring cylinder read to
 * half a mark, a school balance, an alcoholometer with marks of 1 % vol, a bench thermometer. Common practice, no
 * source; the report says that they were assumed.
 */
export const benchDoubts = {
  volumeMl: 0.5,
  volumeShare: 0.005,
  massG: 0.05,
  alcoholometerAbv: 0.5,
  temperatureK: 0.5,
  /** When nobody wrote the temperature of a liquid down: a room is 20 ± 4 °C. */
  unknownTemperatureC: { value: 20, standardUncertainty: 2 },
} as const;

/** A volume as read at the bench, with the uncertainty of {@link benchDoubts}. */
export function benchVolume(volumeMl: number): AmountMeasurement {
  const { volumeMl: constant, volumeShare, unknownTemperatureC } = benchDoubts;
  return {
    by: 'volume',
    volumeMl: {
      value: volumeMl,
      standardUncertainty: Math.hypot(constant, volumeShare * volumeMl),
    },
    temperatureC: unknownTemperatureC,
  };
}

/** The temperature of a sample, or of a room when it was not written down. */
export function sampleTemperature(temperatureC: number | null): Quantity {
  return temperatureC === null
    ? benchDoubts.unknownTemperatureC
    : { value: temperatureC, standardUncertainty: benchDoubts.temperatureK };
}
