import { z } from 'zod';
import {
  type Channel,
  isChannel,
  type Reading,
  type ReadingQuality,
  type ReadingUnit,
  readingQualitySchema,
  readingUnitSchema,
} from '../run/index.ts';

/**
 * A reading as a short row: `[timeS, channel, value]`, then unit and quality where they are not
 * °C and good.
 */
export type PackedReading =
  | readonly [timeS: number, channel: Channel, value: number]
  | readonly [timeS: number, channel: Channel, value: number, unit: ReadingUnit]
  | readonly [
      timeS: number,
      channel: Channel,
      value: number,
      unit: ReadingUnit,
      quality: ReadingQuality,
    ];

const units: readonly unknown[] = readingUnitSchema.options;
const qualities: readonly unknown[] = readingQualitySchema.options;

/**
 * One test for the whole row, without a schema: a union of tuples makes some dozen objects of each, and a long log holds millions. JSON has
 * numbers that are too great for a number here.
 */
export function isPackedReading(row: unknown): row is PackedReading {
  if (!Array.isArray(row) || row.length > 5) return false;
  const [timeS, channel, value, unit = '°C', quality = 'good']: readonly unknown[] = row;
  return (
    Number.isFinite(timeS) &&
    (timeS as number) >= 0 &&
    isChannel(channel) &&
    Number.isFinite(value) &&
    units.includes(unit) &&
    qualities.includes(quality)
  );
}

export const packedReadingSchema = z.custom<PackedReading>(isPackedReading);

/**
 * The short row of a reading for the run log.
 *
 * @example
 * packReading({ kind: 'reading', timeS: 1.5, channel: 'head', value: 78.4, unit: '°C', quality: 'good' }) // => [1.5, "head", 78.4]
 */
export function packReading(reading: Reading): PackedReading {
  const { timeS, channel, value, unit, quality } = reading;
  if (quality !== 'good') return [timeS, channel, value, unit, quality];
  return unit === '°C' ? [timeS, channel, value] : [timeS, channel, value, unit];
}

/**
 * The reading that a short row of the run log stands for.
 *
 * @example
 * unpackReading([2, 'receiver', 31, 'mL']) // => { "kind": "reading", "timeS": 2, "channel": "receiver", "value": 31, "unit": "mL", "quality": "good" }
 */
export function unpackReading(row: PackedReading): Reading {
  const [timeS, channel, value, unit = '°C', quality = 'good'] = row;
  return { kind: 'reading', timeS, channel, value, unit, quality };
}
