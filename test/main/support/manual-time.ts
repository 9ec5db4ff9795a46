import process from 'node:process';
import type { Clock, Scheduler } from '#main';

/** A clock and timers that move only when told to. */
export interface ManualTime {
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  /** Lets `seconds` pass, running every timer that falls due, in order, and what it starts. */
  pass(seconds: number): Promise<void>;
  /** Sets the wall clock without any time passing. */
  stepWall(seconds: number): void;
}

interface Timer {
  dueS: number;
  readonly periodS: number | null;
  readonly act: () => void;
}

export function createManualTime(startWallMs = Date.UTC(2025, 2, 14, 10, 15)): ManualTime {
  let nowS = 1000;
  let wallOffsetMs = startWallMs - nowS * 1000;
  const timers = new Set<Timer>();

  function add(timer: Timer): () => void {
    timers.add(timer);
    return () => timers.delete(timer);
  }

  return {
    clock: { monotonicS: () => nowS, wallMs: () => nowS * 1000 + wallOffsetMs },
    scheduler: {
      every: (periodS, act) => add({ dueS: nowS + periodS, periodS, act }),
      after: (delayS, act) => add({ dueS: nowS + delayS, periodS: null, act }),
    },
    async pass(seconds) {
      // What was begun in this turn may be about to wait for a timer.
      await settle();
      const endS = nowS + seconds;
      for (;;) {
        const [next] = [...timers].sort((a, b) => a.dueS - b.dueS);
        if (next === undefined || next.dueS > endS) break;
        nowS = Math.max(nowS, next.dueS);
        if (next.periodS === null) timers.delete(next);
        else next.dueS += next.periodS;
        next.act();
        await settle();
      }
      nowS = endS;
      await settle();
    },
    stepWall(seconds) {
      wallOffsetMs += seconds * 1000;
    },
  };
}

/** Lets what a timer started go on, as far as it need not wait for the disk: that takes real time, `diskAtRest` waits for it. */
async function settle(): Promise<void> {
  for (let turn = 0; turn < 3; turn += 1) await nextTurn();
}

/** Waits until this process waits for nothing from the file system, however long this disk takes today. */
export async function diskAtRest(): Promise<void> {
  const isDiskAtWork = () =>
    process.getActiveResourcesInfo().some((resource) => resource.startsWith('FSReq'));
  for (let idleTurns = 0; idleTurns < 3; idleTurns = isDiskAtWork() ? 0 : idleTurns + 1) {
    await nextTurn();
  }
}

const nextTurn = () => new Promise((resolve) => setImmediate(resolve));
