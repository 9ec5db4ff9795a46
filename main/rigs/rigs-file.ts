import { z } from 'zod';
import { keptRigSchema, setUpSchema } from '#shared-core';
import { usbIdentitySchema } from '../probe/index.ts';

/** Which USB device each probe of the set-up was, in the order of its source; null where it has no identity. */
const devicesSchema = z.array(usbIdentitySchema.nullable()).default([]);

const lastSchema = z.object({
  keptAtIso: z.iso.datetime(),
  setUp: setUpSchema,
  devices: devicesSchema,
});
const rigSchema = z.object({ ...keptRigSchema.shape, devices: devicesSchema });

/** The file as a whole. Its parts are parsed one by one: a damaged rig must not take the others away. */
const fileSchema = z.object({
  format: z.literal('still-head-rigs'),
  version: z.literal(1),
  last: z.unknown(),
  rigs: z.array(z.unknown()),
  hasRehearsed: z.boolean().default(false),
});

export type StoredRig = z.output<typeof rigSchema>;
export interface RigsFile {
  readonly last: z.output<typeof lastSchema> | null;
  readonly rigs: readonly StoredRig[];
  readonly hasRehearsed: boolean;
}

export const noRigs: RigsFile = { last: null, rigs: [], hasRehearsed: false };

/** What was read, and whether that is all there was: a file of which something is left out must not be written over. */
export interface ReadRigs {
  readonly file: RigsFile;
  readonly isWhole: boolean;
}

/** The rigs in a text that {@link rigsText} made, by this version or an older one. */
export function readRigs(text: string): ReadRigs {
  const read = fileSchema.safeParse(parsedJson(text));
  if (!read.success) return { file: noRigs, isWhole: false };
  const { last, rigs, hasRehearsed } = read.data;
  const lastRead = lastSchema.nullable().safeParse(last ?? null);
  const rigsRead = rigs.map((rig) => rigSchema.safeParse(rig));
  const found = rigsRead.flatMap(({ data }) => (data === undefined ? [] : [data]));
  return {
    file: { last: lastRead.data ?? null, rigs: found, hasRehearsed },
    isWhole: lastRead.success && found.length === rigs.length,
  };
}

export function rigsText(file: RigsFile): string {
  return `${JSON.stringify({ format: 'still-head-rigs', version: 1, ...file }, null, 2)}\n`;
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
