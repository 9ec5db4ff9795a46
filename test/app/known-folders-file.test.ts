import { expect, test } from 'vitest';
import { knownFoldersFile } from '../../app/known-folders-file.ts';

const stick = { runsFolder: '/media/stick/runs', usualRunsFolder: '/home/lab/runs' };
const nothing = { ...stick, stateHome: undefined, localAppData: undefined };

test('which folders of runs have been there is kept among what programs keep on this computer, and nothing of the usual one', () => {
  expect([
    knownFoldersFile({ ...nothing, platform: 'win32', homeFolder: 'C:\\Users\\lab' }),
    knownFoldersFile({
      ...nothing,
      platform: 'win32',
      homeFolder: 'C:\\Users\\lab',
      localAppData: 'D:\\lab',
    }),
    knownFoldersFile({ ...nothing, platform: 'darwin', homeFolder: '/Users/lab' }),
    knownFoldersFile({ ...nothing, platform: 'linux', homeFolder: '/home/lab' }),
    knownFoldersFile({ ...nothing, platform: 'linux', homeFolder: '/root', stateHome: '/state' }),
    knownFoldersFile({
      ...nothing,
      platform: 'linux',
      homeFolder: '/home/lab',
      runsFolder: '/home/lab/runs',
    }),
  ]).toEqual([
    'C:\\Users\\lab\\AppData\\Local\\still-head-monitor\\known-folders.json',
    'D:\\lab\\still-head-monitor\\known-folders.json',
    '/Users/lab/Library/Application Support/still-head-monitor/known-folders.json',
    '/home/lab/.local/state/still-head-monitor/known-folders.json',
    '/state/still-head-monitor/known-folders.json',
    undefined,
  ]);
});
