import { z } from 'zod';

/** A number between two ends, with the words that say so to whoever typed another. */
function within(what: string, low: number, high: number, unit = '') {
  const error = `${what} from ${low} to ${high}${unit === '' ? '' : ` ${unit}`}, please`;
  return z.number({ error }).min(low, { error }).max(high, { error });
}

/** What can be done to a ferment that a still asks for. */
export const fermentTreatments = ['degassed', 'settled', 'strained'] as const;
export type FermentTreatment = (typeof fermentTreatments)[number];

/** What a person read of a ferment at one moment, as it stood on the instruments; null where that was not read. */
export const fermentReadSchema = z
  .strictObject({
    atIso: z.iso.datetime({ error: 'A day and a time, please' }),
    /** As a hydrometer made for 20 °C shows it, and the liquid's temperature in its jar. */
    gravity: z
      .strictObject({
        indicated: within('A gravity', 0.97, 1.2),
        // Source: the range of `gravityAt20C`.
        temperatureC: within('A temperature of the liquid', 0, 40, '°C'),
      })
      .nullable(),
    /** Vessel and ferment, with the same things on the balance each time. */
    massG: within('A mass', 0, 1e7, 'g').nullable(),
    temperatureC: within('A temperature of the ferment', 0, 60, '°C').nullable(),
    bubblesPerMin: within('A number of bubbles in a minute', 0, 5000).nullable(),
    ph: within('A pH of a ferment', 1, 10).nullable(),
    /** Sugar scale of a refractometer, which alcohol falsifies: only with a gravity does it tell anything. */
    refractometerPercent: within('A refractometer reading', 0, 50, '%').nullable(),
    /** What was done before this reading. */
    treatments: z.array(z.enum(fermentTreatments)).max(fermentTreatments.length),
    note: z.string().max(400, { error: 'At most 400 characters, please' }),
  })
  .refine(
    ({ atIso: _, treatments, note, ...numbers }) =>
      Object.values(numbers).some((value) => value !== null) ||
      treatments.length > 0 ||
      note.trim() !== '',
    { error: 'Nothing was entered yet' },
  )
  .refine(
    ({ refractometerPercent, gravity }) => refractometerPercent === null || gravity !== null,
    {
      path: ['refractometerPercent'],
      error: 'A refractometer alone tells nothing of a ferment: read the gravity too, please',
    },
  );

export type FermentRead = z.infer<typeof fermentReadSchema>;
