import path from 'node:path';

export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly homeFolder: string;
  /** XDG_DATA_HOME, where it is set. */
  readonly dataHome: string | undefined;
  readonly folderExists: (folder: string) => boolean;
}

/**
 * Where runs are kept unless the person says otherwise: in their documents, because they are theirs to find,
 * copy and hand in. A Linux without such a folder has the data folder of the XDG Base Directory
 * Specification 0.8 instead.
 */
export function defaultRunsFolder(around: Surroundings): string {
  const { platform, homeFolder, dataHome, folderExists } = around;
  const join = platform === 'win32' ? path.win32.join : path.posix.join;
  const documents = join(homeFolder, 'Documents');
  if (platform === 'win32' || platform === 'darwin' || folderExists(documents)) {
    return join(documents, 'Still Head Monitor');
  }
  return join(dataHome || join(homeFolder, '.local', 'share'), 'still-head-monitor');
}
