/**
 * Checks that the Cautions section of README.md is the list in shared-core/cautions; with --write makes it anew.
 *
 * Usage: npx tsx scripts/check-cautions.ts [--write]
 */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { withCautions } from './checks/readme-cautions.ts';

const readmeFile = path.join(import.meta.dirname, '..', 'README.md');

/** What is wrong with the section, and what to do; null when nothing is. */
export function cautionsProblem(readme: string): string | null {
  const made = withCautions(readme);
  if (made === null) return 'README.md has no marks around its Cautions section; put them back.';
  return made === readme
    ? null
    : 'README.md: its Cautions section is not the list in shared-core/cautions. Run with --write.';
}

if (isEntryPoint(import.meta.url)) {
  const readme = readFileSync(readmeFile, 'utf8');
  const made = withCautions(readme);
  if (process.argv.includes('--write') && made !== null) writeFileSync(readmeFile, made);
  const problem = cautionsProblem(readFileSync(readmeFile, 'utf8'));
  console.log(problem ?? 'README.md: the Cautions section is the list.');
  process.exitCode = problem === null ? 0 : 1;
}
