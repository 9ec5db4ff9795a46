import { z } from 'zod';
import { requests } from '#shared-core';
import type { KeptFormat } from '../kept-file/index.ts';
import { usbIdentitySchema } from '../probe/index.ts';

const known = requests['rigs/list'].answer.shape;

/** Which USB device each probe of the set-up was, in the order of its source; null where it has no identity. */
const devicesSchema = z.array(usbIdentitySchema.nullable()).default([]);

const lastSchema = z.object({ ...known.last.unwrap().shape, devices: devicesSchema });
const rigSchema = z.object({ ...known.rigs.element.shape, devices: devicesSchema });

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

/** How rigs are kept. What a rig of an older program lacks has a usual value in its schema. */
export const rigsFormat: KeptFormat<RigsFile> = {
  version: 1,
  nothing: { last: null, rigs: [], hasRehearsed: false },
  read: readRigs,
  written: (file) => ({ format: 'still-head-rigs', ...file }),
};

function readRigs(json: unknown): ReturnType<KeptFormat<RigsFile>['read']> {
  const read = fileSchema.safeParse(json);
  if (!read.success) return null;
  const { last, rigs, hasRehearsed } = read.data;
  const lastRead = lastSchema.nullable().safeParse(last ?? null);
  const rigsRead = rigs.map((rig) => rigSchema.safeParse(rig));
  const found = rigsRead.flatMap(({ data }) => (data === undefined ? [] : [data]));
  return {
    value: { last: lastRead.data ?? null, rigs: found, hasRehearsed },
    isWhole: lastRead.success && found.length === rigs.length,
  };
}
