/**
 * Checks that faces stay small and that nothing lies about: what shared-core exports is used by another layer, what one of
 * its rooms exports is used by another room or layer, and every file is reached from a command or a shell. Tests don't count:
 * they may import any file itself. A part of a type or of a request needs no name of its own: users take it from the whole.
 *
 * Usage: npx tsx scripts/check-faces.ts
 */
import path from 'node:path';
import process from 'node:process';
import { readSourceFiles } from './check-sizes.ts';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { type Use, usesOf } from './checks/module-graph.ts';

export interface FacesReport {
  /** Names that the layer exports. */
  readonly exported: number;
  readonly failures: readonly string[];
}

/** Exported for whoever checks the physics from outside, used here or not. */
const promised = new Set([
  'alcoholByVolume',
  'azeotrope',
  'bubblePoint',
  'createMonitor',
  'densityKgPerM3',
  'dewPoint',
  'headVapour',
  'massFractionFromAlcoholByVolume',
  'platinumTemperatureC',
  'pressureAtAltitudeKPa',
  'saturationPressureKPa',
  'simulateBatch',
]);

/** Files that something other than an import starts: a shell, a build, a bench, a process by its path. */
const entries = [
  /^scripts\/[^/]+\.(ts|mjs|mts)$/,
  /^scripts\/bench\/[^/]+\.bench\.ts$/,
  /^scripts\/attack\/attacked-program\.ts$/,
  /^scripts\/measuring\/page-recorder\.mjs$/,
  /^scripts\/soak\/(speak|warm-services)\.ts$/,
  /^scripts\/desktop\/stand-in-electron\.ts$/,
  /^app\/electron\/(main|preload)\.ts$/,
  /^app\/loopback\/run-loopback\.ts$/,
  /^main\/probe\/worker\/entry\.ts$/,
  /^renderer\/(main\.tsx|vite\.config\.ts)$/,
  /\.d\.ts$/,
];

/** What one person can still know of a layer; a bound of ours, without a source. */
const mostExported = 280;

const layerFace = 'shared-core/index.ts';
const roomFace = /^shared-core\/[^/]+\/index\.ts$/;

export function checkFaces(
  root: string,
  everyFile: readonly string[],
  most = mostExported,
): FacesReport {
  const files = everyFile.filter((file) => !file.startsWith('test/'));
  const uses = usesOf(root, files);
  const layerNames = uses.filter(({ from }) => from === layerFace);
  const usedOutside = new Set(uses.filter(({ to }) => to === layerFace).map(({ name }) => name));
  const needless = layerNames
    .filter(({ name }) => !usedOutside.has(name) && !promised.has(name))
    .map(({ name }) => `${layerFace}: ${name} is used by no other layer`);
  const exported = layerNames.length;
  const tooMany = `${layerFace}: ${exported} names, at most ${most}; take parts of types from the whole, or move what one user needs`;
  return {
    exported,
    failures: [
      ...(exported > most ? [tooMany] : []),
      ...needless,
      ...needlessInRooms(uses),
      ...unreached(files, uses),
    ],
  };
}

function needlessInRooms(uses: readonly Use[]): readonly string[] {
  const taken = new Set(
    uses.filter(({ to }) => roomFace.test(to)).map(({ to, name }) => `${to} ${name}`),
  );
  return uses
    .filter(({ from, name }) => roomFace.test(from) && !taken.has(`${from} ${name}`))
    .map(({ from, name }) => `${from}: ${name} is used by no other room and no other layer`);
}

/** Files that no chain of imports from an entry leads to. */
function unreached(files: readonly string[], uses: readonly Use[]): readonly string[] {
  const leadsTo = new Map<string, string[]>();
  for (const { from, to } of uses) leadsTo.set(from, [...(leadsTo.get(from) ?? []), to]);
  const reached = new Set<string>();
  const waiting = files.filter((file) => entries.some((entry) => entry.test(file)));
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (reached.has(file)) continue;
    reached.add(file);
    waiting.push(...(leadsTo.get(file) ?? []));
  }
  return files
    .filter((file) => /\.tsx?$/.test(file) && !reached.has(file))
    .map((file) => `${file}: no command and no shell reaches it; use it or drop it`);
}

if (isEntryPoint(import.meta.url)) {
  const root = path.join(import.meta.dirname, '..');
  const { exported, failures } = checkFaces(
    root,
    readSourceFiles(root)
      .map(({ file }) => file)
      .filter((file) => !file.endsWith('.css')),
  );
  for (const failure of failures) console.error(failure);
  console.log(`shared-core exports ${exported} names, ${failures.length} problems`);
  process.exitCode = failures.length === 0 ? 0 : 1;
}
