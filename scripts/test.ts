/**
 * The whole check: formatting, lint, types, layers, docs, sizes, units, integration, browser journeys.
 * Installs Chromium, socat and LibreOffice Calc where it can. Ends with the line `N passed, N failed`.
 *
 * Usage: npm test
 */
import { runSteps } from './testing/run-steps.ts';
import { nodeStep, packageFile, type Step } from './testing/step.ts';
import { provideSystemTools } from './testing/system-tools.ts';
import { vitestStep } from './testing/vitest-step.ts';

const layers = ['shared-core', 'main', 'renderer', 'app', 'scripts', 'test'] as const;

const tsc = packageFile('typescript/bin/tsc');
const biome = packageFile('@biomejs/biome/bin/biome');
const depcruise = packageFile('dependency-cruiser/bin/dependency-cruise.mjs');

const quick: readonly Step[] = [
  nodeStep('format and lint', [biome, 'ci', '.']),
  ...layers.map((layer) => nodeStep(`types of ${layer}`, [tsc, '-p', layer])),
  nodeStep('layers', [depcruise, '--config', '.dependency-cruiser.mjs', ...layers]),
  nodeStep('docs of shared-core', ['--import', 'tsx', 'scripts/check-docs.ts']),
  nodeStep('numbers in texts', ['--import', 'tsx', 'scripts/check-numbers.ts']),
  nodeStep('cautions of README.md', ['--import', 'tsx', 'scripts/check-cautions.ts']),
  nodeStep('file sizes', ['--import', 'tsx', 'scripts/check-sizes.ts']),
  nodeStep('build', ['--import', 'tsx', 'scripts/build.ts']),
];
const thorough: readonly Step[] = [
  vitestStep('units and integration', 'unit'),
  vitestStep('browser journeys', 'browser'),
];

const report = (line: string) => console.log(line);
await provideSystemTools(report);
const first = await runSteps(quick, 2, report);
// One at a time: the journeys drive a whole app and must not wait for a processor.
const second = await runSteps(thorough, 1, report);
const failed = first.failed + second.failed;
console.log(`${first.passed + second.passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
