import type {
  Mark,
  PortInfo,
  ProbeSource,
  ProbeStatus,
  Reading,
  RequestAnswer,
  Result,
  RunInput,
  ServiceProblem,
} from '#shared-core';

/** A mark of a run, whenever it was made. */
export type NumberedMark = Pick<Mark, 'markId' | 'mark'>;

/** A reading as it came from the wire, stamped with the computer's monotonic clock where its bytes arrived. */
export interface ProbeReading {
  readonly atS: number;
  readonly channel: Reading['channel'];
  readonly value: number;
  readonly unit: Reading['unit'];
  readonly quality: Reading['quality'];
}

/** The line went quiet or came back. */
export interface ProbeLinkChange {
  readonly atS: number;
  readonly state: Extract<RunInput, { kind: 'link' }>['state'];
  readonly reason: Extract<RunInput, { kind: 'link' }>['reason'];
}

/** Readings that came from the wire and were given up before anybody was told them, and of when they were by the monotonic clock. */
export interface GivenUp {
  readonly readings: number;
  readonly fromS: number;
  readonly toS: number;
}

export interface ProbeListeners {
  readonly readings: (readings: readonly ProbeReading[]) => void;
  readonly givenUp: (givenUp: GivenUp) => void;
  readonly link: (change: ProbeLinkChange) => void;
  readonly status: (status: ProbeStatus) => void;
  readonly ports: (ports: readonly PortInfo[]) => void;
}

/**
 * Everything the session knows of probes. It opens only the port the person chose, reopens it by
 * itself when the plug comes back, and keeps working whatever bytes arrive.
 */
export interface ProbeHub {
  status(): ProbeStatus;
  /**
   * Everything that was heard before this moment [s] has been told, so whoever reasons about time need not wait for it; infinite
   * while nothing can be on its way. It stands still while what was heard waits to be taken.
   */
  heardUpToS(): number;
  listPorts(): Promise<readonly PortInfo[]>;
  connect(source: ProbeSource): Promise<Result<ProbeStatus, ServiceProblem>>;
  disconnect(): Promise<void>;
  /** Tries speeds and languages on the one port the person points at; nothing may be connected there. */
  find(path: string): Promise<Result<RequestAnswer<'probe/find'>, ServiceProblem>>;
  on<N extends keyof ProbeListeners>(name: N, listener: ProbeListeners[N]): () => void;
  /** Lets the rehearsal rig do what a person marks, to its heat and its receivers; real probes ignore it. */
  followMark(mark: NumberedMark): void;
  /** The computer is about to sleep, or woke up: close, and reopen the same port. */
  suspend(): Promise<void>;
  resume(): Promise<void>;
  close(): Promise<void>;
}
