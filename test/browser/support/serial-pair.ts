import { type ChildProcess, spawn } from 'node:child_process';
import { closeSync, constants, existsSync, openSync, writeSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

/** A probe's cable without hardware: what is sent at one end arrives at a real serial device file. */
export interface SerialPair {
  /** What the person types: the device the app opens. */
  readonly path: string;
  send(bytes: string | Uint8Array): void;
  /** Ends socat: both device files vanish, as with a pulled plug. */
  unplug(): Promise<void>;
  plugIn(): Promise<void>;
}

export async function createSerialPair(folder: string): Promise<SerialPair> {
  const probeEnd = path.join(folder, 'probe');
  const farEnd = path.join(folder, 'far-end');
  let socat: ChildProcess | null = null;
  let farFile: number | null = null;

  async function plugIn(): Promise<void> {
    const end = (link: string) => `pty,raw,echo=0,link=${link}`;
    const started = spawn('socat', [end(probeEnd), end(farEnd)], { stdio: 'ignore' });
    socat = started;
    const failed = new Promise<never>((_, reject) => {
      started.on('error', reject);
    });
    failed.catch(() => {});
    while (!existsSync(farEnd) || !existsSync(probeEnd)) await Promise.race([wait(20), failed]);
    farFile = openSync(farEnd, constants.O_WRONLY | constants.O_NOCTTY | constants.O_NONBLOCK);
  }

  async function unplug(): Promise<void> {
    const ending = socat;
    if (farFile !== null) closeSync(farFile);
    farFile = null;
    socat = null;
    if (ending === null || ending.exitCode !== null) return;
    const ended = new Promise((resolve) => ending.once('exit', resolve));
    ending.kill();
    await ended;
  }

  await plugIn();
  return {
    path: probeEnd,
    plugIn,
    unplug,
    send(bytes) {
      if (farFile === null) return;
      const buffer = Buffer.from(bytes);
      try {
        for (let at = 0; at < buffer.length; ) at += writeSync(farFile, buffer, at);
      } catch (error) {
        // Nobody reads fast enough: a real line loses what does not fit, and so does this one.
        if ((error as NodeJS.ErrnoException).code !== 'EAGAIN') throw error;
      }
    },
  };
}
