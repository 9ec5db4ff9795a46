import { buildIfStale } from '../../../scripts/building/build-if-stale.ts';
import {
  loopbackTarget,
  projectRoot,
  windowTarget,
} from '../../../scripts/building/build-targets.ts';

/** Before the first journey: two apps that start at once would both build what is stale, one of them under the other's window. */
export default async function buildFirst(): Promise<void> {
  for (const target of [windowTarget, loopbackTarget]) {
    await buildIfStale(target, { root: projectRoot, report: (line) => console.error(line) });
  }
}
