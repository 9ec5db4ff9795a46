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
  /**
   * The refractive index of ethanol in water has a maximum near 80 % by mass: above it one index stands for two strengths, and just below it
   * hardly moves. About 80 % vol is 73 % by mass. CRC Handbook of Chemistry and Physics, aqueous solutions, from memory.
   */
  refractometerPercent: { volume: { low: 0, high: 80 }, mass: { low: 0, high: 73 } },
} as const satisfies Readonly<Record<string, NumberRange | Readonly<Record<string, NumberRange>>>>;

const within = ({ low, high }: NumberRange) => z.number().min(low).max(high);
const temperatureC = within(liquidRanges.temperatureC);
const temperatureOrUnknownC = temperatureC.nullable();

/** A standard uncertainty (k = 1); left out of a mark where the bench's own (`benchDoubts`) was taken. */
const doubt = z.number().positive().max(1000).optional();
const temperatureUncertaintyK = doubt;
const strengthUncertaintyAbv = doubt;

/** What the scale of a refractometer shows, as its owner says: percent ethanol in water, by volume at 20 °C or by mass. */
export const refractometerScales = ['volume', 'mass'] as const;

/**
 * What was measured of a liquid, during the run or after it. Uncertainties are those that were
 * shown when it was written down; in older records, which have none, those of the bench (`benchDoubts`).
 */
export const liquidMarkSchemas = [
  z.strictObject({
    type: z.literal('liquid-volume'),
    liquid: liquidSchema,
    volumeMl,
    temperatureC: temperatureOrUnknownC,
    volumeUncertaintyMl: doubt,
    temperatureUncertaintyK,
  }),
  z.strictObject({
    type: z.literal('liquid-mass'),
    liquid: liquidSchema,
    massG,
    massUncertaintyG: doubt,
  }),
  /** An alcoholometer, read in % vol. */
  z.strictObject({
    type: z.literal('liquid-strength'),
    liquid: liquidSchema,
    alcoholByVolume: within(liquidRanges.alcoholByVolume),
    temperatureC: temperatureOrUnknownC,
    strengthUncertaintyAbv,
    temperatureUncertaintyK,
  }),
  /** A hydrometer, read in kg/m³ (the same number as g/L). */
  z.strictObject({
    type: z.literal('liquid-density'),
    liquid: liquidSchema,
    densityKgPerM3: within(liquidRanges.densityKgPerM3),
    temperatureC: temperatureOrUnknownC,
    densityUncertaintyKgPerM3: doubt,
    temperatureUncertaintyK,
  }),
  z.strictObject({
    type: z.literal('liquid-pycnometer'),
    liquid: liquidSchema,
    emptyG: massG,
    withWaterG: massG,
    withSampleG: massG,
    waterTemperatureC: temperatureC,
    sampleTemperatureC: temperatureC,
    weighingUncertaintyG: doubt,
    temperatureUncertaintyK,
  }),
  /** A known volume on a balance, as in a measuring flask; not the whole of the liquid. */
  z.strictObject({
    type: z.literal('sample-weighed'),
    liquid: liquidSchema,
    massG,
    volumeMl,
    temperatureC: temperatureOrUnknownC,
    massUncertaintyG: doubt,
    volumeUncertaintyMl: doubt,
    temperatureUncertaintyK,
  }),
  /** A refractometer whose scale is one of ethanol in water, read at 20 °C or corrected to it by the instrument. */
  z
    .strictObject({
      type: z.literal('liquid-refractometer'),
      liquid: liquidSchema,
      scale: z.enum(refractometerScales),
      percent: z.number(),
      uncertaintyPercent: doubt,
    })
    .refine(
      ({ scale, percent }) =>
        within(liquidRanges.refractometerPercent[scale]).safeParse(percent).success,
      { path: ['percent'] },
    ),
  /** By gas chromatography, against standards of known strength. */
  z.strictObject({
    type: z.literal('liquid-chromatogram'),
    liquid: liquidSchema,
    alcoholByVolume: within(liquidRanges.alcoholByVolume),
    strengthUncertaintyAbv,
  }),
  /** As printed on a label. */
  z.strictObject({
    type: z.literal('liquid-label'),
    liquid: liquidSchema,
    alcoholByVolume: within(liquidRanges.alcoholByVolume),
    strengthUncertaintyAbv,
  }),
  /** Fermentable sugar that the charge came from, as hexose. */
  z.strictObject({
    type: z.literal('sugar-known'),
    sugarG: z.number().positive().max(100_000),
    standardUncertaintyG: z.number().min(0).max(10_000),
  }),
] as const;
