/** How long the end of the program may take. */
export interface EndPatience {
  /** What hangs is left behind after this [ms]. */
  readonly mostMs: number;
  /** A run that its disk has not taken yet stands nowhere else: so long it is waited for [ms]. */
  readonly mostSavingMs: number;
  readonly isSaving: () => boolean;
  /** Called once where the run has to be waited for. */
  readonly onSaving: () => void;
}

/** A service manager ends what takes longer than five seconds; a minute wakes any drive. Both chosen here. */
export const usualEndPatience = { mostMs: 4500, mostSavingMs: 60_000 } as const;

const lookEveryMs = 100;

/** Resolves when nothing is worth waiting for any more. It keeps no program alive. */
export async function untilOutOfPatience(patience: EndPatience): Promise<void> {
  const { mostMs, mostSavingMs, isSaving, onSaving } = patience;
  await pass(mostMs);
  if (!isSaving()) return;
  onSaving();
  for (let waitedMs = 0; isSaving() && waitedMs < mostSavingMs; waitedMs += lookEveryMs) {
    await pass(lookEveryMs);
  }
  if (!isSaving()) await pass(mostMs);
}

const pass = (ms: number) =>
  new Promise<void>((resolve) => {
    setTimeout(resolve, ms).unref();
  });
