import { z } from 'zod';
import {
  channelSchema,
  type Reading,
  readingQualitySchema,
  readingUnitSchema,
} from '../run/index.ts';

/**
 * A reading as a short row: `[timeS, channel, value]`, then unit and quality where they are not
 * °C and good.
 */
export const packedReadingSchema = z.union([
  z.tuple([z.number().nonnegative(), channelSchema, z.number()]),
  z.tuple([z.number().nonnegative(), channelSchema, z.number(), readingUnitSchema]),
  z.tuple([
    z.number().nonnegative(),
    channelSchema,
    z.number(),
    readingUnitSchema,
    readingQualitySchema,
  ]),
]);

export type PackedReading = z.infer<typeof packedReadingSchema>;

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
