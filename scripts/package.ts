/**
 * Packages the desktop shell for this system into `.build/packages`. Fetches the Electron runtime if need be.
 *
 * Usage: npm run package
 */
import path from 'node:path';
import { build } from 'electron-builder';
import { buildIfStale } from './building/build-if-stale.ts';
import { electronTarget, projectRoot, windowTarget } from './building/build-targets.ts';

for (const target of [windowTarget, electronTarget]) {
  await buildIfStale(target, { root: projectRoot, report: (line) => console.error(line) });
}
await build({
  projectDir: projectRoot,
  config: path.join(projectRoot, 'electron-builder.yml'),
  publish: 'never',
});
