import { spawn } from 'node:child_process';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { projectRoot } from './step.ts';

export interface RunningApp {
  /** The address of the commanding window; works once. */
  readonly url: string;
  readonly viewerUrl: string;
  /** Everything printed so far. */
  output(): string;
  /** Ctrl+C. */
  stop(): Promise<void>;
  /** Ends the program as a power cut would. */
  kill(): Promise<void>;
}

/** Starts the app as a script would, `npm start -- --no-open --runs-folder DIR`, at a port that the system chooses. */
export async function startApp(runsFolder: string): Promise<RunningApp> {
  const child = spawn('npm', ['start', '--', '--no-open', '--runs-folder', runsFolder], {
    cwd: projectRoot,
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true,
    // What it remembers of its folders is none of this computer's.
    env: { ...process.env, XDG_STATE_HOME: path.join(tmpdir(), 'still-head-monitor-state') },
  });
  let output = '';
  const ended = new Promise<void>((resolve) => child.on('close', () => resolve()));
  const urls = new Promise<readonly string[]>((resolve, reject) => {
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (part: string) => {
        output += part;
        const found = output.match(/http:\/\/127\.0\.0\.1:\d+\/#token=\S+(?=\s)/g);
        if (found !== null && found.length >= 2) resolve(found);
      });
    }
    child.on('error', reject);
    void ended.then(() => reject(new Error(`The app ended before it was up:\n${output}`)));
  });
  const [url = '', viewerUrl = ''] = await urls;
  let isRunning = true;
  void ended.then(() => {
    isRunning = false;
  });
  // The whole group, as a terminal does it: npm, its shell and the app.
  const end = (signal: 'SIGINT' | 'SIGKILL') => {
    if (isRunning && child.pid !== undefined) process.kill(-child.pid, signal);
    return ended;
  };
  return {
    url,
    viewerUrl,
    output: () => output,
    stop: () => end('SIGINT'),
    kill: () => end('SIGKILL'),
  };
}
