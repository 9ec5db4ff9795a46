import path from 'node:path';
import { build, type InlineConfig } from 'vite';
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

/** The desktop shell: the main process and the preload script of its window. */
export const electronTarget: BuildTarget = {
  name: 'the desktop shell',
  outputFolder: electronFolder,
  inputs: [...common, 'app', 'main', 'shared-core'],
  async build() {
    await build(electronBuild('main.ts', 'es', 'main.mjs', /^(electron|serialport|@lydell\/|@serialport\/)/));
    await build(electronBuild('preload.ts', 'cjs', 'preload.cjs', 'electron'));
  },
};

/** One file in, one file out: a sandboxed preload script can load nothing but itself. */
function electronBuild(
  entry: string,
  format: 'es' | 'cjs',
  fileName: string,
  external: string | RegExp,
): InlineConfig {
  return {
    configFile: false,
    root: projectRoot,
    logLevel: 'warn',
    ssr: { noExternal: true, external: ['electron'] },
    build: {
      ssr: path.join(projectRoot, 'app', 'electron', entry),
      outDir: electronFolder,
      emptyOutDir: false,
      target: 'node22',
      minify: false,
      rolldownOptions: {
        external,
        output: { format, entryFileNames: fileName, codeSplitting: false },
      },
    },
  };
}
