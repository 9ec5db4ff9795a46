import {
  createRunLibrary,
  nodeFileLayer,
  type RunLibrary,
  type RunToExport,
  systemClock,
} from '#main';

/** The runs of a folder, for whoever only reads them. */
export function libraryToRead(runsFolder: string): RunLibrary {
  return createRunLibrary({
    files: nodeFileLayer,
    clock: systemClock,
    runsFolder,
    mayWrite: () => false,
  });
}

/** A run as another program that only reads finds it in the folder; one that cannot be read is an error. */
export async function readWholeRun(runsFolder: string, runId: string): Promise<RunToExport> {
  const whole = await libraryToRead(runsFolder).whole(runId);
  if (!whole.ok) throw new Error(JSON.stringify(whole.error));
  return whole.value;
}
