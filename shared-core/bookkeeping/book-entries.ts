import { z } from 'zod';

/** A number as measured: its value and its standard uncertainty (k = 1), in the unit its field names. */
export const quantitySchema = z.strictObject({
  value: z.number(),
  standardUncertainty: z.number().min(0),
});

const pycnometerSchema = z.strictObject({
  emptyG: z.number().positive(),
  withWaterG: z.number().positive(),
  withSampleG: z.number().positive(),
  waterTemperatureC: z.number().min(0).max(40),
  sampleTemperatureC: z.number().min(0).max(40),
  weighingUncertaintyG: z.number().min(0).max(10),
});

/** The error of the instrument itself, in the unit of its scale: every reading with it shares that error. */
const sharedInstrumentSchema = z.strictObject({
  /** Readings with the same name are readings with the same instrument. */
  name: z.string().min(1).max(60),
  standardUncertainty: z.number().min(0),
});

/** How a strength was measured; see `measuredStrength`. */
export const strengthMeasurementSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal(['stated', 'label']), strengthAbv: quantitySchema }),
  z.strictObject({
    by: z.literal(['refractometer', 'gas-chromatograph']),
    strengthAbv: quantitySchema,
    instrument: sharedInstrumentSchema.optional(),
  }),
  z.strictObject({
    by: z.literal('alcoholometer'),
    indicatedAbv: quantitySchema,
    temperatureC: quantitySchema,
    instrument: sharedInstrumentSchema.optional(),
  }),
  z.strictObject({
    by: z.literal('hydrometer'),
    indicatedDensityKgPerM3: quantitySchema,
    temperatureC: quantitySchema,
    instrument: sharedInstrumentSchema.optional(),
  }),
  z.strictObject({
    by: z.literal('pycnometer'),
    weighings: pycnometerSchema,
    temperatureUncertaintyK: z.number().min(0).max(10),
  }),
  z.strictObject({
    by: z.literal('balance'),
    massG: quantitySchema,
    volumeMl: quantitySchema,
    temperatureC: quantitySchema,
  }),
]);

/** How much liquid was measured. */
export const amountMeasurementSchema = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('volume'),
    volumeMl: quantitySchema,
    temperatureC: quantitySchema,
  }),
  z.strictObject({ by: z.literal('mass'), massG: quantitySchema }),
]);

const liquidEntrySchema = z.strictObject({
  amount: amountMeasurementSchema,
  strength: strengthMeasurementSchema,
});

/** Measurements made at the bench after the run; they stand above the marks made during it. */
export const bookEntriesSchema = z.strictObject({
  cuts: z
    .array(
      z.strictObject({
        /** Counted from 1 in the order of the receivers. */
        number: z.number().int().min(1).max(100),
        amount: amountMeasurementSchema.optional(),
        strength: strengthMeasurementSchema.optional(),
      }),
    )
    .max(100)
    .default([]),
  residue: liquidEntrySchema.optional(),
  holdUp: liquidEntrySchema.optional(),
  /** Fermentable sugar that the charge came from, as hexose [g]. */
  sugarG: quantitySchema.optional(),
  /** Reflux per distillate while the main fraction ran [mol/mol], e.g. from drip rates. */
  refluxRatio: z.number().min(0).max(1e6).optional(),
  /** Distillate per minute while the heat was on, as measured or counted in drops [mL/min]. */
  dripRateMlPerMin: z.number().positive().max(1000).optional(),
});

export type BookEntries = z.infer<typeof bookEntriesSchema>;
