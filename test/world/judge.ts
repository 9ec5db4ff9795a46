import type { Invariant } from './planted-fault.ts';

export interface Violation {
  readonly invariant: Invariant;
  readonly atS: number;
  readonly found: string;
}

/** Keeps the first breach of a promise; those that follow from it say nothing new. */
export interface Judge {
  violated(invariant: Invariant, found: string): void;
  violation(): Violation | null;
}

export function createJudge(nowS: () => number): Judge {
  let first: Violation | null = null;
  return {
    violated(invariant, found) {
      first ??= { invariant, atS: Math.round(nowS() * 1000) / 1000, found };
    },
    violation: () => first,
  };
}
