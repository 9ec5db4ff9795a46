import { alcoholByVolume } from '../alcoholometry/index.ts';
import { cylinderDoubt, type refractometerScales } from '../run/index.ts';
import { worded } from '../wording/index.ts';
import type { AmountMeasurement } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

/**
 * Standard uncertainties taken for numbers that were written down without one: a 100 mL measuring cylinder read to
 * half a mark, a school balance, an alcoholometer with marks of 1 % vol, a bench thermometer. Common practice, no
 * source; the form shows them, and the report says that they were assumed.
 */
export const benchDoubts = {
  volumeMl: cylinderDoubt.constantMl,
  volumeShare: cylinderDoubt.share,
  massG: 0.05,
  alcoholometerAbv: 0.5,
  /** A school hydrometer with marks of 1 or 2 kg/m³. */
  hydrometerKgPerM3: 1,
  /** Of a float's or a scale's uncertainty: what is of one reading, and of the instrument itself, in every reading with it. In squares they are 1. */
  shareOfReading: 0.6,
  shareOfInstrument: 0.8,
  /** An index read to 0.0002: the scale's marks lie far closer together in its upper half. */
  refractometerPercent: { below50: 1, above50: 2 },
  /** Against standards made up in the laboratory. */
  chromatogramShare: 0.02,
  chromatogramAbv: 0.3,
  /** Spirits may stray by 0.3 % vol, wines by 0.5 (Regulation (EU) No 1169/2011, Annex XII, from memory), taken as limits of an even spread. */
  labelAbv: 0.3,
  pycnometerG: 0.02,
  /** A measuring flask or pipette whose filling is weighed. */
  flaskMl: 0.1,
  temperatureK: 0.5,
  /** When nobody wrote the temperature of a liquid down: a room is 20 ± 4 °C. */
  unknownTemperatureC: { value: 20, standardUncertainty: 2 },
} as const;

/** A volume as read at the bench; its uncertainty and that of its temperature are those of {@link benchDoubts} where none is stated. */
export function benchVolume(
  volumeMl: number,
  temperatureC: number | null,
  stated: {
    readonly volumeMl?: number | undefined;
    readonly temperatureK?: number | undefined;
  } = {},
): AmountMeasurement {
  return {
    by: 'volume',
    volumeMl: { value: volumeMl, standardUncertainty: stated.volumeMl ?? volumeDoubtMl(volumeMl) },
    temperatureC: sampleTemperature(temperatureC, stated.temperatureK),
  };
}

export function volumeDoubtMl(volumeMl: number): number {
  return Math.hypot(benchDoubts.volumeMl, benchDoubts.volumeShare * volumeMl);
}

/** The temperature of a sample, or of a room when it was not written down. */
export function sampleTemperature(
  temperatureC: number | null,
  statedK: number | undefined = undefined,
): Quantity {
  const { unknownTemperatureC, temperatureK } = benchDoubts;
  return temperatureC === null
    ? {
        ...unknownTemperatureC,
        standardUncertainty: statedK ?? unknownTemperatureC.standardUncertainty,
      }
    : { value: temperatureC, standardUncertainty: statedK ?? temperatureK };
}

/** A mass as weighed at the bench. */
export function benchMass(massG: number, statedG: number = benchDoubts.massG): AmountMeasurement {
  return { by: 'mass', massG: { value: massG, standardUncertainty: statedG } };
}

/** A reading of the class's alcoholometer: there is one, so its own error is in every reading. */
export function benchAlcoholometer(
  indicatedAbv: number,
  temperatureC: number | null,
  stated: { readonly abv?: number | undefined; readonly temperatureK?: number | undefined } = {},
): StrengthMeasurement {
  const { ofReading, ofInstrument } = sharedOut(stated.abv ?? benchDoubts.alcoholometerAbv);
  return {
    by: 'alcoholometer',
    indicatedAbv: { value: indicatedAbv, standardUncertainty: ofReading },
    temperatureC: sampleTemperature(temperatureC, stated.temperatureK),
    instrument: { name: worded('Alcoholometer'), standardUncertainty: ofInstrument },
  };
}

/** A reading of the class's hydrometer: there is one, so its own error is in every reading. */
export function benchHydrometer(
  densityKgPerM3: number,
  temperatureC: number | null,
  stated: {
    readonly kgPerM3?: number | undefined;
    readonly temperatureK?: number | undefined;
  } = {},
): StrengthMeasurement {
  const { ofReading, ofInstrument } = sharedOut(stated.kgPerM3 ?? benchDoubts.hydrometerKgPerM3);
  return {
    by: 'hydrometer',
    indicatedDensityKgPerM3: { value: densityKgPerM3, standardUncertainty: ofReading },
    temperatureC: sampleTemperature(temperatureC, stated.temperatureK),
    instrument: { name: worded('Hydrometer'), standardUncertainty: ofInstrument },
  };
}

/** A reading of a refractometer on its own scale, in per cent by volume at 20 °C or by mass. */
export function benchRefractometer(
  percent: number,
  scale: (typeof refractometerScales)[number],
  statedPercent: number = refractometerDoubtPercent(percent),
): StrengthMeasurement {
  const at = (value: number) =>
    scale === 'volume' ? value : alcoholByVolume({ ethanolMassFraction: value / 100 });
  // The slope between the two scales; at the ends of the range one side is enough.
  const step = percent >= 1 ? -1 : 1;
  const abvPerPercent = (at(percent + step) - at(percent)) / step;
  const { ofReading, ofInstrument } = sharedOut(abvPerPercent * statedPercent);
  return {
    by: 'refractometer',
    strengthAbv: { value: at(percent), standardUncertainty: ofReading },
    instrument: { name: worded('Refractometer'), standardUncertainty: ofInstrument },
  };
}

export function refractometerDoubtPercent(percent: number): number {
  const { below50, above50 } = benchDoubts.refractometerPercent;
  return percent <= 50 ? below50 : above50;
}

/** A strength found by gas chromatography; the error of the standards is in every one. */
export function benchChromatogram(
  strengthAbv: number,
  statedAbv: number = chromatogramDoubtAbv(strengthAbv),
): StrengthMeasurement {
  const { ofReading, ofInstrument } = sharedOut(statedAbv);
  return {
    by: 'gas-chromatograph',
    strengthAbv: { value: strengthAbv, standardUncertainty: ofReading },
    instrument: { name: worded('Gas chromatograph'), standardUncertainty: ofInstrument },
  };
}

export function chromatogramDoubtAbv(strengthAbv: number): number {
  return Math.max(benchDoubts.chromatogramAbv, benchDoubts.chromatogramShare * strengthAbv);
}

function sharedOut(standardUncertainty: number) {
  return {
    ofReading: benchDoubts.shareOfReading * standardUncertainty,
    ofInstrument: benchDoubts.shareOfInstrument * standardUncertainty,
  };
}
