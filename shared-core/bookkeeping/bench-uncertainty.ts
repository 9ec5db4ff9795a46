import type { MarkBody } from '../run/index.ts';
import {
  benchDoubts,
  chromatogramDoubtAbv,
  refractometerDoubtPercent,
  volumeDoubtMl,
} from './bench-doubts.ts';

/** Fields of a mark that hold the standard uncertainty of a reading. */
export type UncertaintyField =
  | 'volumeUncertaintyMl'
  | 'massUncertaintyG'
  | 'strengthUncertaintyAbv'
  | 'densityUncertaintyKgPerM3'
  | 'temperatureUncertaintyK'
  | 'weighingUncertaintyG'
  | 'uncertaintyPercent';

/**
 * The standard uncertainty that is taken for a reading where none is stated, to be shown where it could be.
 *
 * @param reading type of the mark; field that would hold the uncertainty; value as read [unit of the field] 0 … 100 000, null while there is none
 * @returns standard uncertainty (k = 1) in the unit that the field names
 *
 * Source: common practice, no source; see `benchDoubts`.
 * @example
 * benchUncertainty({ type: 'liquid-volume', field: 'volumeUncertaintyMl', value: 20 }) // ≈ 0.51 ± 0.01
 * benchUncertainty({ type: 'liquid-strength', field: 'temperatureUncertaintyK', value: null }) // => 2
 */
export function benchUncertainty(reading: {
  readonly type: MarkBody['type'];
  readonly field: UncertaintyField;
  readonly value: number | null;
}): number {
  const { type, field, value } = reading;
  switch (field) {
    case 'volumeUncertaintyMl':
      return type === 'sample-weighed' ? benchDoubts.flaskMl : volumeDoubtMl(value ?? 0);
    case 'massUncertaintyG':
      return benchDoubts.massG;
    case 'strengthUncertaintyAbv':
      if (type === 'liquid-label') return benchDoubts.labelAbv;
      return type === 'liquid-chromatogram'
        ? chromatogramDoubtAbv(value ?? 0)
        : benchDoubts.alcoholometerAbv;
    case 'densityUncertaintyKgPerM3':
      return benchDoubts.hydrometerKgPerM3;
    case 'temperatureUncertaintyK':
      return value === null
        ? benchDoubts.unknownTemperatureC.standardUncertainty
        : benchDoubts.temperatureK;
    case 'weighingUncertaintyG':
      return benchDoubts.pycnometerG;
    case 'uncertaintyPercent':
      return refractometerDoubtPercent(value ?? 0);
  }
}
