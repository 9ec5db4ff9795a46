import { spawn } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { projectRoot } from '../testing/step.ts';
import type { MutantScope } from './scope.ts';

const copied = ['shared-core', 'main', 'renderer', 'scripts', 'test'];

/** Runs the mutation tool in a copy of the project; the file of its report, or null when it failed. */
export async function runStryker(entry: string, scope: MutantScope): Promise<string | null> {
  const name = scope.folder.replaceAll('/', '-');
  const folder = path.join(projectRoot, '.build', 'mutants', name);
  const reportFile = path.join(folder, 'report.json');
  const optionsFile = path.join(folder, 'options.json');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(optionsFile, JSON.stringify(optionsFor(scope, folder, reportFile)));
  const code = await new Promise<number>((resolve) => {
    const child = spawn(process.execPath, [entry, 'run', optionsFile], {
      cwd: projectRoot,
      // The answer alone goes to the standard output.
      stdio: ['ignore', process.stderr, process.stderr],
      env: {
        ...process.env,
        MUTANTS_TESTS: JSON.stringify(scope.tests),
        MUTANTS_LEFT_OUT: JSON.stringify(scope.leftOut),
        MUTANTS_KEEP_THREAD: scope.keepsThread ? 'yes' : 'no',
      },
    });
    child.on('error', () => resolve(1));
    child.on('close', (ended) => resolve(ended ?? 1));
  });
  return code === 0 ? reportFile : null;
}

function optionsFor({ mutate }: MutantScope, folder: string, reportFile: string) {
  return {
    plugins: ['@stryker-mutator/vitest-runner'],
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
