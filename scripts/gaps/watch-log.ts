import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { systemClock } from '#main';

/** When the bytes of each reading were first seen in the log, looked at many times a second. */
export interface LogWatch {
  /** By the value that was recorded [s of the computer's monotonic clock]. */
  readonly seenS: ReadonlyMap<number, number>;
  stop(): void;
}

const lookEveryMs = 10;

export function watchLog(file: string): LogWatch {
  const log = openSync(file, 'r');
  const seenS = new Map<number, number>();
  let atByte = 0;
  let rest = '';
  const timer = setInterval(() => {
    const bytes = Buffer.alloc(fstatSync(log).size - atByte);
    const nowS = systemClock.monotonicS();
    atByte += readSync(log, bytes, 0, bytes.length, atByte);
    const lines = (rest + bytes.toString('latin1')).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) {
      for (const [, value] of line.matchAll(/"head",(-?[\d.]+)/g)) {
        const recorded = Number(value);
        if (!seenS.has(recorded)) seenS.set(recorded, nowS);
      }
    }
  }, lookEveryMs);
  return {
    seenS,
    stop() {
      clearInterval(timer);
      closeSync(log);
    },
  };
}
