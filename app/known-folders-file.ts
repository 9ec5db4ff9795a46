import path from 'node:path';
import type { Surroundings } from './default-runs-folder.ts';

export interface KnownFoldersPlace extends Pick<Surroundings, 'platform' | 'homeFolder'> {
  /** XDG_STATE_HOME and LOCALAPPDATA, where they are set. */
  readonly stateHome: string | undefined;
  readonly localAppData: string | undefined;
  readonly runsFolder: string;
  readonly usualRunsFolder: string;
}

/**
 * Where this computer keeps which folders of runs it has had, on nothing that is carried about: XDG_STATE_HOME of the XDG Base
 * Directory Specification 0.8 on a Linux, the usual folders of programs elsewhere (from memory). Undefined for the usual folder of runs: it is
 * on no stick, and is made whenever it is not there.
 */
export function knownFoldersFile(around: KnownFoldersPlace): string | undefined {
  const { platform, homeFolder, stateHome, localAppData } = around;
  if (around.runsFolder === around.usualRunsFolder) return undefined;
  const name = ['still-head-monitor', 'known-folders.json'];
  if (platform === 'win32') {
    return path.win32.join(
      localAppData || path.win32.join(homeFolder, 'AppData', 'Local'),
      ...name,
    );
  }
  if (platform === 'darwin') {
    return path.posix.join(homeFolder, 'Library', 'Application Support', ...name);
  }
  return path.posix.join(stateHome || path.posix.join(homeFolder, '.local', 'state'), ...name);
}
