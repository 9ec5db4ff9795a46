/**
 * What a change touches, in some twenty seconds: lint of the changed files, types of their layers, and the tests nearest to them.
 * Counts from the last commit, or from where the branch left `main` when nothing has changed since. `npm test` runs everything.
 *
 * Usage: npm run test:near -- [--since COMMIT]
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { type Changes, changedFiles, gitIn } from './testing/near/changed-files.ts';
import { nearTests } from './testing/near/near-tests.ts';
import { readTests } from './testing/near/read-tests.ts';
import { runSteps } from './testing/run-steps.ts';
import { nodeStep, packageFile, projectRoot, type Step } from './testing/step.ts';
import { typesStep } from './testing/types-step.ts';
import { vitestStep } from './testing/vitest-step.ts';

const layers = ['shared-core', 'main', 'renderer', 'app', 'scripts', 'test'] as const;
/** Of the tests' own times: the rest of the twenty seconds goes into starting them [s]. */
const budgetS = 12;
const buildFolder = path.join(projectRoot, '.build');

const since = readSince();
if (since !== undefined) await checkNear(since);

function readSince(): string | null | undefined {
  try {
    return parseArgs({ options: { since: { type: 'string' } } }).values.since ?? null;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    refuse(`${why} Usage: npm run test:near -- [--since COMMIT]`);
    return undefined;
  }
}

function refuse(why: string): void {
  console.error(why);
  process.exitCode = 2;
}

async function checkNear(from: string | null): Promise<void> {
  const changes = await changedFiles(from, gitIn(projectRoot));
  if (changes === null) {
    refuse(`The commit "${from ?? 'HEAD'}" is not known here; git log lists those that are.`);
    return;
  }
  if (changes.files.length === 0) {
    console.log(`Nothing has changed since ${changes.since}.`);
    return;
  }
  const { passed, failed } = await runSteps(stepsFor(changes), 2, (line) => console.log(line));
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}

function stepsFor({ since: from, files }: Changes): readonly Step[] {
  const tests = readTests(projectRoot, readReport());
  const { run, leftOut } = nearTests(files, tests, budgetS);
  console.log(
    `${files.length} files changed since ${from}, ${run.length} files of tests are near.`,
  );
  if (leftOut.length > 0) {
    console.log(`Near too, but left to npm test: ${leftOut.join(', ')}`);
  }
  const touched = layers.filter((layer) => files.some((file) => file.startsWith(`${layer}/`)));
  return [
    ...(run.length > 0 ? [vitestStep('the tests nearest to them', 'unit', run)] : []),
    ...(touched.length > 0 ? [typesStep(touched)] : []),
    nodeStep('format and lint', [
      packageFile('@biomejs/biome/bin/biome'),
      'ci',
      '--no-errors-on-unmatched',
      '--files-ignore-unknown=true',
      ...files,
    ]),
  ];
}

/** How long each file took in the last whole check, where there was one. */
function readReport(): string | null {
  try {
    return readFileSync(path.join(buildFolder, 'reports', 'unit.json'), 'utf8');
  } catch {
    return null;
  }
}
