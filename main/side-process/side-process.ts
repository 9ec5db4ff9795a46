/** One end of the wire between the services and a process beside them. */
export interface SidePort {
  post(message: unknown): void;
  on(listener: (message: unknown) => void): void;
}

/** The process at the other end, as its owner sees it; whatever hosts it, it can only fail alone. */
export interface SideProcess extends SidePort {
  /** As the operating system numbers it; null where the host does not tell. */
  readonly processId: number | null;
  /** Called once when the process has ended, for whatever reason. */
  onExit(listener: () => void): void;
  /** Ends the process without asking; used only when it no longer answers. */
  kill(): void;
}
