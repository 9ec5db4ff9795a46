import type { Ask } from './asking.ts';
import type { Judge } from './judge.ts';
import type { RunBook } from './run-book.ts';
import type { SimulatedWindow } from './simulated-window.ts';

/** What is so at the end of a step. */
export interface HeldDiskMoment {
  readonly nowS: number;
  /** Since when the disk neither takes nor refuses what is written [s]; null while it does. */
  readonly heldSinceS: number | null;
  /** Since when program and computer have had their turns [s]; null while they have none. */
  readonly runningSinceS: number | null;
  readonly book: RunBook | null;
  readonly windows: readonly SimulatedWindow[];
}

export interface HeldDiskParts {
  readonly judge: Judge;
  readonly ask: Ask;
  readonly nowS: () => number;
}

/** The ten seconds after which it is told, and two of a window that lags [s]. */
const toldWithinS = 12.5;
/** What was held may have to be synced twice, on a disk that is slow, before it counts as over [s]. */
const overWithinS = 12;
/** An act waits for what was heard before it, and no disk is asked [s]. */
const answeredWithinS = 1;

/** A disk that answers nothing is told in every window, and is over when it is; what needs only memory waits for none. */
export function createHeldDiskCheck({ judge, ask, nowS }: HeldDiskParts) {
  let before: { readonly book: RunBook; readonly count: number } | null = null;
  /** Since when the run goes on on a held disk, and since when the disk answers again [s]. */
  let goesOnSinceS: number | null = null;
  let answersSinceS = Number.NEGATIVE_INFINITY;

  function isSaidHeld(window: SimulatedWindow): boolean {
    return window.recording()?.problem?.kind === 'disk-held';
  }

  function checkTold({ windows }: HeldDiskMoment, sinceS: number): void {
    for (const window of windows) {
      const connectedSinceS = window.connectedSinceS();
      if (connectedSinceS === null || nowS() - connectedSinceS <= toldWithinS) continue;
      const { state, problem = null } = window.recording() ?? {};
      // One that failed before it was held says so.
      if (state === 'failed' || problem !== null) continue;
      judge.violated('held-disk-is-told', `Held since ${sinceS} s, and the record is ${state}.`);
    }
  }

  return {
    see(moment: HeldDiskMoment): void {
      const { heldSinceS, runningSinceS, book, windows } = moment;
      if (heldSinceS !== null || runningSinceS === null) answersSinceS = nowS();
      const sinceS = Math.max(answersSinceS, runningSinceS ?? 0);
      if (nowS() - sinceS > overWithinS && windows.some(isSaidHeld)) {
        judge.violated('held-disk-is-told', `It has answered since ${sinceS} s.`);
      }
      if (heldSinceS === null || runningSinceS === null || book === null) {
        before = null;
        goesOnSinceS = null;
        return;
      }
      if (before?.book !== book) {
        before = { book, count: book.told.length };
        goesOnSinceS = null;
      }
      if (book.told.length > before.count) goesOnSinceS ??= nowS();
      const toldFromS = goesOnSinceS === null ? null : Math.max(goesOnSinceS, runningSinceS);
      if (toldFromS !== null && nowS() - toldFromS > toldWithinS) checkTold(moment, heldSinceS);
    },
    /** What a window asks that is all in memory, and an act at the still. */
    async askWhatNeedsNoDisk(runId: string): Promise<void> {
      for (const [name, body] of [
        ['run/status', {}],
        ['probe/status', {}],
        ['app/describe', {}],
        ['runs/read', { runId, fromIndex: 0 }],
        ['runs/changes', { runId }],
      ] as const) {
        const askedS = nowS();
        await ask(name, body);
        this.answered(name, nowS() - askedS);
      }
    },
    answered(name: string, tookS: number): void {
      if (tookS > answeredWithinS) {
        judge.violated('acts-wait-for-no-disk', `${name} was answered after ${tookS} s.`);
      }
    },
  };
}
