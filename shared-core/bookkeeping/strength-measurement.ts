import {
  densityFromHydrometer,
  densityFromPycnometer,
  massFractionFromAlcoholByVolume,
  type PycnometerWeighings,
  type Strength,
  strengthFromAlcoholometer,
  strengthFromDensity,
} from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import { coverageFactor95, type Estimate, mapEstimate } from '../uncertainty/index.ts';
import type { Quantity } from './quantity.ts';

/** The error of an instrument itself, in the unit of its scale; readings under one name share it. */
export interface SharedInstrument {
  readonly name: string;
  readonly standardUncertainty: number;
}

/** How the strength of a liquid was found. */
export type StrengthMeasurement =
  /** Known beforehand, or printed on a label, at 20 °C [% vol]. */
  | { readonly by: 'stated' | 'label'; readonly strengthAbv: Quantity }
  /** Not measured but concluded from the head temperature while it was collected, at 20 °C [% vol]; with its 95 % interval, which lies unevenly near the azeotrope. */
  | { readonly by: 'head-temperature'; readonly strengthAbv: Estimate }
  /** Read on the scale of a refractometer or found by gas chromatography, at 20 °C [% vol]. */
  | {
      readonly by: 'refractometer' | 'gas-chromatograph';
      readonly strengthAbv: Quantity;
      /** The error of the scale or of the standards: every reading shares it. */
      readonly instrument?: SharedInstrument | undefined;
    }
  /** A float graduated in % vol at 20 °C; liquid 0 … 40 °C. */
  | {
      readonly by: 'alcoholometer';
      /** Its uncertainty is that of the reading alone where the instrument's own is given. */
      readonly indicatedAbv: Quantity;
      readonly temperatureC: Quantity;
      readonly instrument?: SharedInstrument | undefined;
    }
  /** A float graduated in kg/m³ at 20 °C; liquid 0 … 40 °C. */
  | {
      readonly by: 'hydrometer';
      readonly indicatedDensityKgPerM3: Quantity;
      readonly temperatureC: Quantity;
      readonly instrument?: SharedInstrument | undefined;
    }
  | {
      readonly by: 'pycnometer';
      readonly weighings: PycnometerWeighings;
      readonly temperatureUncertaintyK: number;
    }
  /** A volume weighed: in a measuring flask on a balance. Air buoyancy is corrected. */
  | {
      readonly by: 'balance';
      readonly massG: Quantity;
      readonly volumeMl: Quantity;
      readonly temperatureC: Quantity;
    };

/** Air at 20 °C and 101 kPa [g/mL], and steel weights [g/mL]; from memory (OIML R 111 uses 0.0012 and 8.0). */
const airGPerMl = 0.0012;
const weightsGPerMl = 8;

/**
 * Strength at 20 °C from whatever instrument was read, with its 95 % interval.
 *
 * Every way leads to a density at the temperature of the liquid, and from there through `ρ(w, t)` to the mass
 * fraction. Weighed volumes: `ρ = (m/V)(1 − ρ_air/8.0) + ρ_air`, the buoyancy of sample and weights.
 *
 * @param measurement readings [% vol], [kg/m³], [g], [mL], temperatures [°C] 0 … 40, with standard uncertainties
 * @returns mass fraction [kg/kg] and strength [% vol at 20 °C]
 * @throws OutOfRangeError outside the ranges of the instruments, or for a liquid denser than water
 *
 * Source: OIML R 22 (1975), general formula; buoyancy as in OIML R 111, from memory.
 * @example
 * const room = { value: 20, standardUncertainty: 0.2 };
 * const weighed = { by: 'balance', massG: { value: 42.8, standardUncertainty: 0.02 }, volumeMl: { value: 50, standardUncertainty: 0.05 }, temperatureC: room };
 * measuredStrength(weighed).alcoholByVolume.value // ≈ 81 ± 0.5
 * measuredStrength({ by: 'alcoholometer', indicatedAbv: { value: 40, standardUncertainty: 0.1 }, temperatureC: room }).alcoholByVolume.value // ≈ 40 ± 1e-6
 */
export function measuredStrength(measurement: StrengthMeasurement): Strength {
  switch (measurement.by) {
    case 'stated':
    case 'label':
      return statedStrength(measurement.strengthAbv);
    case 'head-temperature':
      return strengthWithin(measurement.strengthAbv);
    case 'refractometer':
    case 'gas-chromatograph': {
      const { strengthAbv, instrument } = measurement;
      return statedStrength({
        value: strengthAbv.value,
        standardUncertainty: withInstrument(strengthAbv, instrument),
      });
    }
    case 'alcoholometer':
      return strengthFromAlcoholometer({
        indicatedAbv: measurement.indicatedAbv.value,
        temperatureC: measurement.temperatureC.value,
        readingUncertaintyAbv: withInstrument(measurement.indicatedAbv, measurement.instrument),
        temperatureUncertaintyK: measurement.temperatureC.standardUncertainty,
      });
    case 'hydrometer': {
      const temperatureC = measurement.temperatureC.value;
      return strengthFromDensity({
        densityKgPerM3: densityFromHydrometer({
          indicatedDensityKgPerM3: measurement.indicatedDensityKgPerM3.value,
          temperatureC,
        }),
        temperatureC,
        densityUncertaintyKgPerM3: withInstrument(
          measurement.indicatedDensityKgPerM3,
          measurement.instrument,
        ),
        temperatureUncertaintyK: measurement.temperatureC.standardUncertainty,
      });
    }
    case 'pycnometer':
      return strengthFromDensity({
        ...densityFromPycnometer(measurement.weighings),
        temperatureC: measurement.weighings.sampleTemperatureC,
        temperatureUncertaintyK: measurement.temperatureUncertaintyK,
      });
    case 'balance':
      return weighedStrength(measurement);
  }
}

function withInstrument(reading: Quantity, instrument: SharedInstrument | undefined): number {
  return Math.hypot(reading.standardUncertainty, instrument?.standardUncertainty ?? 0);
}

function weighedStrength(weighed: Extract<StrengthMeasurement, { by: 'balance' }>): Strength {
  const { massG, volumeMl, temperatureC } = weighed;
  requireInRange('mass', massG.value, 0.1, 1e5, 'g');
  requireInRange('volume', volumeMl.value, 0.1, 1e5, 'mL');
  const apparent = massG.value / volumeMl.value;
  const relative = Math.hypot(
    massG.standardUncertainty / massG.value,
    volumeMl.standardUncertainty / volumeMl.value,
  );
  return strengthFromDensity({
    densityKgPerM3: 1000 * (apparent * (1 - airGPerMl / weightsGPerMl) + airGPerMl),
    densityUncertaintyKgPerM3: 1000 * apparent * relative,
    temperatureC: temperatureC.value,
    temperatureUncertaintyK: temperatureC.standardUncertainty,
  });
}

function statedStrength({ value, standardUncertainty }: Quantity): Strength {
  const reach = coverageFactor95 * standardUncertainty;
  return strengthWithin({ value, low: value - reach, high: value + reach });
}

function strengthWithin({ value, low, high }: Estimate): Strength {
  requireInRange('strength', value, 0, 100, '% vol');
  const strength = { value, low: Math.max(0, low), high: Math.min(100, high) };
  return {
    alcoholByVolume: strength,
    ethanolMassFraction: mapEstimate(strength, (abv) =>
      massFractionFromAlcoholByVolume({ alcoholByVolume: abv }),
    ),
  };
}
