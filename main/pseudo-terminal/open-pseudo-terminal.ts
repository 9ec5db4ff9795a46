import { writeSync } from 'node:fs';
import { createRequire } from 'node:module';
import process from 'node:process';
import { ReadStream } from 'node:tty';
import { z } from 'zod';
import { fail, type Result, succeed } from '#shared-core';

/** The device's side of a serial line whose other side any program can open as a port. */
export interface PseudoTerminal {
  /** What a program opens, e.g. `/dev/pts/4`. */
  readonly path: string;
  /** Sends bytes to whoever has the port open. Like a real wire it never waits: what nobody takes is lost. */
  write(bytes: Uint8Array): void;
  onBytes(listener: (bytes: Uint8Array) => void): void;
  /** Takes the port away, as if the plug were pulled. */
  close(): void;
}

const nativeModuleSchema = z.object({
  open: z.custom<(columns: number, rows: number) => unknown>((value) => value instanceof Function),
});
const openedSchema = z.object({ master: z.int(), slave: z.int(), pty: z.string() });

/**
 * Opens a pseudo-terminal (Linux, macOS). The far side is kept open here, so that programs may come
 * and go, and set to raw, so that nothing is echoed or translated before somebody opens it.
 *
 * Uses the native part of a terminal library only: the library's own terminal object signals the
 * process it started when closed, and here there is none (`kill(-1)` would signal everybody).
 *
 * @param system the platform this runs on, and how its native part is loaded
 */
export function openPseudoTerminal({
  platform = process.platform,
  load = loadNative,
}: {
  readonly platform?: string;
  readonly load?: () => unknown;
} = {}): Result<PseudoTerminal, string> {
  if (platform === 'win32') return fail('Windows has no pseudo-terminals');
  try {
    return succeed(wrap(openedSchema.parse(nativeModuleSchema.parse(load()).open(80, 24))));
  } catch (error) {
    return fail(error instanceof Error ? firstLine(error.message) : String(error));
  }
}

function loadNative(): unknown {
  const require = createRequire(import.meta.url);
  const { requireBinary } = require('@lydell/node-pty/requireBinary.js');
  return requireBinary('pty.node');
}

function wrap(opened: z.infer<typeof openedSchema>): PseudoTerminal {
  const near = new ReadStream(opened.master);
  // Never read here: it would take the bytes meant for the program on the far side.
  const far = new ReadStream(opened.slave);
  far.setRawMode(true);
  far.on('error', () => {});
  near.on('error', () => {});
  let isOpen = true;
  let unsent: Uint8Array = new Uint8Array();

  /** Node's own stream would wait inside the write until somebody reads; the descriptor never waits. */
  function send(bytes: Uint8Array): void {
    unsent = bytes.subarray(writeNow(opened.master, bytes));
  }

  return {
    path: opened.pty,
    write(bytes) {
      if (!isOpen) return;
      if (unsent.length > 0) send(unsent);
      if (unsent.length === 0) send(bytes);
    },
    onBytes(listener) {
      near.on('data', (chunk: Uint8Array) => listener(chunk));
    },
    close() {
      if (!isOpen) return;
      isOpen = false;
      near.destroy();
      far.destroy();
    },
  };
}

/** How many bytes the far side's buffer took; none when it is full because nobody reads. */
function writeNow(descriptor: number, bytes: Uint8Array): number {
  try {
    return writeSync(descriptor, bytes);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EAGAIN') return 0;
    throw error;
  }
}

function firstLine(text: string): string {
  return text.split('\n')[0] ?? text;
}
