import { expect, test } from 'vitest';
import { defaultRunsFolder } from '../../app/default-runs-folder.ts';

const nothing = { dataHome: undefined, folderExists: () => false };

test('runs are kept in the documents of the person, or in the data folder where there are none', () => {
  expect([
    defaultRunsFolder({ ...nothing, platform: 'win32', homeFolder: 'C:\\Users\\lab' }),
    defaultRunsFolder({ ...nothing, platform: 'darwin', homeFolder: '/Users/lab' }),
    defaultRunsFolder({
      ...nothing,
      platform: 'linux',
      homeFolder: '/home/lab',
      folderExists: (folder) => folder === '/home/lab/Documents',
    }),
    defaultRunsFolder({ ...nothing, platform: 'linux', homeFolder: '/home/lab' }),
    defaultRunsFolder({ ...nothing, platform: 'linux', homeFolder: '/home/lab', dataHome: '' }),
    defaultRunsFolder({ ...nothing, platform: 'linux', homeFolder: '/root', dataHome: '/data' }),
  ]).toEqual([
    'C:\\Users\\lab\\Documents\\Still Head Monitor',
    '/Users/lab/Documents/Still Head Monitor',
    '/home/lab/Documents/Still Head Monitor',
    '/home/lab/.local/share/still-head-monitor',
    '/home/lab/.local/share/still-head-monitor',
    '/data/still-head-monitor',
  ]);
});
