import type { AmountMeasurement } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

/**
 * Standard uncertainties taken for numbers that were written down without one: a 100 mL measuring cylinder read to
 * half a mark, a school balance, an alcoholometer with marks of 1 % vol, a bench thermometer. Common practice, no
 * source; the report says that they were assumed.
 */
export const benchDoubts = {
  volumeMl: 0.5,
  volumeShare: 0.005,
  massG: 0.05,
  /** Of one reading, and of the instrument itself, which every reading with it shares: 0.5 % vol together. */
  alcoholometerReadingAbv: 0.3,
  alcoholometerItselfAbv: 0.4,
  /** A school hydrometer with marks of 1 or 2 kg/m³: 1 kg/m³ together. */
  hydrometerReadingKgPerM3: 0.6,
  hydrometerItselfKgPerM3: 0.8,
  pycnometerG: 0.02,
  /** A measuring flask or pipette whose filling is weighed. */
  flaskMl: 0.1,
  temperatureK: 0.5,
  /** When nobody wrote the temperature of a liquid down: a room is 20 ± 4 °C. */
  unknownTemperatureC: { value: 20, standardUncertainty: 2 },
} as const;

/** A volume as read at the bench, with the uncertainty of {@link benchDoubts}. */
export function benchVolume(volumeMl: number, temperatureC: number | null): AmountMeasurement {
  const { volumeMl: constant, volumeShare } = benchDoubts;
  return {
    by: 'volume',
    volumeMl: {
      value: volumeMl,
      standardUncertainty: Math.hypot(constant, volumeShare * volumeMl),
    },
    temperatureC: sampleTemperature(temperatureC),
  };
}

/** The temperature of a sample, or of a room when it was not written down. */
export function sampleTemperature(temperatureC: number | null): Quantity {
  return temperatureC === null
    ? benchDoubts.unknownTemperatureC
    : { value: temperatureC, standardUncertainty: benchDoubts.temperatureK };
}

/** A mass as weighed at the bench. */
export function benchMass(massG: number): AmountMeasurement {
  return { by: 'mass', massG: { value: massG, standardUncertainty: benchDoubts.massG } };
}

/** A reading of the class's alcoholometer: there is one, so its own error is in every reading. */
export function benchAlcoholometer(
  alcoholByVolume: number,
  temperatureC: number | null,
): StrengthMeasurement {
  return {
    by: 'alcoholometer',
    indicatedAbv: {
      value: alcoholByVolume,
      standardUncertainty: benchDoubts.alcoholometerReadingAbv,
    },
    temperatureC: sampleTemperature(temperatureC),
    instrument: {
      name: 'Alcoholometer',
      standardUncertainty: benchDoubts.alcoholometerItselfAbv,
    },
  };
}

/** A reading of the class's hydrometer: there is one, so its own error is in every reading. */
export function benchHydrometer(
  densityKgPerM3: number,
  temperatureC: number | null,
): StrengthMeasurement {
  return {
    by: 'hydrometer',
    indicatedDensityKgPerM3: {
      value: densityKgPerM3,
      standardUncertainty: benchDoubts.hydrometerReadingKgPerM3,
    },
    temperatureC: sampleTemperature(temperatureC),
    instrument: {
      name: 'Hydrometer',
      standardUncertainty: benchDoubts.hydrometerItselfKgPerM3,
    },
  };
}
