import { type Mark, type MarkBody, type RunInput, standingMarks } from '../run/index.ts';
import {
  benchAlcoholometer,
  benchDoubts,
  benchHydrometer,
  benchMass,
  benchVolume,
  sampleTemperature,
} from './bench-doubts.ts';
import type { AmountMeasurement } from './book-liquid.ts';
import type { Quantity } from './quantity.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

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
 * @returns amounts and strengths with the uncertainties of a school bench
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

type LiquidMark = Extract<MarkBody, { readonly liquid: string }>;

function isLiquidMark(mark: Mark['mark']): mark is LiquidMark {
  return 'liquid' in mark;
}

/** The amount or the strength that one mark tells. */
function measuredIn(mark: LiquidMark): Partial<PartlyMeasured> {
  switch (mark.type) {
    case 'liquid-volume':
      return { amount: benchVolume(mark.volumeMl, mark.temperatureC) };
    case 'liquid-mass':
      return { amount: benchMass(mark.massG) };
    case 'liquid-strength':
      return { strength: benchAlcoholometer(mark.alcoholByVolume, mark.temperatureC) };
    case 'liquid-density':
      return { strength: benchHydrometer(mark.densityKgPerM3, mark.temperatureC) };
    case 'liquid-pycnometer': {
      const { emptyG, withWaterG, withSampleG, waterTemperatureC, sampleTemperatureC } = mark;
      const weighings = { emptyG, withWaterG, withSampleG, waterTemperatureC, sampleTemperatureC };
      return {
        strength: {
          by: 'pycnometer',
          weighings: { ...weighings, weighingUncertaintyG: benchDoubts.pycnometerG },
          temperatureUncertaintyK: benchDoubts.temperatureK,
        },
      };
    }
    case 'sample-weighed':
      return {
        strength: {
          by: 'balance',
          massG: { value: mark.massG, standardUncertainty: benchDoubts.massG },
          volumeMl: { value: mark.volumeMl, standardUncertainty: benchDoubts.flaskMl },
          temperatureC: sampleTemperature(mark.temperatureC),
        },
      };
  }
}
