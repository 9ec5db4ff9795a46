import { readFileSync } from 'node:fs';
import path from 'node:path';
import { build, type InlineConfig } from 'vite';
import { z } from 'zod';
import type { BuildTarget } from './build-if-stale.ts';

const { dependencies } = z
  .object({ dependencies: z.record(z.string(), z.string()) })
  .parse(JSON.parse(readFileSync(path.join(import.meta.dirname, '../../package.json'), 'utf8')));

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

/** The desktop shell: main process, the preload script of its window, the process that reads ports. */
export const electronTarget: BuildTarget = {
  name: 'the desktop shell',
  outputFolder: electronFolder,
  inputs: [...common, 'app', 'main', 'shared-core'],
  async build() {
    await build(electronBuild('app/electron/main.ts', 'es', 'main.mjs'));
    await build(electronBuild('app/electron/preload.ts', 'cjs', 'preload.cjs'));
    await build(electronBuild('main/probe/worker/entry.ts', 'es', 'probe.mjs'));
  },
};

/** One file in, one file out: a sandboxed preload script can load nothing but itself. */
function electronBuild(entry: string, format: 'es' | 'cjs', fileName: string): InlineConfig {
  return {
    configFile: false,
    root: projectRoot,
    logLevel: 'warn',
    ssr: { noExternal: true, external: ['electron'] },
    build: {
      ssr: path.join(projectRoot, entry),
      outDir: electronFolder,
      emptyOutDir: false,
      target: 'node22',
      minify: false,
      rolldownOptions: {
        external: isLeftOutside,
        output: { format, entryFileNames: fileName, codeSplitting: false },
      },
    },
  };
}

/** A packaged program carries Electron and its `dependencies` (those with native code) as files of their own. */
function isLeftOutside(imported: string): boolean {
  return ['electron', ...Object.keys(dependencies)].some(
    (name) => imported === name || imported.startsWith(`${name}/`),
  );
}
