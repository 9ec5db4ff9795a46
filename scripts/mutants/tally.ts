import type { Mutant } from './read-report.ts';

export interface MutantTally {
  readonly folder: string;
  readonly mutants: number;
  readonly killed: number;
  readonly survived: number;
  readonly timedOut: number;
  /** Per cent of all mutants, those that timed out included, that a test has seen; null without mutants. */
  readonly scoreWithoutTimeouts: number | null;
}

export function tally(folder: string, mutants: readonly Mutant[]): MutantTally {
  const count = (wanted: Mutant['verdict']) =>
    mutants.filter(({ verdict }) => verdict === wanted).length;
  const killed = count('killed');
  return {
    folder,
    mutants: mutants.length,
    killed,
    survived: count('survived'),
    timedOut: count('timed-out'),
    scoreWithoutTimeouts:
      mutants.length === 0 ? null : Math.round((1000 * killed) / mutants.length) / 10,
  };
}

/** One line: where, what stood there and what was put in its place. */
export function describeSurvivor(mutant: Mutant): string {
  const { file, line, verdict } = mutant;
  return `${file}:${line} ${verdict}: ${inOneLine(mutant.original)} → ${inOneLine(mutant.replacement)}`;
}

function inOneLine(code: string): string {
  const line = code.replaceAll(/\s+/g, ' ').trim();
  return line.length > 100 ? `${line.slice(0, 99)}…` : line;
}
