import { existsSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { runCommand } from './run-command.ts';
import { projectRoot } from './step.ts';

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
export function isOnPath(program: string, searchPath: string = process.env.PATH ?? ''): boolean {
  return searchPath
    .split(path.delimiter)
    .some((folder) => folder !== '' && existsSync(path.join(folder, program)));
}

/** How to get packages here without asking anybody, or null when there is no such way. */
export function aptPrefix(platform: string, userId: number, hasApt: boolean): string[] | null {
  if (platform !== 'linux' || !hasApt) return null;
  return userId === 0 ? [] : ['sudo', '-n'];
}

/** Installs what is missing where it can, and says in plain words what is still missing. */
export async function provideSystemTools(report: (line: string) => void): Promise<void> {
  const missing = systemTools.filter(({ program }) => !isOnPath(program));
  if (missing.length === 0) return;
  const prefix = aptPrefix(process.platform, process.getuid?.() ?? -1, isOnPath('apt-get'));
  if (prefix !== null) {
    const packages = missing.map(({ debianPackage }) => debianPackage);
    report(`Installing ${packages.join(' and ')} with apt-get …`);
    await apt(prefix, ['update', '-qq']);
    const installed = await apt(prefix, [
      'install',
      '-y',
      '-qq',
      '--no-install-recommends',
      ...packages,
    ]);
    if (installed.code !== 0) report(installed.output.trimEnd());
  }
  for (const { program, usedFor } of systemTools.filter((tool) => !isOnPath(tool.program))) {
    report(`MISSING: ${program}, needed for ${usedFor}. Install it; those tests fail without it.`);
  }
}

function apt(prefix: readonly string[], aptArguments: readonly string[]) {
  const [command = 'apt-get', ...rest] = [...prefix, 'apt-get', ...aptArguments];
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return runCommand(command, rest, { cwd: projectRoot, env });
}
