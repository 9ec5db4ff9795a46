import type { Scheduler } from '../clock/index.ts';

export interface CatchUpSetup {
  readonly scheduler: Scheduler;
  /** Everything that was heard before this moment has been told. */
  readonly heardUpToS: () => number;
}

/** Keeps what a person does behind what the probe said before it. */
export interface CatchUp {
  /** Acts once everything heard before `atS` has come, in the order asked; at once where nothing is on its way. */
  after(atS: number, act: () => void): void;
  /** When what still waits was done, in the order asked. */
  waitingFor(): readonly number[];
  /** Something newer than `atS` has come: whatever waits and was done by then has waited long enough. */
  actUpTo(atS: number): void;
}

const lookEveryS = 0.02;
/**
 * A serial process that says nothing is not waited for longer than half a second, counted in turns: after a halt of this process
 * the first turn comes before what waits to be taken, and a clock would call the halt patience.
 */
const mostTurns = 25;

interface Waiting {
  readonly atS: number;
  readonly act: () => void;
  turns: number;
}

export function createCatchUp({ scheduler, heardUpToS }: CatchUpSetup): CatchUp {
  let waiting: Waiting[] = [];
  let stopLooking: (() => void) | null = null;

  function look(): void {
    for (const item of waiting) item.turns += 1;
    actWhile(({ atS, turns }) => heardUpToS() >= atS || turns >= mostTurns);
  }

  function actWhile(isDue: (item: Waiting) => boolean): void {
    for (;;) {
      const [first] = waiting;
      if (first === undefined) break;
      if (!isDue(first)) return;
      waiting = waiting.slice(1);
      first.act();
    }
    stopLooking?.();
    stopLooking = null;
  }

  return {
    after(atS, act) {
      if (waiting.length === 0 && heardUpToS() >= atS) {
        act();
        return;
      }
      waiting.push({ atS, act, turns: 0 });
      stopLooking ??= scheduler.every(lookEveryS, look);
    },
    waitingFor: () => waiting.map(({ atS }) => atS),
    actUpTo: (atS) => actWhile((item) => item.atS <= atS),
  };
}
