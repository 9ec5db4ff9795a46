import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { latin1Bytes } from '#shared-core';
import { until } from './until.ts';

/** A serial cable made by socat: the computer's end has a path, the probe's end is written here. */
export interface SocatCable {
  readonly path: string;
  write(text: string): void;
  /** Ends socat: the plug is out. */
  pull(): Promise<void>;
  /** A new socat under the same path: the plug is in again. */
  insert(): Promise<void>;
  remove(): Promise<void>;
}

export async function layCable(): Promise<SocatCable> {
  const folder = mkdtempSync(path.join(tmpdir(), 'cable-'));
  const computerEnd = path.join(folder, 'port');
  let socat: ChildProcess | null = null;

  async function insert(): Promise<void> {
    socat = spawn('socat', [`pty,raw,echo=0,link=${computerEnd}`, '-'], {
      stdio: ['pipe', 'ignore', 'ignore'],
    });
    await until('socat to make the port', () => existsSync(computerEnd));
  }

  async function pull(): Promise<void> {
    const ending = socat;
    socat = null;
    if (ending === null) return;
    const ended = new Promise((resolve) => ending.once('exit', resolve));
    ending.kill('SIGTERM');
    await ended;
    rmSync(computerEnd, { force: true });
  }

  await insert();
  return {
    path: computerEnd,
    write: (text) => socat?.stdin?.write(latin1Bytes(text)),
    pull,
    insert,
    async remove() {
      await pull();
      rmSync(folder, { recursive: true });
    },
  };
}
