/**
 * The types of each layer, all layers in one process. `tsc -p LAYER` goes through whatever a layer imports as well; here every file is
 * gone through once, by the rules of its own layer. What was checked before is kept.
 *
 * Usage: npx tsx scripts/check-types.ts [LAYER …]
 */
import path from 'node:path';
import process from 'node:process';
import ts from 'typescript';
import { createTypeChecker } from './checks/check-layer-types.ts';
import { projectRoot } from './testing/step.ts';

/** Each after those it imports. */
const layers = ['shared-core', 'main', 'renderer', 'app', 'scripts', 'test'];

const named = process.argv.slice(2);
const stranger = named.find((layer) => !layers.includes(layer));
if (stranger !== undefined) {
  console.error(`"${stranger}" is not known here. The layers are ${layers.join(', ')}.`);
  process.exitCode = 2;
} else {
  const check = createTypeChecker(projectRoot, path.join(projectRoot, '.build', 'types'));
  const found = (named.length > 0 ? named : layers).flatMap(check);
  if (found.length > 0) {
    console.error(ts.formatDiagnostics(found, ts.createCompilerHost({})).trimEnd());
    process.exitCode = 1;
  }
}
