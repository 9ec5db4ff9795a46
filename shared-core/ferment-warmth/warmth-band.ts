import { z } from 'zod';

/** No yeast works beyond these [°C]; common practice, no source. */
const [coldestC, hottestC] = [0, 45];
const temperature = (what: string) => {
  const error = `${what} from ${coldestC} to ${hottestC} °C, please`;
  return z.number({ error }).min(coldestC, { error }).max(hottestC, { error });
};

/** How warm a ferment is to be kept [°C]: what the warmer is set to, and the ends between which nothing is said. */
export const warmthBandSchema = z
  .strictObject({
    lowC: temperature('A lower end'),
    aimC: temperature('A set-point'),
    highC: temperature('An upper end'),
  })
  .refine(({ lowC, aimC, highC }) => lowC < aimC && aimC < highC, {
    path: ['aimC'],
    error: 'The set-point lies between the two ends, please',
  });

export type WarmthBand = z.infer<typeof warmthBandSchema>;

/**
 * Where nobody says otherwise. Source: Ferreira, Am. J. Enol. Vitic. 10 (1959) 1, doi 10.5344/ajev.1959.10.1.1: best growth and
 * yield of six strains at 30 °C, a marked decrease above 34 °C; the lower end is common practice, no source.
 */
export const usualWarmthBand: WarmthBand = { lowC: 25, aimC: 30, highC: 34 };
