import { readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import type { InlineConfig } from 'vite';
import type { BuildTarget } from './build-if-stale.ts';

export const projectRoot = path.join(import.meta.dirname, '..', '..');
export const windowFolder = path.join(projectRoot, '.build', 'renderer');
export const electronFolder = path.join(projectRoot, '.build', 'app');
const loopbackFolder = path.join(projectRoot, '.build', 'loopback');
/** The browser shell, the process that reads ports and the one that goes through whole runs, built. */
export const loopbackProgram = path.join(loopbackFolder, 'loopback.mjs');
export const loopbackProbeProgram = path.join(loopbackFolder, 'probe.mjs');
export const loopbackDeskProgram = path.join(loopbackFolder, 'desk.mjs');

const probeEntry = 'main/probe/worker/entry.ts';
const deskEntry = 'main/session/desk/entry.ts';

/** What any build depends on besides its own sources. */
const common = ['package.json', 'package-lock.json', 'tsconfig.json', 'scripts/building'];

/** The window, for both shells. */
export const windowTarget: BuildTarget = {
  name: 'the window',
  outputFolder: windowFolder,
  inputs: [...common, 'renderer', 'shared-core'],
  async build() {
    await bundle({
      configFile: path.join(projectRoot, 'renderer', 'vite.config.ts'),
      logLevel: 'warn',
    });
  },
};

/** The desktop shell: main process, the preload script of its window, the processes beside it. */
export const electronTarget: BuildTarget = {
  name: 'the desktop shell',
  outputFolder: electronFolder,
  inputs: [...common, 'app', 'main', 'shared-core'],
  async build() {
    const place = { folder: electronFolder, target: 'node22' } as const;
    await bundle(program('app/electron/main.ts', { ...place, fileName: 'main.mjs' }));
    await bundle(program('app/electron/preload.ts', { ...place, fileName: 'preload.cjs' }));
    await bundle(program(probeEntry, { ...place, fileName: 'probe.mjs' }));
    await bundle(program(deskEntry, { ...place, fileName: 'desk.mjs' }));
  },
};

/** The browser shell: as a few files it is there in a fraction of the time that a thousand sources take to be translated. */
export const loopbackTarget: BuildTarget = {
  name: 'the browser shell',
  outputFolder: loopbackFolder,
  inputs: [...common, 'app', 'main', 'shared-core'],
  async build() {
    const place = { folder: loopbackFolder, target: 'node20' } as const;
    await bundle(
      program('app/loopback/run-loopback.ts', {
        ...place,
        fileName: path.basename(loopbackProgram),
      }),
    );
    await bundle(program(probeEntry, { ...place, fileName: path.basename(loopbackProbeProgram) }));
    await bundle(program(deskEntry, { ...place, fileName: path.basename(loopbackDeskProgram) }));
  },
};

/**
 * Vite is loaded only where something is stale: it takes longer than all else that a start does. It takes the name of the
 * environment from wherever it is started, and outside of `production` it bundles the React that checks itself: a window several
 * times as slow, which whoever built it in a test would go on using.
 */
async function bundle(config: InlineConfig): Promise<void> {
  const { build } = await import('vite');
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  try {
    await build(config);
  } finally {
    if (NODE_ENV === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = NODE_ENV;
  }
}

interface ProgramPlace {
  readonly folder: string;
  readonly fileName: string;
  readonly target: 'node20' | 'node22';
}

/** One file in, one file out: a sandboxed preload script can load nothing but itself. */
function program(entry: string, { folder, fileName, target }: ProgramPlace): InlineConfig {
  const leftOutside = packagesLeftOutside();
  return {
    configFile: false,
    root: projectRoot,
    logLevel: 'warn',
    ssr: { noExternal: true, external: ['electron'] },
    build: {
      ssr: path.join(projectRoot, entry),
      outDir: folder,
      emptyOutDir: false,
      target,
      minify: false,
      rolldownOptions: {
        external: (imported) =>
          leftOutside.some((name) => imported === name || imported.startsWith(`${name}/`)),
        output: {
          format: fileName.endsWith('.cjs') ? 'cjs' : 'es',
          entryFileNames: fileName,
          codeSplitting: false,
        },
      },
    },
  };
}

/** Electron and the `dependencies` (those with native code, and fonts) stay files of their own. */
function packagesLeftOutside(): readonly string[] {
  const text = readFileSync(path.join(projectRoot, 'package.json'), 'utf8');
  const { dependencies } = JSON.parse(text) as { dependencies: Record<string, string> };
  return ['electron', ...Object.keys(dependencies)];
}
