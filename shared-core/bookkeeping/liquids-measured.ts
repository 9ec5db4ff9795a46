import { OutOfRangeError } from '../result/index.ts';
import { type Mark, type MarkBody, type RunInput, standingMarks } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import {
  benchAlcoholometer,
  benchChromatogram,
  benchDoubts,
  benchHydrometer,
  benchMass,
  benchRefractometer,
  benchVolume,
  sampleTemperature,
} from './bench-doubts.ts';
import type { AmountMeasurement } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';
import { measuredStrength, type StrengthMeasurement } from './strength-measurement.ts';

/** What is known of a liquid: either may still be missing. */
export interface PartlyMeasured {
  readonly amount: AmountMeasurement | null;
  readonly strength: StrengthMeasurement | null;
}

/** What the marks say about liquids by name, and about the sugar. */
export interface LiquidsMeasured {
  readonly residue: PartlyMeasured;
  readonly holdUp: PartlyMeasured;
  /** By the number of the cut. */
  readonly cuts: ReadonlyMap<number, PartlyMeasured>;
  readonly sugarG: Quantity | null;
}

const nothing: PartlyMeasured = { amount: null, strength: null };

/**
 * The measurements of liquids in a run's marks, made during or after it; of two of a kind the later one counts.
 *
 * @param inputs in order of time; any others than marks of liquids are passed over
 * @returns amounts and strengths with the uncertainties written down with them, or else those of a school bench
 *
 * Source: this project's rule; uncertainties: common practice, no source.
 * @example
 * const mark = (markId, mark) => ({ kind: 'mark', timeS: 3600, markId, mark });
 * const weighed = mark(1, { type: 'liquid-mass', liquid: 'residue', massG: 310 });
 * liquidsMeasured([weighed]).residue // => { "amount": { "by": "mass", "massG": { "value": 310, "standardUncertainty": 0.05 } }, "strength": null }
 * liquidsMeasured([weighed, mark(2, { type: 'mark-withdrawn', withdrawnMarkId: 1 })]).residue.amount // => null
 */
export function liquidsMeasured(inputs: readonly RunInput[]): LiquidsMeasured {
  const found = new Map<string, PartlyMeasured>();
  let sugarG: Quantity | null = null;
  for (const { mark } of standingMarks(inputs)) {
    if (mark.type === 'sugar-known') {
      sugarG = { value: mark.sugarG, standardUncertainty: mark.standardUncertaintyG };
    }
    if (!isLiquidMark(mark)) continue;
    found.set(mark.liquid, { ...(found.get(mark.liquid) ?? nothing), ...measuredIn(mark) });
  }
  const cuts = [...found].flatMap(([liquid, parts]): (readonly [number, PartlyMeasured])[] => {
    const number = /^cut-(\d+)$/.exec(liquid)?.[1];
    return number === undefined ? [] : [[Number(number), parts]];
  });
  return {
    residue: found.get('residue') ?? nothing,
    holdUp: found.get('hold-up') ?? nothing,
    cuts: new Map(cuts),
    sugarG,
  };
}

/**
 * The strength at 20 °C that one measurement means by itself, `ρ(w, t) = ρ` solved for w: see {@link measuredStrength}.
 *
 * @param mark a measurement of a liquid, readings in the units of their names [% vol, kg/m³, g, °C]
 * @returns [% vol at 20 °C], 95 % interval; null for a mark that tells no strength, `impossible` for readings that no mixture of ethanol and
 * water gives
 *
 * Source: see {@link measuredStrength}.
 * @example
 * const read = { type: 'liquid-strength', liquid: 'cut-1', alcoholByVolume: 40, temperatureC: 20 };
 * strengthByMark(read).value // ≈ 40 ± 1e-6
 * strengthByMark({ type: 'liquid-mass', liquid: 'cut-1', massG: 42 }) // => null
 */
export function strengthByMark(mark: MarkBody): Estimate | 'impossible' | null {
  const strength = isLiquidMark(mark) ? measuredIn(mark).strength : null;
  if (!strength) return null;
  try {
    return measuredStrength(strength).alcoholByVolume;
  } catch (error) {
    if (error instanceof OutOfRangeError) return 'impossible';
    throw error;
  }
}

type LiquidMark = Extract<MarkBody, { readonly liquid: string }>;

function isLiquidMark(mark: Mark['mark']): mark is LiquidMark {
  return 'liquid' in mark;
}

/** The amount or the strength that one mark tells. */
function measuredIn(mark: LiquidMark): Partial<PartlyMeasured> {
  switch (mark.type) {
    case 'liquid-volume':
      return {
        amount: benchVolume(mark.volumeMl, mark.temperatureC, {
          volumeMl: mark.volumeUncertaintyMl,
          temperatureK: mark.temperatureUncertaintyK,
        }),
      };
    case 'liquid-mass':
      return { amount: benchMass(mark.massG, mark.massUncertaintyG) };
    case 'liquid-strength':
      return {
        strength: benchAlcoholometer(mark.alcoholByVolume, mark.temperatureC, {
          abv: mark.strengthUncertaintyAbv,
          temperatureK: mark.temperatureUncertaintyK,
        }),
      };
    case 'liquid-density':
      return {
        strength: benchHydrometer(mark.densityKgPerM3, mark.temperatureC, {
          kgPerM3: mark.densityUncertaintyKgPerM3,
          temperatureK: mark.temperatureUncertaintyK,
        }),
      };
    case 'liquid-refractometer':
      return { strength: benchRefractometer(mark.percent, mark.scale, mark.uncertaintyPercent) };
    case 'liquid-chromatogram':
      return { strength: benchChromatogram(mark.alcoholByVolume, mark.strengthUncertaintyAbv) };
    case 'liquid-label':
      return {
        strength: {
          by: 'label',
          strengthAbv: {
            value: mark.alcoholByVolume,
            standardUncertainty: mark.strengthUncertaintyAbv ?? benchDoubts.labelAbv,
          },
        },
      };
    case 'liquid-pycnometer':
    case 'sample-weighed':
      return { strength: weighed(mark) };
  }
}

/** A strength from weighings, with the bench's uncertainties where none is stated. */
function weighed(
  mark: Extract<LiquidMark, { readonly type: 'liquid-pycnometer' | 'sample-weighed' }>,
): StrengthMeasurement {
  if (mark.type === 'liquid-pycnometer') {
    const { emptyG, withWaterG, withSampleG, waterTemperatureC, sampleTemperatureC } = mark;
    const weighings = { emptyG, withWaterG, withSampleG, waterTemperatureC, sampleTemperatureC };
    const weighingUncertaintyG = mark.weighingUncertaintyG ?? benchDoubts.pycnometerG;
    return {
      by: 'pycnometer',
      weighings: { ...weighings, weighingUncertaintyG },
      temperatureUncertaintyK: mark.temperatureUncertaintyK ?? benchDoubts.temperatureK,
    };
  }
  const { massG, volumeMl, massUncertaintyG, volumeUncertaintyMl } = mark;
  return {
    by: 'balance',
    massG: { value: massG, standardUncertainty: massUncertaintyG ?? benchDoubts.massG },
    volumeMl: { value: volumeMl, standardUncertainty: volumeUncertaintyMl ?? benchDoubts.flaskMl },
    temperatureC: sampleTemperature(mark.temperatureC, mark.temperatureUncertaintyK),
  };
}
