import { spawn } from 'node:child_process';

export interface ElectronRun {
  readonly program: string;
  readonly programArguments: readonly string[];
  readonly projectRoot: string;
  readonly nowMs: () => number;
}

/** A program that ends with a failure this soon never showed a window (a missing library, no display). */
const neverStartedMs = 15_000;

/** Runs the desktop shell to its end. False when it could not start, so that the browser can take over. */
export function runElectron(run: ElectronRun): Promise<boolean> {
  const startedMs = run.nowMs();
  return new Promise((resolve) => {
    const child = spawn(run.program, [run.projectRoot, ...run.programArguments], {
      stdio: 'inherit',
      env: { ...process.env, ELECTRON_RUN_AS_NODE: undefined },
    });
    const passOn = () => child.kill('SIGTERM');
    process.once('SIGTERM', passOn);
    // Ctrl+C reaches the desktop shell by itself; this process only has to outlive it.
    process.on('SIGINT', () => {});
    const finish = (started: boolean) => {
      process.off('SIGTERM', passOn);
      process.removeAllListeners('SIGINT');
      resolve(started);
    };
    child.on('error', () => finish(false));
    child.on('close', (code) => finish(code === 0 || run.nowMs() - startedMs > neverStartedMs));
  });
}
