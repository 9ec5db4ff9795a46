import type { Result, ServiceProblem } from '#shared-core';

/** Where to open a line, and how fast it speaks. */
export interface LineAddress {
  readonly path: string;
  readonly baudRate: number;
  readonly parity: 'none' | 'even' | 'odd';
}

export interface ByteLineListeners {
  readonly bytes: (chunk: Uint8Array) => void;
  /** The line ended by itself (plug pulled, device gone); called at most once, never after `close`. */
  readonly closed: (problem: ServiceProblem | null) => void;
}

/** An open line of bytes: a serial port, or anything that behaves like one. */
export interface ByteLine {
  write(bytes: Uint8Array): Promise<Result<null, ServiceProblem>>;
  /** Another speed on the line that is open; boards that restart at every opening are spared one. */
  changeSpeed(baudRate: number): Promise<Result<null, ServiceProblem>>;
  close(): Promise<void>;
}

/** The seam where hardware begins. */
export type OpenByteLine = (
  address: LineAddress,
  listeners: ByteLineListeners,
) => Promise<Result<ByteLine, ServiceProblem>>;
