/**
 * Translates moments of the serial process into moments of this one. A message can only arrive after
 * it was sent, so the smallest difference ever seen is the difference of the clocks plus the shortest
 * way; messages that waited while this process was busy do not bend the time stamps.
 */
export interface WorkerClock {
  /** A message sent at `theirsS` on their clock has arrived at `oursS` on ours. */
  compare(theirsS: number, oursS: number): void;
  toOurs(theirsS: number): number;
}

export function createWorkerClock(): WorkerClock {
  let differenceS: number | null = null;
  return {
    compare(theirsS, oursS) {
      const seen = oursS - theirsS;
      differenceS = differenceS === null ? seen : Math.min(differenceS, seen);
    },
    toOurs: (theirsS) => theirsS + (differenceS ?? 0),
  };
}
