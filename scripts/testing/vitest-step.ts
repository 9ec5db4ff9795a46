import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { runCommand } from './run-command.ts';
import { packageFile, projectRoot, type Step } from './step.ts';
import { tallyTestReport } from './test-report.ts';

/** The projects of `test/vitest.config.ts` that make up a step. */
const projects = { unit: ['window', 'unit'], browser: ['browser'] } as const;

/**
 * Runs a part of the tests and counts its tests one by one.
 *
 * @param files only these; the report of all stays as it was
 */
export function vitestStep(
  name: string,
  suite: keyof typeof projects,
  files: readonly string[] = [],
): Step {
  const folder = path.join(projectRoot, '.build', 'reports');
  const reportFile = path.join(folder, files.length > 0 ? 'near.json' : `${suite}.json`);
  return {
    name,
    async run() {
      mkdirSync(folder, { recursive: true });
      rmSync(reportFile, { force: true });
      const { code, output, tookS } = await runCommand(
        process.execPath,
        [
          packageFile('vitest/vitest.mjs'),
          'run',
          '--config',
          'test/vitest.config.ts',
          ...projects[suite].flatMap((project) => ['--project', project]),
          '--reporter=default',
          '--reporter=json',
          `--outputFile.json=${reportFile}`,
          ...files,
        ],
        { cwd: projectRoot },
      );
      const { passed, failed } = tallyTestReport(readReport(reportFile));
      // An error outside any test (an unhandled rejection) fails the run although every test passed.
      const strayFailure = code !== 0 && failed === 0 ? 1 : 0;
      return { passed, failed: failed + strayFailure, output, tookS };
    },
  };
}

function readReport(file: string): string | null {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return null;
  }
}
