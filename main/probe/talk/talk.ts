import type { LineOutcome } from '#shared-core';

/** Lines understood, in order, completed by the bytes that arrived at `atS`. */
export type OnOutcomes = (outcomes: readonly LineOutcome[], atS: number) => void;

/** What a conversation needs from the line it runs over. */
export interface TalkWire {
  /** Sends and forgets: a line that does not take bytes ends by itself. */
  readonly send: (bytes: Uint8Array) => void;
  readonly outcomes: OnOutcomes;
}

/** One way of conversing with a probe: listening to its lines, or asking it for readings. */
export interface Talk {
  /** A new opening of the port: nothing heard before may be joined to what comes now. */
  opened(atS: number): void;
  receive(bytes: Uint8Array, atS: number): void;
  /** Called about ten times a second; asks when it is time to. */
  tick(atS: number): void;
  /** Bytes that were heard but thrown away. */
  droppedBytes(): number;
  /** What the probe says it is, where it can be asked. */
  identity(): string | null;
}
