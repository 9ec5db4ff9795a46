/**
 * Builds the window and both shells where their sources have changed since the last build.
 *
 * Usage: npm run build
 */
import { buildIfStale } from './building/build-if-stale.ts';
import {
  electronTarget,
  loopbackTarget,
  projectRoot,
  windowTarget,
} from './building/build-targets.ts';

for (const target of [windowTarget, loopbackTarget, electronTarget]) {
  await buildIfStale(target, { root: projectRoot, report: (line) => console.error(line) });
}
