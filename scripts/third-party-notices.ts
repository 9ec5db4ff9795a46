/**
 * Writes the notices of all packages and fonts that are inside the program: name, version and the very text of each
 * licence, from the packages as installed. They are part of the window (Help, Licences) and of the packaged program.
 *
 * Usage: npx tsx scripts/third-party-notices.ts
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { type ShippedPackage, shippedPackages } from './notices/shipped-packages.ts';

const root = path.join(import.meta.dirname, '..');
export const noticesFile = path.join(root, 'renderer', 'help', 'third-party-notices.txt');

const licenceFile = /^(licen[cs]es?|copying|notice|ofl)([._-].*)?$/i;

/** Texts that several packages share word for word stand once, under all of their names. */
export function thirdPartyNotices(): string {
  const namesByText = new Map<string, string[]>();
  for (const shipped of shippedPackages(root)) {
    const text = licenceTextOf(shipped);
    const names = namesByText.get(text) ?? [];
    names.push(`${shipped.name} ${shipped.version} (${shipped.licence})`);
    namesByText.set(text, names);
  }
  const rule = '='.repeat(80);
  return [...namesByText]
    .map(([text, names]) => `${rule}\n${names.join('\n')}\n${rule}\n\n${text}\n`)
    .join('\n');
}

/** A package without a file of its own is under the plain text of the licence that it names. */
function licenceTextOf({ folder, licence }: ShippedPackage): string {
  const files = readdirSync(path.join(root, folder)).filter((file) => licenceFile.test(file));
  if (files.length === 0)
    return `Its package holds no licence file; it names the licence ${licence}.`;
  return files
    .sort()
    .map((file) =>
      readFileSync(path.join(root, folder, file), 'utf8')
        .replaceAll('\r\n', '\n')
        .trim(),
    )
    .join('\n\n');
}

if (isEntryPoint(import.meta.url)) {
  writeFileSync(noticesFile, thirdPartyNotices());
  console.log(`Written: ${path.relative(root, noticesFile)}`);
}
