import type { Snapshot } from '#shared-core';
import { stepS } from './bench.ts';
import type { Judge } from './judge.ts';
import type { Program } from './program.ts';
import type { RunBook } from './run-book.ts';
import { lookAt, type SimulatedWindow } from './simulated-window.ts';

/** What is so at the end of a step. */
export interface Moment {
  readonly nowS: number;
  /** Since when program and computer have had their turns [s]; null while they have none. */
  readonly runningSinceS: number | null;
  readonly program: Program | null;
  readonly book: RunBook | null;
  readonly windows: readonly SimulatedWindow[];
  /** What the monitor itself last concluded. */
  readonly concluded: Snapshot | null;
  readonly headHeardS: number;
  /** What waits for a disk that holds its answers. */
  readonly waitsForDisk: number;
}

/** What a window may lag behind: the promise of the screen, and a step of the world. */
const windowLagS = 2 + stepS;
/** Whole-second ticks and the step of the world. */
const ageLagS = 2 + stepS;
/** How long a window that was joined may read until it has a run. */
const readsForS = 5;
const bookLagSteps = 6;
/** A probe's status holds its last lines and what was found in it, never all the lines before. */
const mostStatusBytes = 20_000;
const mostTimers = 60;
/** Three windows that were opened meanwhile, a run that is begun and one that is looked for; no one asks again and again. */
const mostWaiting = 40;
const looksAtMemoryEvery = 20;

/** Checks that must hold after every step; remembers since when something has been due. */
export function createStepChecks(judge: Judge) {
  let dueSinceS: number | null = null;
  let steps = 0;
  let told: { readonly book: RunBook | null; readonly count: number }[] = [];

  function checkWindow(window: SimulatedWindow, moment: Moment, sinceS: number): void {
    const { nowS, headHeardS, book } = moment;
    const view = window.view();
    // What is left in view of a run that has ended says so.
    const snapshot = view?.endedS === null ? view.snapshot : null;
    const shown = snapshot === null ? null : lookAt(snapshot);
    const isLongDue = dueSinceS !== null && nowS - dueSinceS > windowLagS;
    if (isLongDue && nowS - sinceS > windowLagS && shown?.calls !== true) {
      judge.violated('heat-off-stands-in-every-window', `Due since ${dueSinceS} s.`);
    }
    const trueAgeS = nowS - headHeardS;
    if (nowS - sinceS > windowLagS && shown?.ageS != null && shown.ageS < trueAgeS - ageLagS) {
      judge.violated('no-old-number-as-new', `Shown ${shown.ageS} s old, is ${trueAgeS} s.`);
    }
    const [before] = told;
    if (nowS - sinceS <= readsForS || told.length < bookLagSteps) return;
    if (before === undefined || before.book !== book) return;
    const isInView = view !== null && view.runId === book?.runId;
    const has = isInView ? view.inputCount : 0;
    // A run that is over may have left the view; while it stands there, it is whole.
    if (book !== null && (isInView || !book.isOver) && has < before.count) {
      judge.violated('window-has-the-whole-run', `${has} inputs, told ${before.count}.`);
    }
  }

  function checkMemory({ program, waitsForDisk }: Moment): void {
    if (program === null) return;
    const statusBytes = JSON.stringify(program.status()).length;
    if (statusBytes > mostStatusBytes) {
      judge.violated('memory-is-bounded', `The status has ${statusBytes} bytes.`);
    }
    const timers = program.timers();
    if (timers > mostTimers) judge.violated('memory-is-bounded', `${timers} timers.`);
    if (waitsForDisk > mostWaiting) {
      judge.violated('memory-is-bounded', `${waitsForDisk} questions wait for the disk.`);
    }
  }

  /** Answers since when heat-off has been due [s], or null. */
  return function check(moment: Moment): number | null {
    const { nowS, concluded, runningSinceS, book, windows } = moment;
    const due = concluded !== null && lookAt(concluded).calls;
    dueSinceS = due ? (dueSinceS ?? nowS) : null;
    told = [...told, { book, count: book?.told.length ?? 0 }].slice(-bookLagSteps);
    steps += 1;
    if (steps % looksAtMemoryEvery === 0) checkMemory(moment);
    if (runningSinceS === null) return dueSinceS;
    for (const window of windows) {
      const connectedSinceS = window.connectedSinceS();
      if (connectedSinceS === null) continue;
      checkWindow(window, moment, Math.max(connectedSinceS, runningSinceS));
    }
    return dueSinceS;
  };
}
