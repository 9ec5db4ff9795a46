/**
 * The whole check: formatting, lint, types, layers, docs, sizes, units, integration, browser journeys.
 * Asks before it installs Chromium, socat, LibreOffice Calc, pandas and R as root; `--install-tools` or CI=true says yes. Ends with the
 * line `N passed, N failed`.
 *
 * Usage: npm test -- [--install-tools]
 */
import process from 'node:process';
import { consentFacts, installConsent } from './testing/install-consent.ts';
import { runCommand } from './testing/run-command.ts';
import { runSteps } from './testing/run-steps.ts';
import { nodeStep, packageFile, projectRoot, type Step } from './testing/step.ts';
import { aptPrefix, isOnPath, provideSystemTools } from './testing/system-tools.ts';
import { typesStep } from './testing/types-step.ts';
import { vitestStep } from './testing/vitest-step.ts';

const layers = ['test', 'renderer', 'scripts', 'app', 'main', 'shared-core'] as const;

const biome = packageFile('@biomejs/biome/bin/biome');
const depcruise = packageFile('dependency-cruiser/bin/dependency-cruise.mjs');

const quick: readonly Step[] = [
  // The longest first, so that no core waits for it in the end.
  typesStep(),
  nodeStep('build', ['--import', 'tsx', 'scripts/build.ts']),
  nodeStep('format and lint', [biome, 'ci', '.']),
  nodeStep('layers', [depcruise, '--config', '.dependency-cruiser.mjs', ...layers]),
  nodeStep('docs of shared-core', ['--import', 'tsx', 'scripts/check-docs.ts']),
  nodeStep('faces', ['--import', 'tsx', 'scripts/check-faces.ts']),
  nodeStep('numbers in texts', ['--import', 'tsx', 'scripts/check-numbers.ts']),
  nodeStep('cautions of README.md', ['--import', 'tsx', 'scripts/check-cautions.ts']),
  nodeStep('words said', ['--import', 'tsx', 'scripts/check-words.ts']),
  nodeStep('file sizes', ['--import', 'tsx', 'scripts/check-sizes.ts']),
  nodeStep('desktop program, packed', ['--import', 'tsx', 'scripts/check-desktop.ts']),
];
/** Beside one another: a journey mostly waits for its still, and the units find work for every processor meanwhile. */
const thorough: readonly Step[] = [
  vitestStep('browser journeys', 'browser'),
  vitestStep('units and integration', 'unit'),
];

const report = (line: string) => console.log(line);
const words = process.argv.slice(2);
const stranger = words.find((word) => word !== '--install-tools');
if (stranger !== undefined) {
  console.error(`"${stranger}" is not known here. Usage: npm test -- [--install-tools]`);
  process.exitCode = 2;
} else if (await provideTools()) {
  const first = await runSteps(quick, 2, report);
  const second = await runSteps(thorough, thorough.length, report);
  end(first.passed + second.passed, first.failed + second.failed);
} else {
  end(0, 1);
}

function provideTools(): Promise<boolean> {
  const searchPath = process.env.PATH ?? '';
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return provideSystemTools({
    searchPath,
    prefix: aptPrefix(process.platform, process.getuid?.() ?? -1, isOnPath('apt-get', searchPath)),
    consent: (question) => installConsent(consentFacts(words, process), question),
    run: (command, rest) => runCommand(command, rest, { cwd: projectRoot, env }),
    report,
  });
}

function end(passed: number, failed: number): void {
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}
