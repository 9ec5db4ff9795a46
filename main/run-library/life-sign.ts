import { createHash } from 'node:crypto';
import { chmodSync, rmSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';

/** Something the operating system itself takes away when this process ends, however it ends. */
export interface LifeSign {
  lower(): void;
}

/**
 * Raises the sign of a secret; null while another process has it. A listening socket: it stands while its process is stopped,
 * swapped out or asleep, and is gone at once when the process is, so nobody needs to guess from dates. Nothing is said on it.
 */
export function raiseLifeSign(secret: string): Promise<LifeSign | null> {
  const address = signAddress(secret);
  const server = createServer((caller) => caller.destroy());
  // It must never keep the program running.
  server.unref();
  return new Promise((resolve) => {
    server.once('error', () => resolve(null));
    server.listen(address, () => {
      if (isFile(address)) chmodSync(address, 0o600);
      resolve({ lower: () => server.close() });
    });
  });
}

/** Whether a process on this computer holds the sign of that secret. */
export function isLifeSignUp(secret: string): Promise<boolean> {
  const address = signAddress(secret);
  return new Promise((resolve) => {
    const caller = connect(address);
    caller.once('connect', () => {
      caller.destroy();
      resolve(true);
    });
    caller.once('error', (error: NodeJS.ErrnoException) => {
      // A file that nobody listens behind was left by a process that was killed.
      if (isFile(address) && error.code === 'ECONNREFUSED') rmSync(address, { force: true });
      resolve(error.code !== 'ECONNREFUSED' && error.code !== 'ENOENT');
    });
  });
}

/** Made from the secret, so that whoever sees the address can't take the sign of the next one. */
function signAddress(secret: string): string {
  const name = `still-head-${createHash('sha256').update(secret).digest('hex').slice(0, 32)}`;
  if (process.platform === 'linux') return `\0${name}`;
  if (process.platform === 'win32') return `\\\\.\\pipe\\${name}`;
  return path.join(tmpdir(), name);
}

function isFile(address: string): boolean {
  return path.isAbsolute(address) && process.platform !== 'win32';
}
