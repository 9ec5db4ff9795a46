import { z } from 'zod';
import { worded } from '../wording/index.ts';

/** A number between two ends, with the words that say so to whoever typed another. */
function within(what: string, low: number, high: number, unit = '') {
  const error = worded('{what} from {low} to {high}, please', {
    what,
    low,
    high: unit === '' ? high : `${high} ${unit}`,
  });
  return z.number({ error }).min(low, { error }).max(high, { error });
}

/** What can be done to a ferment that a still asks for. */
const fermentTreatments = ['degassed', 'settled', 'strained'] as const;

/** What a person read of a ferment at one moment, as it stood on the instruments; null where that was not read. */
export const fermentReadSchema = z
  .strictObject({
    atIso: z.iso.datetime({ error: worded('A day and a time, please') }),
    /** As a hydrometer made for 20 °C shows it, and the liquid's temperature in its jar. */
    gravity: z
      .strictObject({
        indicated: within(worded('A gravity'), 0.97, 1.2),
        // Source: the range of `gravityAt20C`.
        temperatureC: within(worded('A temperature of the liquid'), 0, 40, '°C'),
      })
      .nullable(),
    /** Vessel and ferment, with the same things on the balance each time. */
    massG: within(worded('A mass'), 0, 1e7, 'g').nullable(),
    temperatureC: within(worded('A temperature of the ferment'), 0, 60, '°C').nullable(),
    bubblesPerMin: within(worded('A number of bubbles in a minute'), 0, 5000).nullable(),
    ph: within(worded('A pH of a ferment'), 1, 10).nullable(),
    /** Sugar scale of a refractometer, which alcohol falsifies: only with a gravity does it tell anything. */
    refractometerPercent: within(worded('A refractometer reading'), 0, 50, '%').nullable(),
    /** What was done before this reading. */
    treatments: z.array(z.enum(fermentTreatments)).max(fermentTreatments.length),
    note: z.string().max(400, { error: worded('At most 400 characters, please') }),
  })
  .refine(
    ({ atIso: _, treatments, note, ...numbers }) =>
      Object.values(numbers).some((value) => value !== null) ||
      treatments.length > 0 ||
      note.trim() !== '',
    { error: worded('Nothing was entered yet') },
  )
  .refine(
    ({ refractometerPercent, gravity }) => refractometerPercent === null || gravity !== null,
    {
      path: ['refractometerPercent'],
      error: worded(
        'A refractometer alone tells nothing of a ferment: read the gravity too, please',
      ),
    },
  );

export type FermentRead = z.infer<typeof fermentReadSchema>;
