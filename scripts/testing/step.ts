import path from 'node:path';
import { runCommand } from './run-command.ts';

export const projectRoot = path.join(import.meta.dirname, '..', '..');

export interface StepOutcome {
  readonly passed: number;
  readonly failed: number;
  /** What to read when something failed. */
  readonly output: string;
  readonly tookS: number;
}

/** A part of the whole check with a name for people. */
export interface Step {
  readonly name: string;
  run(): Promise<StepOutcome>;
}

/** A step that is one Node program of this project: passed when it ends with code 0. */
export function nodeStep(name: string, nodeArguments: readonly string[]): Step {
  return {
    name,
    async run() {
      const { code, output, tookS } = await runCommand(process.execPath, nodeArguments, {
        cwd: projectRoot,
      });
      return { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, output, tookS };
    },
  };
}

/** The entry file of an installed package's command, run by Node itself so that Windows needs no shell. */
export function packageFile(file: string): string {
  return path.join(projectRoot, 'node_modules', file);
}
