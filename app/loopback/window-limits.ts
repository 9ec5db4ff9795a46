/**
 * What a window may cost. Small beside what the recorder needs, large beside what our own window uses: its largest message is a piece
 * of a file on its way in, and it waits for each answer before it asks for the next piece.
 */
export const windowLimits = {
  /** A message that is larger closes its socket. */
  messageBytes: 1024 * 1024,
  /** All but a piece of a file is far below this. */
  requestCharacters: 64 * 1024,
  /** A hello holds a token and nothing else. */
  helloBytes: 1024,
  /** A window that does not say who it is within this time is not one of ours. */
  helloWithinMs: 5000,
  /** Windows at once, and sockets that have not said who they are. */
  windows: 12,
  strangers: 4,
  /** Connections for pages and sockets together. */
  connections: 64,
  /** Requests being worked on, or answered but not yet taken: of those that change something, and of the others. */
  inFlight: 8,
  /** Requests that wait until then, in characters: as much as one message may hold. */
  waitingCharacters: 1024 * 1024,
  /** Requests a second over some time, and at once. */
  perS: 60,
  burst: 120,
  /** A window that reads nothing while this much waits is gone; it comes back and asks anew. */
  waitingBytes: 4 * 1024 * 1024,
} as const;
