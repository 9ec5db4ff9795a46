import type { Fault } from './fault.ts';
import type { Violation } from './judge.ts';
import type { PlantedFault } from './planted-fault.ts';

export interface WorldSetup {
  readonly seed: number;
  readonly lengthS?: number;
  /** Instead of those that the seed draws. */
  readonly faults?: readonly Fault[];
  /** Instead of the one that the seed draws. */
  readonly end?: 'power-cut' | 'clean';
  readonly planted?: PlantedFault;
}

export interface WorldOutcome {
  readonly faults: readonly Fault[];
  readonly simulatedS: number;
  /** Of everything that any window was told, and when. */
  readonly traceHash: string;
  readonly heatOffS: number | null;
  readonly runs: number;
  readonly violation: Violation | null;
}

/** A world lasts as long as a lesson's run. */
export const usualLengthS = 3600;
