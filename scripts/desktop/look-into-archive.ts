import { closeSync, openSync, readFileSync, readSync, statSync } from 'node:fs';
import path from 'node:path';
import { extractAll, listPackage, statFile } from '@electron/asar';
import { kindOfPath, nativeKind } from './native-kind.ts';

export interface ArchiveLook {
  readonly bytes: number;
  /** Everything that should not be so, in sentences. */
  readonly complaints: readonly string[];
  /** The packages inside, with their bytes, largest first. */
  readonly packages: readonly (readonly [string, number])[];
}

/** What the program opens by these very names. */
const entries = [
  'package.json',
  'LICENSE',
  '.build/app/desk.mjs',
  '.build/app/main.mjs',
  '.build/app/preload.cjs',
  '.build/app/probe.mjs',
  '.build/renderer/index.html',
];
const wantedTops = new Set(['package.json', 'LICENSE', '.build', 'node_modules']);
/** What no program opens: sources of others' builds, tests, and everything of this project but the built files. */
const unwanted = [/\.map$/, /\.tsx?$/, /(^|\/)\.fingerprint$/, /(^|\/)(test|tests|__tests__)\//];

/** Looks at every name in the archive, and at the first bytes of every native module beside it. */
export function lookIntoArchive(resources: string): ArchiveLook {
  const archive = path.join(resources, 'app.asar');
  const complaints: string[] = [];
  const sizes = new Map<string, number>();
  const names = listPackage(archive, { isPack: false }).map((name) => name.replace(/^[\\/]/, ''));
  for (const name of names) {
    const found = statFile(archive, name);
    if (!('size' in found)) continue;
    const [top = '', ...rest] = name.split('/');
    if (!wantedTops.has(top)) complaints.push(`${name} has no business in the archive.`);
    const isUnwanted = unwanted.some((pattern) => pattern.test(name));
    if (isUnwanted) complaints.push(`${name} is opened by nobody.`);
    const owner =
      top === 'node_modules' ? rest.slice(0, rest[0]?.startsWith('@') ? 2 : 1).join('/') : top;
    if (found.unpacked !== true) sizes.set(owner, (sizes.get(owner) ?? 0) + found.size);
    if (name.endsWith('.node')) {
      const complaint = found.unpacked === true ? judgeNative(resources, name) : 'is sealed in.';
      if (complaint !== null) complaints.push(`${name} ${complaint}`);
    }
  }
  for (const entry of entries) {
    if (!names.includes(entry)) complaints.push(`${entry} is missing.`);
  }
  return {
    bytes: statSync(archive).size,
    complaints,
    packages: [...sizes].sort(([, a], [, b]) => b - a),
  };
}

/** A module for another system is no use, and one whose bytes are not what its folder says would fail at the bench. */
function judgeNative(resources: string, name: string): string | null {
  const file = openSync(path.join(resources, 'app.asar.unpacked', name), 'r');
  const bytes = Buffer.alloc(4);
  readSync(file, bytes, 0, 4, 0);
  closeSync(file);
  const kind = nativeKind(bytes);
  const meant = kindOfPath(name);
  return meant === null || meant === kind ? null : `is for ${kind}, and lies where ${meant} looks.`;
}

/** Puts the archive's content into a folder, as the program sees it: with what lies beside it. */
export function unpackArchive(resources: string, folder: string): { readonly main: string } {
  extractAll(path.join(resources, 'app.asar'), folder);
  const about = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8'));
  return { main: path.join(folder, String(about.main)) };
}
