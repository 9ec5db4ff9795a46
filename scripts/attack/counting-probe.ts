import { openPseudoTerminal, systemClock } from '#main';
import { latin1Bytes, type RunInput } from '#shared-core';

/** A probe on a real pseudo-terminal that counts: its n-th line says n, and when it was written is kept. */
export interface CountingProbe {
  readonly path: string;
  /** When each line was written [s of the computer's monotonic clock]. */
  readonly writtenS: readonly number[];
  /** The same moments just before: a busy computer may halt the writer between the two. */
  readonly begunS: readonly number[];
  close(): void;
}

/** A reading of a counting probe: which line it was and what moment of the run it was given. */
export interface CountedReading {
  readonly line: number;
  readonly timeS: number;
}

/** Every sensor's scale has such steps. */
export const linesPerKelvin = 16;

export function startCountingProbe(linesPerS: number): CountingProbe {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(`No pseudo-terminal here: ${terminal.error}`);
  const { path, write, close } = terminal.value;
  const writtenS: number[] = [];
  const begunS: number[] = [];
  const timer = setInterval(() => {
    begunS.push(systemClock.monotonicS());
    write(latin1Bytes(`${(writtenS.length / linesPerKelvin).toFixed(4)}\n`));
    writtenS.push(systemClock.monotonicS());
  }, 1000 / linesPerS);
  return {
    path,
    writtenS,
    begunS,
    close() {
      clearInterval(timer);
      close();
    },
  };
}

/** The lines of a counting probe that a run holds, in the run's order. */
export function countedReadings(inputs: readonly RunInput[]): readonly CountedReading[] {
  return inputs.flatMap((input) =>
    input.kind === 'reading'
      ? [{ line: Math.round(input.value * linesPerKelvin), timeS: input.timeS }]
      : [],
  );
}
