import { type SerialSource, succeed } from '#shared-core';
import type { FileLayer } from '../../file-layer/index.ts';
import { createKeptFile } from '../../kept-file/index.ts';
import { takeTurns } from '../../turns/index.ts';
import { isSameDevice, type UsbIdentity, usbIdentitySchema } from '../port/same-device.ts';
import { type KnownProbe, probesFormat } from './probes-file.ts';

/** How each known device was understood the last time. */
export interface ProbeMemory {
  recall(identity: UsbIdentity): SerialSource | null;
  remember(identity: UsbIdentity, source: SerialSource): Promise<void>;
  load(): Promise<void>;
}

export interface ProbeMemorySetup {
  readonly files: FileLayer;
  readonly memoryFile: string;
  /** False while another program has the folder. */
  readonly mayWrite: () => boolean;
}

/** More probes than a department has; the longest unused is forgotten. */
const mostRemembered = 40;

/**
 * The memory in this file, read when it is first needed. It holds a convenience and nothing of a run, so a file that is missing,
 * not understood or not writable means starting from nothing, never an error: the probe is asked for again next time.
 */
export function createProbeMemory({ files, memoryFile, mayWrite }: ProbeMemorySetup): ProbeMemory {
  const file = createKeptFile(files, memoryFile, probesFormat);
  const inTurn = takeTurns();
  let probes: readonly KnownProbe[] = [];
  let loading: Promise<void> | null = null;

  function load(): Promise<void> {
    loading ??= file.read().then((found) => {
      if (found.ok) probes = found.value;
      // Its drive may be plugged in later.
      else loading = null;
    });
    return loading;
  }

  return {
    load,
    recall: (identity) => probes.find((probe) => isSameDevice(probe, identity))?.source ?? null,
    remember: (identity, source) =>
      inTurn(async () => {
        await load();
        const known = { ...usbIdentitySchema.parse(identity), source };
        const withIt = (all: readonly KnownProbe[]) => {
          const others = all.filter((probe) => !isSameDevice(probe, identity));
          return [known, ...others].slice(0, mostRemembered);
        };
        probes = withIt(probes);
        if (mayWrite()) await file.change((kept) => succeed(withIt(kept)));
      }),
  };
}
