import { spawn } from 'node:child_process';

export interface CommandOutcome {
  readonly code: number;
  /** Both streams, in the order they came. */
  readonly output: string;
  readonly tookS: number;
}

/** Runs a program to its end and keeps what it printed; a program that cannot start has code 127. */
export function runCommand(
  command: string,
  commandArguments: readonly string[],
  options: { readonly cwd: string; readonly env?: NodeJS.ProcessEnv },
): Promise<CommandOutcome> {
  // What is printed is kept and shown later: colours would only be noise in it.
  const { cwd, env = { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined } } = options;
  const startedMs = performance.now();
  return new Promise((resolve) => {
    let output = '';
    const child = spawn(command, commandArguments, { cwd, env, stdio: ['ignore', 'pipe', 'pipe'] });
    const finish = (code: number) =>
      resolve({ code, output, tookS: (performance.now() - startedMs) / 1000 });
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (part: string) => {
        output += part;
      });
    }
    child.on('error', (error) => {
      output += `${error.message}\n`;
      finish(127);
    });
    child.on('close', (code) => finish(code ?? 1));
  });
}
