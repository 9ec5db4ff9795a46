import type { LineOutcome } from '#shared-core';

/** Lines understood, in order, completed by the bytes that arrived at `atS`. */
export type OnOutcomes = (outcomes: readonly LineOutcome[], atS: number) => void;

/** One way of conversing with a probe: listening to its lines, or asking it for readings. */
export interface Talk {
  /** A new opening of the port: nothing heard before may be joined to what comes now. */
  opened(atS: number): void;
  receive(bytes: Uint8Array, atS: number): void;
  /** Called about ten times a second; asks when it is time to. */
  tick(atS: number): void;
  /** Bytes that were heard but thrown away. */
  droppedBytes(): number;
}
