import { constants, copyFile, mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { z } from 'zod';
import { type SerialSource, serialSourceSchema } from '#shared-core';
import { isSameDevice, type UsbIdentity, usbIdentitySchema } from '../port/same-device.ts';

/** How each known device was understood the last time. */
export interface ProbeMemory {
  recall(identity: UsbIdentity): SerialSource | null;
  remember(identity: UsbIdentity, source: SerialSource): Promise<void>;
}

const entrySchema = z.strictObject({ ...usbIdentitySchema.shape, source: serialSourceSchema });
const fileSchema = z.strictObject({ version: z.literal(1), probes: z.array(entrySchema) });

/** More probes than a department has; the longest unused is forgotten. */
const mostRemembered = 40;

/**
 * The memory in this file, read when it is first needed. It holds a convenience and nothing of a run,
 * so a file that is missing, damaged or not writable means starting from nothing, never an error. What is not understood may be a
 * newer version's: it is put aside, never written over.
 */
export function createProbeMemory(filePath: string): ProbeMemory & { load(): Promise<void> } {
  let probes: readonly z.infer<typeof entrySchema>[] = [];
  let loading: Promise<void> | null = null;
  let isToPutAside = false;

  function load(): Promise<void> {
    loading ??= read(filePath).then((found) => {
      probes = found ?? [];
      if (found === null) isToPutAside = true;
    });
    return loading;
  }

  return {
    load,
    recall: (identity) => probes.find((probe) => isSameDevice(probe, identity))?.source ?? null,
    async remember(identity, source) {
      await load();
      const others = probes.filter((probe) => !isSameDevice(probe, identity));
      probes = [{ ...usbIdentitySchema.parse(identity), source }, ...others].slice(
        0,
        mostRemembered,
      );
      if (isToPutAside) await putAside(filePath);
      isToPutAside = false;
      await write(filePath, probes);
    },
  };
}

type Entries = readonly z.infer<typeof entrySchema>[];

/** Null for a file that is there and not understood. */
async function read(filePath: string): Promise<Entries | null> {
  try {
    return understood(await readFile(filePath, 'utf8'));
  } catch {
    return [];
  }
}

function understood(text: string): Entries | null {
  try {
    return fileSchema.safeParse(JSON.parse(text)).data?.probes ?? null;
  } catch {
    return null;
  }
}

async function putAside(filePath: string): Promise<void> {
  for (let number = 1; ; number += 1) {
    const aside = `${filePath}.not-understood${number === 1 ? '' : `-${number}`}`;
    try {
      await copyFile(filePath, aside, constants.COPYFILE_EXCL);
      return;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) return;
    }
  }
}

async function write(filePath: string, probes: readonly unknown[]): Promise<void> {
  const unfinished = `${filePath}.new`;
  try {
    await mkdir(path.dirname(filePath), { recursive: true, mode: 0o700 });
    await writeFile(unfinished, `${JSON.stringify({ version: 1, probes }, null, 2)}\n`, {
      mode: 0o600,
    });
    await rename(unfinished, filePath);
  } catch {
    // A read-only folder: the probe is asked for again next time.
  }
}
