import { booksOfRun, defaultRunSettings, type MarkBody, type RunSettings } from '#shared-core';

/** Marks one second after the other. */
export const marks = (...bodies: readonly MarkBody[]) =>
  bodies.map((mark, index) => ({ kind: 'mark' as const, timeS: index, markId: index + 1, mark }));
export const chargedSettings: RunSettings = {
  ...defaultRunSettings,
  charge: { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0.2 },
};
export type BookedRun = Parameters<typeof booksOfRun>[0];
/** The books of a run of which only this is known, over 350 mL of 9 % vol. */
export const booksOf = (run: Partial<BookedRun>) =>
  booksOfRun({
    settings: chargedSettings,
    inputs: [],
    verdicts: { estimates: [], events: [] },
    endS: 600,
    ...run,
  });
