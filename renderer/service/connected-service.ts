import type { Service } from '#shared-core';

/** `refused`: the door stays shut for this window; it was opened with an address used before. */
export type Connection = 'connecting' | 'open' | 'lost' | 'refused';

/** A {@link Service} that also says whether the way to it is open. */
export interface ConnectedService extends Service {
  connection(): Connection;
  onConnection(listener: (connection: Connection) => void): () => void;
}
