import type { Snapshot } from '#shared-core';

/** A copy with all parts: those of a monitor's snapshot are made when they are read, and spreading leaves them out. */
export function plainSnapshot(snapshot: Snapshot): Snapshot {
  return JSON.parse(JSON.stringify(snapshot));
}
