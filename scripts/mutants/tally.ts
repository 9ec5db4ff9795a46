import type { MutantSample } from './mutants-options.ts';
import type { Mutant } from './read-report.ts';
import { wilsonInterval } from './wilson-interval.ts';

export interface MutantTally {
  readonly folder: string;
  /** How many were tested. */
  readonly mutants: number;
  readonly killed: number;
  readonly survived: number;
  readonly timedOut: number;
  /** Per cent of those tested, those that timed out included, that a test has seen; null without mutants. */
  readonly scoreWithoutTimeouts: number | null;
  /** Of a sample: from how many it was drawn. */
  readonly of?: number;
  /** Of a sample: between which scores that of all mutants lies with 95 % confidence. */
  readonly low?: number;
  readonly high?: number;
  readonly seed?: string;
}

/** A sample that holds all mutants there are is none. */
export function tally(
  folder: string,
  mutants: readonly Mutant[],
  sample: MutantSample | null = null,
): MutantTally {
  const count = (wanted: Mutant['verdict']) =>
    mutants.filter(({ verdict }) => verdict === wanted).length;
  const tested = mutants.length - count('not-drawn');
  const killed = count('killed');
  const sum = {
    folder,
    mutants: tested,
    killed,
    survived: count('survived'),
    timedOut: count('timed-out'),
    scoreWithoutTimeouts: tested === 0 ? null : perCent(killed / tested),
  };
  if (sample === null || tested === mutants.length) return sum;
  const { low, high } = wilsonInterval(killed, tested);
  return { ...sum, of: mutants.length, low: perCent(low), high: perCent(high), seed: sample.seed };
}

function perCent(share: number): number {
  return Math.round(1000 * share) / 10;
}

export function isSurvivor({ verdict }: Mutant): boolean {
  return verdict === 'survived' || verdict === 'timed-out';
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
