import { forkSideProcess, type SideProcess } from '../../side-process/index.ts';

/** Starts the process that goes through whole runs as a child of this one, from source or from a built file. */
export function forkDesk(entry = new URL('./entry.ts', import.meta.url)): SideProcess {
  return forkSideProcess(entry);
}
