import { existsSync } from 'node:fs';
import path from 'node:path';
import type { Consent } from './install-consent.ts';
import type { CommandOutcome } from './run-command.ts';

/** A program of the operating system that the checks drive, and the Debian packages that have it. */
export interface SystemTool {
  readonly program: string;
  /** Where the system has it, should another one come first on the search path. */
  readonly otherwise?: string;
  readonly debianPackages: readonly string[];
  readonly usedFor: string;
  /** What it must run to its end, where the program alone is not enough. */
  readonly proof?: readonly string[];
}

export const systemTools: readonly SystemTool[] = [
  {
    program: 'chromium',
    debianPackages: ['chromium'],
    usedFor: 'the journeys through the window',
  },
  {
    program: 'socat',
    debianPackages: ['socat'],
    usedFor: 'the serial path without hardware',
  },
  {
    program: 'soffice',
    debianPackages: ['libreoffice-calc'],
    usedFor: 'opening exported workbooks and CSV files as a spreadsheet does',
  },
  {
    program: 'lowriter',
    debianPackages: ['libreoffice-writer'],
    usedFor: 'opening the report for word processors as one does',
  },
  {
    program: 'python3',
    otherwise: '/usr/bin/python3',
    debianPackages: ['python3-pandas', 'python3-matplotlib'],
    usedFor: 'running the notebook of an export pack in Python',
    proof: ['-c', 'import pandas, matplotlib'],
  },
  {
    program: 'Rscript',
    debianPackages: ['r-base-core', 'r-cran-readr', 'r-cran-ggplot2'],
    usedFor: 'running the notebook of an export pack in R',
    proof: ['-e', 'library(readr); library(ggplot2)'],
  },
  {
    program: 'avr-g++',
    debianPackages: ['gcc-avr', 'avr-libc', 'arduino-core-avr'],
    usedFor: 'compiling the sketches of the reference probe',
    proof: [
      ...['-fsyntax-only', '-x', 'c++', '-std=gnu++11', '-mmcu=atmega328p', '-DF_CPU=16000000UL'],
      '-I/usr/share/arduino/hardware/arduino/avr/variants/standard',
      '/usr/share/arduino/hardware/arduino/avr/cores/arduino/Arduino.h',
    ],
  },
];

/** Whether a program is on the search path. */
export function isOnPath(program: string, searchPath: string): boolean {
  return searchPath
    .split(path.delimiter)
    .some((folder) => folder !== '' && existsSync(path.join(folder, program)));
}

/** How packages are installed here, or null when there is no such way. */
export function aptPrefix(platform: string, userId: number, hasApt: boolean): string[] | null {
  if (platform !== 'linux' || !hasApt) return null;
  return userId === 0 ? [] : ['sudo', '-n'];
}

export interface ProvisionDeps {
  readonly searchPath: string;
  /** What `aptPrefix` found. */
  readonly prefix: readonly string[] | null;
  readonly consent: (question: string) => Promise<Consent>;
  readonly run: (command: string, commandArguments: readonly string[]) => Promise<CommandOutcome>;
  readonly report: (line: string) => void;
}

/**
 * Installs what is missing where it may, and says in plain words what is still missing. False when it could be installed and nobody
 * has said whether it may: a check without those programs would fail in the end, for a reason that is known now.
 */
export async function provideSystemTools(deps: ProvisionDeps): Promise<boolean> {
  const { prefix, report } = deps;
  const missing = await whatIsMissing(systemTools, deps);
  if (missing.length === 0) return true;
  if (prefix !== null) {
    const packages = missing.flatMap(({ debianPackages }) => debianPackages);
    const consent = await deps.consent(
      `Install ${inWords(packages)} with apt-get, as root? They stay on this computer. [y/N] `,
    );
    if (consent === 'nobody') {
      report(
        `${inWords(packages)}: missing on this computer, and needed for ${inWords(missing.map(({ usedFor }) => usedFor))}. ` +
          `To have them installed as root, say so: npm test -- --install-tools (or set CI=true). ` +
          `To do it yourself: apt-get install ${packages.join(' ')}`,
      );
      return false;
    }
    if (consent === 'given') await install(packages, prefix, deps);
  }
  for (const { program, usedFor } of await whatIsMissing(missing, deps)) {
    report(`MISSING: ${program}, needed for ${usedFor}. Install it; those tests fail without it.`);
  }
  return true;
}

async function whatIsMissing(
  tools: readonly SystemTool[],
  { searchPath, run }: ProvisionDeps,
): Promise<readonly SystemTool[]> {
  const missing: SystemTool[] = [];
  for (const tool of tools) {
    const found = await findTool(tool, searchPath, async (command, proof) => {
      const { code } = await run(command, proof);
      return code === 0;
    });
    if (found === null) missing.push(tool);
  }
  return missing;
}

/** The command that can do what the tool is for; null where none can. */
export async function findTool(
  { program, otherwise, proof }: SystemTool,
  searchPath: string,
  proves: (command: string, proof: readonly string[]) => Promise<boolean>,
): Promise<string | null> {
  const isThere = isOnPath(program, searchPath);
  if (proof === undefined) return isThere ? program : null;
  if (isThere && (await proves(program, proof))) return program;
  return otherwise !== undefined && existsSync(otherwise) && (await proves(otherwise, proof))
    ? otherwise
    : null;
}

async function install(
  packages: readonly string[],
  prefix: readonly string[],
  { run, report }: ProvisionDeps,
): Promise<void> {
  report(`Installing ${inWords(packages)} with apt-get …`);
  const [command = 'apt-get', ...rest] = [...prefix, 'apt-get'];
  await run(command, [...rest, 'update', '-qq']);
  const installed = await run(command, [
    ...rest,
    'install',
    '-y',
    '-qq',
    '--no-install-recommends',
    ...packages,
  ]);
  if (installed.code !== 0) report(installed.output.trimEnd());
}

function inWords(things: readonly string[]): string {
  return new Intl.ListFormat('en').format(things);
}
