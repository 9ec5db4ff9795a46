/** How plans are worked out: once typing pauses, and not at all in a window that may start no worker, where all else goes on. */
export const whenTypingPauses = <Request, Result>(makeWorker: () => Worker) => ({
  makeWorker,
  instead: (_: Request): Result | null => null,
  pauseMs: 400,
});
