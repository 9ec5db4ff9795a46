import { createRunLibrary, nodeFileLayer, systemClock } from '#main';
import type { RunToExport } from '../../../main/run-library/index.ts';

/** A run as another program that only reads finds it in the folder. */
export async function readWholeRun(runsFolder: string, runId: string): Promise<RunToExport> {
  const library = createRunLibrary({
    files: nodeFileLayer,
    clock: systemClock,
    runsFolder,
    mayWrite: () => false,
  });
  const whole = await library.whole(runId);
  if (!whole.ok) throw new Error(whole.error.kind);
  return whole.value;
}
