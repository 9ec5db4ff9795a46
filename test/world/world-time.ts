import process from 'node:process';
import type { Clock, Scheduler } from '#main';

/** The computer's clocks: they stand still in a sleep, are new after a start, and can be set. */
export interface WorldComputer {
  readonly clock: Clock;
  uptimeS(): number;
  isRunning(): boolean;
  /** Everything stops, the clock that counts seconds too. */
  sleep(): void;
  /** Programs get no turn, and the clock goes on: what was due meanwhile is done once. */
  halt(): void;
  goOn(): void;
  switchOff(): void;
  switchOn(): void;
  setWall(byS: number): void;
}

/** Timers of one program, which end with it. */
export interface ProgramTimers extends Scheduler {
  count(): number;
  end(): void;
}

/** The one time of a world. What stands on the bench goes by it; programs go by the computer's clocks. */
export interface WorldTime {
  nowS(): number;
  readonly bench: Scheduler;
  readonly computer: WorldComputer;
  startProgram(): ProgramTimers;
  /** Runs every timer that falls due, in order, and what it starts. */
  pass(seconds: number): Promise<void>;
}

interface Timer {
  dueS: number;
  readonly periodS: number | null;
  readonly ofProgram: boolean;
  readonly act: () => void;
}

const beginsWallMs = Date.UTC(2025, 2, 14, 10, 15);
/** Time from the start of the computer to that of the program [s]. */
const startUpS = 1000;

export function createWorldTime(): WorldTime {
  const timers = new Set<Timer>();
  let nowS = 0;
  let state: 'running' | 'asleep' | 'halted' | 'off' = 'running';
  let stoppedAtS = 0;
  let bootedAtS = -startUpS;
  let sleptS = 0;
  let wallOffsetMs = beginsWallMs;

  const uptimeS = () => nowS - bootedAtS;

  function stop(next: typeof state): void {
    state = next;
    stoppedAtS = nowS;
  }

  function add(to: Set<Timer>, timer: Timer): () => void {
    timers.add(timer);
    to.add(timer);
    return () => {
      timers.delete(timer);
      to.delete(timer);
    };
  }

  function schedulerOf(own: Set<Timer>, ofProgram: boolean): Scheduler {
    return {
      every: (periodS, act) => add(own, { dueS: nowS + periodS, periodS, ofProgram, act }),
      after(delayS, act) {
        const timer: Timer = {
          dueS: nowS + Math.max(0, delayS),
          periodS: null,
          ofProgram,
          act() {
            own.delete(timer);
            act();
          },
        };
        return add(own, timer);
      },
    };
  }

  function nextDue(): Timer | null {
    let next: Timer | null = null;
    for (const timer of timers) {
      if (timer.ofProgram && state !== 'running') continue;
      if (next === null || timer.dueS < next.dueS) next = timer;
    }
    return next;
  }

  const computer: WorldComputer = {
    clock: {
      monotonicS: () => (state === 'asleep' ? stoppedAtS : nowS) - bootedAtS - sleptS,
      wallMs: () => nowS * 1000 + wallOffsetMs,
    },
    uptimeS,
    isRunning: () => state === 'running',
    sleep: () => stop('asleep'),
    halt: () => stop('halted'),
    goOn() {
      if (state === 'asleep') {
        const missedS = nowS - stoppedAtS;
        sleptS += missedS;
        for (const timer of timers) if (timer.ofProgram) timer.dueS += missedS;
      }
      state = 'running';
    },
    switchOff: () => stop('off'),
    switchOn() {
      state = 'running';
      // Starting takes its time.
      bootedAtS = nowS - 10;
      sleptS = 0;
    },
    setWall(byS) {
      wallOffsetMs += byS * 1000;
    },
  };

  return {
    nowS: () => nowS,
    bench: schedulerOf(new Set(), false),
    computer,
    startProgram() {
      const own = new Set<Timer>();
      let ended = false;
      const { every, after } = schedulerOf(own, true);
      const never = () => {};
      return {
        every: (periodS, act) => (ended ? never : every(periodS, act)),
        after: (delayS, act) => (ended ? never : after(delayS, act)),
        count: () => own.size,
        end() {
          ended = true;
          for (const timer of own) timers.delete(timer);
          own.clear();
        },
      };
    },
    async pass(seconds) {
      const endS = nowS + seconds;
      for (let next = nextDue(); next !== null && next.dueS <= endS; next = nextDue()) {
        nowS = Math.max(nowS, next.dueS);
        if (next.periodS === null) timers.delete(next);
        // A timer that comes late counts its period from then.
        else next.dueS = Math.max(next.dueS + next.periodS, nowS);
        next.act();
        await allThatFollows();
      }
      nowS = endS;
      await oneTurnOfTheLoop();
    },
  };
}

/**
 * The world's disk and line answer without waiting, so all that follows stands in queues which are empty before the next tick is
 * called. A turn of the loop for each of a hundred thousand timers would ask the system as often whether anything has come.
 */
function allThatFollows(): Promise<void> {
  return new Promise((resolve) => process.nextTick(resolve));
}

/** Whoever started the world gets a turn now and then. */
function oneTurnOfTheLoop(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
