import { spawn } from 'node:child_process';
import { once } from 'node:events';
import process from 'node:process';
import { WebSocket } from 'ws';
import { wire } from '#shared-core';
import { childrenOf, cpuSecondsOf } from '../measuring/process-cost.ts';

/** From the start of a process to what was heard first [ms of wall time]. */
export interface FirstReading {
  /** The address was printed: a browser may come. */
  readonly upMs: number;
  /** A window that connects the probe at once is told its first reading. */
  readonly readingMs: number;
  /** What the program, with the processes it started, worked until then [ms of the processor: a busy computer makes it no longer]. */
  readonly upWorkMs: number;
  readonly readingWorkMs: number;
}

/** Starts the program with a probe already speaking at this port, and ends it again. */
export async function startToReading(
  program: string,
  runsFolder: string,
  probePath: string,
): Promise<FirstReading> {
  const begunMs = performance.now();
  const sinceMs = () => performance.now() - begunMs;
  const child = spawn(process.execPath, [program, runsFolder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = once(child, 'exit');
  try {
    const url = await firstAddress(child.stdout, ended);
    const upMs = sinceMs();
    const upWorkMs = workedMs(child.pid ?? 0);
    await heardThrough(url, probePath);
    return { upMs, upWorkMs, readingMs: sinceMs(), readingWorkMs: workedMs(child.pid ?? 0) };
  } finally {
    child.kill('SIGTERM');
    await ended;
  }
}

/** With the processes it started. */
function workedMs(pid: number): number {
  return childrenOf(pid).reduce((sum, child) => sum + workedMs(child), 1000 * cpuSecondsOf(pid));
}

async function firstAddress(output: NodeJS.ReadableStream, ended: Promise<unknown>) {
  let said = '';
  return new Promise<string>((resolve, reject) => {
    output.setEncoding('utf8').on('data', (part: string) => {
      said += part;
      const found = /http:\/\/127\.0\.0\.1:\d+\/#token=\S+(?=\s)/.exec(said)?.[0];
      if (found !== undefined) resolve(found);
    });
    void ended.then(() => reject(new Error(`The program ended before it was up:\n${said}`)));
  });
}

/** Speaks as our own window does: says who it is, connects the probe, waits for a reading. */
async function heardThrough(url: string, probePath: string): Promise<void> {
  const { origin, host, hash } = new URL(url);
  const socket = new WebSocket(`ws://${host}/service`, { origin });
  await once(socket, 'open');
  const heard = new Promise<void>((resolve, reject) => {
    socket.on('close', () => reject(new Error('The window was turned away.')));
    socket.on('message', (data) => {
      const message = wire.message.parse(JSON.parse(String(data)));
      if (message.type === 'answer' && !message.result.ok) {
        reject(new Error(JSON.stringify(message.result.error)));
      }
      if (message.type !== 'event' || message.name !== 'probe') return;
      const { latest } = message.body as { readonly latest: readonly unknown[] };
      if (latest.length > 0) resolve();
    });
  });
  socket.send(JSON.stringify({ token: hash.replace('#token=', '') }));
  const source = { kind: 'serial', path: probePath, language: 'plain-text' };
  socket.send(JSON.stringify({ id: 1, name: 'probe/connect', body: { source } }));
  await heard;
  socket.terminate();
}
