import { openPseudoTerminal, systemClock } from '#main';
import { latin1Bytes } from '#shared-core';

/** One reading on its way: the number people will read, and when its bytes were written to the port. */
export interface SentReading {
  readonly text: string;
  readonly atMs: number;
}

/** A probe on a real pseudo-terminal whose readings can be told apart on the screen. */
export interface NumberedProbe {
  readonly path: string;
  /** What was sent one by one, by {@link NumberedProbe.begin}. */
  readonly sent: readonly SentReading[];
  /** Sends one reading every `everyMs` until stopped. */
  begin(everyMs: number): () => void;
  /** Sends so many readings at a steady rate, none of them noted. */
  pour(readings: number, perSecond: number): Promise<void>;
  /** Readings written so far, in either way. */
  written(): number;
  close(): void;
}

/** Tenths of a kelvin above the base: ten different numbers, steps of at most 0.2 K, the same mean every second. */
const pattern = [0, 2, 4, 6, 8, 9, 7, 5, 3, 1];
const baseC = 77.9;
/** The vapour arrives: from room temperature at 2 K a second. */
const arrivalS = 28;
const pourEveryMs = 20;

export function createNumberedProbe(): NumberedProbe {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(`No pseudo-terminal here: ${terminal.error}`);
  const { path, write, close } = terminal.value;
  const sent: SentReading[] = [];
  let count = 0;
  const startMs = performance.now();

  function next(): string {
    const value = baseC + (pattern[count % pattern.length] ?? 0) / 10;
    count += 1;
    const warmingK = Math.max(0, arrivalS - (performance.now() - startMs) / 1000) * 2;
    return (value - warmingK).toFixed(1);
  }

  function send(): void {
    const text = next();
    sent.push({ text, atMs: performance.now() });
    write(latin1Bytes(`${text}\r\n`));
  }

  return {
    path,
    sent,
    begin(everyMs) {
      const timer = setInterval(send, everyMs);
      return () => clearInterval(timer);
    },
    async pour(readings, perSecond) {
      const startS = systemClock.monotonicS();
      for (let poured = 0; poured < readings; ) {
        await new Promise((resolve) => setTimeout(resolve, pourEveryMs));
        const due = Math.min(readings, Math.floor((systemClock.monotonicS() - startS) * perSecond));
        // A quarter of what a terminal's buffer holds: what does not fit would be lost.
        const lines = Math.min(150, due - poured);
        poured += lines;
        if (lines > 0)
          write(latin1Bytes(Array.from({ length: lines }, () => `${next()}\r\n`).join('')));
      }
    },
    written: () => count,
    close,
  };
}
