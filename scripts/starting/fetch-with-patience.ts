import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import path from 'node:path';

export interface FetchDeps {
  /** Node program that downloads into the system's folder for temporary files and ends with 0. */
  readonly installer: string;
  /** Given to the installer as its folder for temporary files, so that progress can be seen. */
  readonly temporaryFolder: string;
  /** Give up when nothing has arrived for this long; once something has, eight times as long. */
  readonly patienceMs: number;
  readonly report: (line: string) => void;
}

const lookEveryMs = 500;
const reportEveryBytes = 20_000_000;

/**
 * Runs a download that may be unreachable without ever waiting in silence: progress is told, and a download
 * that brings nothing is ended. True when the installer succeeded.
 */
export async function fetchWithPatience(deps: FetchDeps): Promise<boolean> {
  const { installer, temporaryFolder, patienceMs, report } = deps;
  mkdirSync(temporaryFolder, { recursive: true });
  const environment = { TMPDIR: temporaryFolder, TEMP: temporaryFolder, TMP: temporaryFolder };
  const child = spawn(process.execPath, [installer], {
    stdio: 'ignore',
    env: { ...process.env, ...environment },
  });
  let bytes = 0;
  let toldBytes = 0;
  let idleMs = 0;
  const look = setInterval(() => {
    const now = folderBytes(temporaryFolder);
    idleMs = now > bytes ? 0 : idleMs + lookEveryMs;
    bytes = now;
    if (bytes - toldBytes >= reportEveryBytes) {
      toldBytes = bytes;
      report(`… ${Math.round(bytes / 1_000_000)} MB fetched`);
    }
    // After the download the installer unpacks, which this look cannot see.
    if (idleMs >= (bytes === 0 ? patienceMs : 8 * patienceMs)) child.kill();
  }, lookEveryMs);
  const code = await new Promise<number | null>((resolve) => {
    child.on('error', () => resolve(null));
    child.on('close', resolve);
  });
  clearInterval(look);
  rmSync(temporaryFolder, { recursive: true, force: true });
  return code === 0;
}

function folderBytes(folder: string): number {
  try {
    return readdirSync(folder, { recursive: true, encoding: 'utf8' }).reduce((sum, name) => {
      const stats = statSync(path.join(folder, name), { throwIfNoEntry: false });
      return sum + (stats?.isFile() === true ? stats.size : 0);
    }, 0);
  } catch {
    return 0; // The folder changes while we look; the next look is half a second away.
  }
}
