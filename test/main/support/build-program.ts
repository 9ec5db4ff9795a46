import path from 'node:path';
import { build } from 'vite';

/** Bundles a program of the tests into `folder`, so that starting it takes a moment, not a second. */
export async function buildProgram(source: string, folder: string): Promise<string> {
  await build({
    configFile: false,
    logLevel: 'error',
    // Beside the built file lie no packages.
    ssr: { noExternal: [/^zod/, /^intl-messageformat/, /^@formatjs/] },
    build: {
      ssr: source,
      outDir: folder,
      emptyOutDir: false,
      rollupOptions: { output: { entryFileNames: '[name].mjs' } },
    },
  });
  return path.join(folder, `${path.basename(source, '.ts')}.mjs`);
}
