import path from 'node:path';
import { build } from 'vite';
import type { BuildTarget } from './build-if-stale.ts';

export const projectRoot = path.join(import.meta.dirname, '..', '..');
export const windowFolder = path.join(projectRoot, '.build', 'renderer');
export const electronFolder = path.join(projectRoot, '.build', 'app');

/** What any build depends on besides its own sources. */
const common = ['package.json', 'package-lock.json', 'tsconfig.json', 'scripts/building'];

/** The window, for both shells. */
export const windowTarget: BuildTarget = {
  name: 'the window',
  outputFolder: windowFolder,
  inputs: [...common, 'renderer', 'shared-core'],
  async build() {
    await build({
      configFile: path.join(projectRoot, 'renderer', 'vite.config.ts'),
      logLevel: 'warn',
    });
  },
};
