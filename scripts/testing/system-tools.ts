import { existsSync } from 'node:fs';
import path from 'node:path';
import type { Consent } from './install-consent.ts';
import type { CommandOutcome } from './run-command.ts';

/** A program of the operating system that the checks drive, and the Debian package that has it. */
interface SystemTool {
  readonly program: string;
  readonly debianPackage: string;
  readonly usedFor: string;
}

export const systemTools: readonly SystemTool[] = [
  {
    program: 'chromium',
    debianPackage: 'chromium',
    usedFor: 'the journeys through the window',
  },
  {
    program: 'socat',
    debianPackage: 'socat',
    usedFor: 'the serial path without hardware',
  },
  {
    program: 'soffice',
    debianPackage: 'libreoffice-calc',
    usedFor: 'opening exported workbooks and CSV files as a spreadsheet does',
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
  const { searchPath, prefix, report } = deps;
  const missing = systemTools.filter(({ program }) => !isOnPath(program, searchPath));
  if (missing.length === 0) return true;
  if (prefix !== null) {
    const packages = missing.map(({ debianPackage }) => debianPackage);
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
  for (const { program, usedFor } of missing.filter(
    (tool) => !isOnPath(tool.program, searchPath),
  )) {
    report(`MISSING: ${program}, needed for ${usedFor}. Install it; those tests fail without it.`);
  }
  return true;
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
