import type { PlateauBand } from '#shared-core';
import { type Decimal, quantityWords } from './number-words.ts';

export interface ProbeScaleWords {
  readonly finding: string;
  /** Between which ends it lies. */
  readonly range: string;
  readonly because: string;
}

/** A quarter of a 95 % range is about one standard deviation: less than that is not worth a direction. */
const leastFoundShare = 1 / 4;

/**
 * How far the probe's scale is believed to be off, and which of the two limits is which; null while
 * they are the same to the tenth that is shown, or nothing has been found of it yet.
 */
export function probeScaleWords(band: PlateauBand, decimal: Decimal): ProbeScaleWords | null {
  const { limitC, probeReadsHighK, probeReadsHighRangeK, pressureKPa, leastStrengthAbv } = band;
  if (probeReadsHighRangeK === null || Math.abs(probeReadsHighK) < 0.05) return null;
  const say = (value: number, decimals: number, unit: string) =>
    quantityWords(value, decimals, unit, decimal);
  const offset = (highK: number) => `${say(Math.abs(highK), 1, 'K')} ${highK > 0 ? 'high' : 'low'}`;
  const { low, high } = probeReadsHighRangeK;
  const onProbe = say(limitC + probeReadsHighK, 1, '°C');
  const isFound = Math.abs(probeReadsHighK) > (high - low) * leastFoundShare;
  return {
    ...(isFound
      ? {
          finding: `reads about ${offset(probeReadsHighK)}`,
          range: `between ${offset(low)} and ${offset(high)}`,
        }
      : {
          finding: `true within ${say(Math.max(Math.abs(low), Math.abs(high)), 1, 'K')}`,
          range: 'as far as this run shows',
        }),
    because: `Vapour of ${say(leastStrengthAbv, 0, '% vol')} condenses at ${say(limitC, 1, '°C')} at ${say(pressureKPa, 1, 'kPa')}; this probe then shows ${onProbe}. How far it is off, together with the air pressure entered, is learned while the head holds. The band on the strip, the limit and the prompts are on the probe's scale.`,
  };
}
