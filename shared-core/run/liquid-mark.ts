import { z } from 'zod';
import type { NumberRange } from './setting-ranges.ts';

/** A liquid that is measured by itself: a cut by its number in the order of the receivers, from 1. */
export const liquidSchema = z.string().regex(/^(?:residue|hold-up|cut-[1-9]\d?)$/);

const massG = z.number().min(0).max(100_000);
const volumeMl = z.number().min(0).max(100_000);

/** Within the range of the alcoholometric tables' formula (OIML R 22, 1975), so that what is marked can be worked out. */
export const liquidRanges = {
  temperatureC: { low: 0, high: 40 },
  alcoholByVolume: { low: 0, high: 100 },
  densityKgPerM3: { low: 700, high: 1100 },
} as const satisfies Readonly<Record<string, NumberRange>>;

const within = ({ low, high }: NumberRange) => z.number().min(low).max(high);
const temperatureC = within(liquidRanges.temperatureC);
const temperatureOrUnknownC = temperatureC.nullable();

/**
 * What was measured of a liquid, during the run or after it. Uncertainties are those of the bench
 * (`benchDoubts`); whoever knows better gives them with `--books`.
 */
export const liquidMarkSchemas = [
  z.strictObject({
    type: z.literal('liquid-volume'),
    liquid: liquidSchema,
    volumeMl,
    temperatureC: temperatureOrUnknownC,
  }),
  z.strictObject({ type: z.literal('liquid-mass'), liquid: liquidSchema, massG }),
  /** An alcoholometer, read in % vol. */
  z.strictObject({
    type: z.literal('liquid-strength'),
    liquid: liquidSchema,
    alcoholByVolume: within(liquidRanges.alcoholByVolume),
    temperatureC: temperatureOrUnknownC,
  }),
  /** A hydrometer, read in kg/m³ (the same number as g/L). */
  z.strictObject({
    type: z.literal('liquid-density'),
    liquid: liquidSchema,
    densityKgPerM3: within(liquidRanges.densityKgPerM3),
    temperatureC: temperatureOrUnknownC,
  }),
  z.strictObject({
    type: z.literal('liquid-pycnometer'),
    liquid: liquidSchema,
    emptyG: massG,
    withWaterG: massG,
    withSampleG: massG,
    waterTemperatureC: temperatureC,
    sampleTemperatureC: temperatureC,
  }),
  /** A known volume on a balance, as in a measuring flask; not the whole of the liquid. */
  z.strictObject({
    type: z.literal('sample-weighed'),
    liquid: liquidSchema,
    massG,
    volumeMl,
    temperatureC: temperatureOrUnknownC,
  }),
  /** Fermentable sugar that the charge came from, as hexose. */
  z.strictObject({
    type: z.literal('sugar-known'),
    sugarG: z.number().positive().max(100_000),
    standardUncertaintyG: z.number().min(0).max(10_000),
  }),
] as const;
