import { type PlateauBand, say } from '#shared-core';
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
  const quantity = (value: number, decimals: number, unit: string) =>
    quantityWords(value, decimals, unit, decimal);
  const offset = (highK: number) => {
    const by = quantity(Math.abs(highK), 1, 'K');
    return highK > 0 ? say('{by} high', { by }) : say('{by} low', { by });
  };
  const { low, high } = probeReadsHighRangeK;
  const onProbe = quantity(limitC + probeReadsHighK, 1, '°C');
  const isFound = Math.abs(probeReadsHighK) > (high - low) * leastFoundShare;
  return {
    ...(isFound
      ? {
          finding: say('reads about {offset}', { offset: offset(probeReadsHighK) }),
          range: say('between {low} and {high}', {
            low: offset(low),
            high: offset(high),
          }),
        }
      : {
          finding: say('true within {range}', {
            range: quantity(Math.max(Math.abs(low), Math.abs(high)), 1, 'K'),
          }),
          range: say('with the air pressure, as far as this run shows'),
        }),
    because: say(
      "Vapour of {strength} condenses at {limit} at {pressure}; this probe then shows {onProbe}. How far it is off, together with the air pressure entered, is learned while the head holds. The band on the strip, the limit and the prompts are on the probe's scale.",
      {
        strength: quantity(leastStrengthAbv, 0, '% vol'),
        limit: quantity(limitC, 1, '°C'),
        pressure: quantity(pressureKPa, 1, 'kPa'),
        onProbe,
      },
    ),
  };
}
