import { spawn } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { projectRoot } from '../testing/step.ts';
import type { MutantSample } from './mutants-options.ts';
import type { MutantScope } from './scope.ts';

const copied = ['shared-core', 'main', 'renderer', 'scripts', 'test'];

const testRunner = '@stryker-mutator/vitest-runner';
const samplePlugin = {
  plugins: [testRunner, path.join(import.meta.dirname, 'sample-plugin.mjs')],
  checkers: ['sample'],
};

/** Runs the mutation tool in a copy of the project; the file of its report, or null when it failed. */
export async function runStryker(
  entry: string,
  scope: MutantScope,
  sample: MutantSample | null,
): Promise<string | null> {
  const name = scope.folder.replaceAll('/', '-');
  const folder = path.join(projectRoot, '.build', 'mutants', name);
  const reportFile = path.join(folder, 'report.json');
  const optionsFile = path.join(folder, 'options.json');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    optionsFile,
    JSON.stringify({
      ...optionsFor(scope, folder, reportFile),
      ...(sample && samplePlugin),
    }),
  );
  const code = await new Promise<number>((resolve) => {
    const child = spawn(process.execPath, [entry, 'run', optionsFile], {
      cwd: projectRoot,
      // The answer alone goes to the standard output.
      stdio: ['ignore', process.stderr, process.stderr],
      env: {
        ...process.env,
        MUTANTS_TESTS: JSON.stringify(scope.tests),
        MUTANTS_LEFT_OUT: JSON.stringify(scope.leftOut),
        ...(sample && { MUTANTS_SAMPLE: JSON.stringify(sample) }),
        MUTANTS_PATIENCE_S: '10',
        // Where local time is the world's, or whole hours from it, a mutant of either looks like the other.
        TZ: 'Australia/Adelaide',
        ...(scope.keeps && { MUTANTS_KEPT: scope.keeps }),
      },
    });
    child.on('error', () => resolve(1));
    child.on('close', (ended) => resolve(ended ?? 1));
  });
  return code === 0 ? reportFile : null;
}

function optionsFor({ mutate }: MutantScope, folder: string, reportFile: string) {
  return {
    plugins: [testRunner],
    testRunner: 'vitest',
    vitest: { configFile: 'test/mutants.config.ts', related: false },
    mutate: [mutate],
    ignorePatterns: [
      '*',
      ...copied.map((layer) => `!${layer}/**`),
      '!package.json',
      '!tsconfig.json',
    ],
    coverageAnalysis: 'perTest',
    // What is changed before any test begins could only be told by loading everything anew for each.
    ignoreStatic: true,
    concurrency: 1,
    // The monitor's own tests take minutes, several times as long in changed code on a machine at work.
    dryRunTimeoutMinutes: 60,
    // Generous, since a time-out is no verdict.
    timeoutMS: 20_000,
    timeoutFactor: 2,
    disableTypeChecks: false,
    tempDirName: path.relative(projectRoot, path.join(folder, 'sandbox')),
    cleanTempDir: 'always',
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: path.relative(projectRoot, reportFile) },
    allowConsoleColors: false,
  };
}
