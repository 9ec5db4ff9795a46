import { forkSideProcess } from '../../side-process/index.ts';
import type { ProbeWorker } from './worker-port.ts';

/** Starts the serial process as a child of this one, from source or from a built file. */
export function forkProbeWorker(entry = new URL('./entry.ts', import.meta.url)): ProbeWorker {
  return forkSideProcess(entry);
}
