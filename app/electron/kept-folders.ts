import { existsSync } from 'node:fs';
import process from 'node:process';
import type { App } from 'electron';
import { defaultRunsFolder } from '../default-runs-folder.ts';
import { knownFoldersFile } from '../known-folders-file.ts';
import { runsFolderFrom } from './runs-folder-argument.ts';

/** Where runs are kept: the same as without the desktop window, so that every run is found from both. */
export function keptFolders(app: Pick<App, 'getPath'>) {
  const { platform, env, argv } = process;
  const around = { platform, homeFolder: app.getPath('home') };
  const usualRunsFolder = defaultRunsFolder({
    ...around,
    dataHome: env.XDG_DATA_HOME,
    folderExists: existsSync,
  });
  const runsFolder = runsFolderFrom(argv, usualRunsFolder);
  return {
    runsFolder,
    knownFoldersFile: knownFoldersFile({
      ...around,
      stateHome: env.XDG_STATE_HOME,
      localAppData: env.LOCALAPPDATA,
      runsFolder,
      usualRunsFolder,
    }),
  };
}
