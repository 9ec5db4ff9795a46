import { isDropout, type ProbeFault } from './probe-fault.ts';

/** Dropouts that follow each other closely: one loose plug, not so many faults. */
export interface Dropouts {
  /** How often the probe has dropped out in this spell; 0 once it has been good for {@link quietAgainS}. */
  readonly count: number;
  /** When the first of them was noticed [s]. */
  readonly sinceS: number;
}

/** Counts the dropouts of a probe that goes and comes. */
export interface DropoutWatch {
  second(timeS: number, fault: ProbeFault | null): void;
  dropouts(): Dropouts;
}

/** A probe without a dropout for so long is quiet again; chosen here [s]. */
export const quietAgainS = 300;

const quiet: Dropouts = { count: 0, sinceS: 0 };

export function createDropoutWatch(): DropoutWatch {
  let spell = quiet;
  let isOut = false;
  let lastOutS = Number.NEGATIVE_INFINITY;
  return {
    second: (timeS, fault) => {
      const wasOut = isOut;
      isOut = isDropout(fault);
      if (isOut && !wasOut) {
        spell = { count: spell.count + 1, sinceS: spell.count === 0 ? timeS : spell.sinceS };
      }
      if (isOut) lastOutS = timeS;
      else if (timeS - lastOutS >= quietAgainS) spell = quiet;
    },
    dropouts: () => spell,
  };
}
