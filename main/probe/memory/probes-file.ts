import { z } from 'zod';
import { serialSourceSchema } from '#shared-core';
import type { KeptFormat } from '../../kept-file/index.ts';
import { usbIdentitySchema } from '../port/same-device.ts';

const entrySchema = z.strictObject({ ...usbIdentitySchema.shape, source: serialSourceSchema });

const probesFormatName = 'still-head-probes';
export const probesFileName = 'known-probes.json';

/** The first version did not say what it is. */
const fileSchema = z.union([
  z.strictObject({ version: z.literal(1), probes: z.array(entrySchema) }),
  z.strictObject({
    format: z.literal(probesFormatName),
    version: z.literal(2),
    probes: z.array(entrySchema),
  }),
]);

/** A device and how it was understood the last time; the newest first. */
export type KnownProbe = z.output<typeof entrySchema>;

export const probesFormat: KeptFormat<readonly KnownProbe[]> = {
  version: 2,
  nothing: [],
  read(json) {
    const { data } = fileSchema.safeParse(json);
    return data === undefined ? null : { value: data.probes, isWhole: true };
  },
  written: (probes) => ({ format: probesFormatName, probes }),
};
