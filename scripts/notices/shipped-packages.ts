import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { z } from 'zod';

const lockedPackageSchema = z.object({
  version: z.string().optional(),
  license: z.union([z.string(), z.unknown().transform(() => 'see its package')]).optional(),
  os: z.array(z.string()).optional(),
  dependencies: z.record(z.string(), z.string()).optional(),
  peerDependencies: z.record(z.string(), z.string()).optional(),
});
const lockSchema = z.object({ packages: z.record(z.string(), lockedPackageSchema) });
type Locked = Readonly<Record<string, z.infer<typeof lockedPackageSchema>>>;

/** A package whose code or fonts are inside the program that people get. */
export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Below the project's root. */
  readonly folder: string;
}

const layers = ['app', 'main', 'renderer', 'shared-core'];
/** Brings its own licence files into the packaged program, written by its packager. */
const bringsItsOwn = ['electron'];

/**
 * What the sources of the program import, and what that needs in turn, by the lock file. Parts made for one system only
 * are left out: they are pieces of a package that is in the list, under its licence.
 */
export function shippedPackages(root: string): readonly ShippedPackage[] {
  const { packages } = lockSchema.parse(
    JSON.parse(readFileSync(path.join(root, 'package-lock.json'), 'utf8')),
  );
  const folders = new Set<string>();
  // What the packaged program carries as files, also when its path is put together while it runs (fonts).
  const carried = Object.keys(packages['']?.dependencies ?? {});
  const waiting = [...carried, ...importedPackages(root)].flatMap(
    (name) => resolve(packages, name, '') ?? [],
  );
  for (let folder = waiting.pop(); folder !== undefined; folder = waiting.pop()) {
    const locked = packages[folder];
    if (locked === undefined || locked.os !== undefined || folders.has(folder)) continue;
    folders.add(folder);
    const needed = { ...locked.dependencies, ...locked.peerDependencies };
    waiting.push(...Object.keys(needed).flatMap((name) => resolve(packages, name, folder) ?? []));
  }
  return [...folders]
    .map((folder) => ({
      name: folder.slice(folder.lastIndexOf('node_modules/') + 'node_modules/'.length),
      version: packages[folder]?.version ?? '',
      licence: packages[folder]?.license ?? 'see its package',
      folder,
    }))
    .filter(({ name }) => !name.startsWith('@types/'))
    .sort((a, b) => (a.name + a.version < b.name + b.version ? -1 : 1));
}

/** Where Node finds a package from the folder of another; null for a peer that is not installed. */
function resolve(packages: Locked, name: string, from: string): string | null {
  let at = from;
  for (;;) {
    const folder = at === '' ? `node_modules/${name}` : `${at}/node_modules/${name}`;
    if (packages[folder] !== undefined) return folder;
    if (at === '') return null;
    at = at.slice(0, Math.max(0, at.lastIndexOf('node_modules/') - 1));
  }
}

function importedPackages(root: string): readonly string[] {
  const names = new Set<string>();
  for (const layer of layers) {
    for (const file of readdirSync(path.join(root, layer), { recursive: true, encoding: 'utf8' })) {
      if (!/\.(tsx?|css)$/.test(file) || file.endsWith('.config.ts')) continue;
      const text = readFileSync(path.join(root, layer, file), 'utf8');
      for (const imported of file.endsWith('.css') ? cssImports(text) : codeImports(text)) {
        const [first = '', second = ''] = imported.split('/');
        if (/^[.#/]|^node:/.test(imported)) continue;
        names.add(first.startsWith('@') ? `${first}/${second}` : first);
      }
    }
  }
  return [...names].filter((name) => !bringsItsOwn.includes(name));
}

function codeImports(text: string): readonly string[] {
  const required = [
    ...text.matchAll(/\brequire(?:\.resolve)?\('([^']+)'\)|\bresolve\('([^']+)'\)/g),
  ];
  return [
    ...ts.preProcessFile(text).importedFiles.map(({ fileName }) => fileName),
    ...required.map(([, name, resolved]) => name ?? resolved ?? '.'),
  ];
}

function cssImports(text: string): readonly string[] {
  return [...text.matchAll(/@import (?:url\()?["']([^"']+)["']/g)].map(([, name = '.']) => name);
}
