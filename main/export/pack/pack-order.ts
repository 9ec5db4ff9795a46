import type { PackedRun, PackKind } from './pack-kind.ts';

/** Called before each run is worked through. */
export type OnStudied = (name: string, index: number, count: number) => void;

/** A pack that is to be made: of which kind of runs, and how those are worked through. */
export interface PackOrder<Study extends PackedRun> {
  readonly kind: PackKind<Study>;
  readonly work: (onStudied: OnStudied) => Promise<readonly Study[]>;
  /** Milliseconds since 1970. */
  readonly createdMs: number;
}
