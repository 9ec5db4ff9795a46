/**
 * Checks that what people read of the cautions is the list in shared-core/cautions: the section of README.md, and the table of
 * where each is said; with --write makes both anew.
 *
 * Usage: npx tsx scripts/check-cautions.ts [--write]
 */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { cautionPlacesPage } from './checks/caution-places.ts';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { withCautions } from './checks/readme-cautions.ts';

const root = path.join(import.meta.dirname, '..');
const readmeFile = path.join(root, 'README.md');
const placesFile = path.join(root, 'shared-core', 'cautions', 'PLACES.md');

/** What is wrong with the section, and what to do; null when nothing is. */
export function cautionsProblem(readme: string): string | null {
  const made = withCautions(readme);
  if (made === null) return 'README.md has no marks around its Cautions section; put them back.';
  return made === readme
    ? null
    : 'README.md: its Cautions section is not the list in shared-core/cautions. Run with --write.';
}

/** The same of the table. */
export function placesProblem(page: string): string | null {
  return page === cautionPlacesPage()
    ? null
    : 'shared-core/cautions/PLACES.md is not the list beside it. Run with --write.';
}

if (isEntryPoint(import.meta.url)) {
  if (process.argv.includes('--write')) {
    const made = withCautions(readFileSync(readmeFile, 'utf8'));
    if (made !== null) writeFileSync(readmeFile, made);
    writeFileSync(placesFile, cautionPlacesPage());
  }
  const problems = [
    cautionsProblem(readFileSync(readmeFile, 'utf8')),
    placesProblem(readFileSync(placesFile, 'utf8')),
  ].filter((problem) => problem !== null);
  console.log(
    problems.length === 0
      ? 'README.md and shared-core/cautions/PLACES.md: both are the list.'
      : problems.join('\n'),
  );
  process.exitCode = problems.length === 0 ? 0 : 1;
}
