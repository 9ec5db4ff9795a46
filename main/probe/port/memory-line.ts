import { succeed } from '#shared-core';
import type { ByteLineListeners, OpenByteLine } from './byte-line.ts';

/** A line within this process: what is sent is heard by whoever has it open, and by nobody otherwise. */
export interface MemoryLine {
  readonly openLine: OpenByteLine;
  readonly send: (bytes: Uint8Array) => void;
  /** Bytes the listener's side writes. */
  readonly onWritten: (listener: (bytes: Uint8Array) => void) => void;
  readonly close: () => void;
}

export function createMemoryLine(): MemoryLine {
  let listening: ByteLineListeners | null = null;
  let written: (bytes: Uint8Array) => void = () => {};
  return {
    openLine: (_address, listeners) => {
      listening = listeners;
      return Promise.resolve(
        succeed({
          write: (bytes: Uint8Array) => {
            written(bytes);
            return Promise.resolve(succeed(null));
          },
          changeSpeed: () => Promise.resolve(succeed(null)),
          close: () => {
            listening = null;
            return Promise.resolve();
          },
        }),
      );
    },
    send: (bytes) => listening?.bytes(bytes),
    onWritten: (listener) => {
      written = listener;
    },
    close: () => {
      const ended = listening;
      listening = null;
      ended?.closed(null);
    },
  };
}
