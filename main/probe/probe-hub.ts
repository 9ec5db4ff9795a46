import type {
  Channel,
  LinkChange,
  MarkType,
  PortInfo,
  ProbeFinding,
  ProbeSource,
  ProbeStatus,
  ReadingQuality,
  ReadingUnit,
  Result,
  ServiceProblem,
} from '#shared-core';

/** A reading as it came from the wire, stamped with the computer's monotonic clock where its bytes arrived. */
export interface ProbeReading {
  readonly atS: number;
  readonly channel: Channel;
  readonly value: number;
  readonly unit: ReadingUnit;
  readonly quality: ReadingQuality;
}

/** The line went quiet or came back. */
export interface ProbeLinkChange {
  readonly atS: number;
  readonly state: LinkChange['state'];
  readonly reason: LinkChange['reason'];
}

export interface ProbeListeners {
  readonly readings: (readings: readonly ProbeReading[]) => void;
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
  find(path: string): Promise<Result<ProbeFinding, ServiceProblem>>;
  on<N extends keyof ProbeListeners>(name: N, listener: ProbeListeners[N]): () => void;
  /** Lets the rehearsal rig follow the person's heat marks; real probes ignore it. */
  followHeat(mark: Extract<MarkType, 'heat-on' | 'heat-eased' | 'heat-off'>): void;
  /** The computer is about to sleep, or woke up: close, and reopen the same port. */
  suspend(): Promise<void>;
  resume(): Promise<void>;
  close(): Promise<void>;
}
