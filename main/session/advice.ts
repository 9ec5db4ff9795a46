import type { Monitor, RunInput } from '#shared-core';
import type { Clock, Scheduler } from '../clock/index.ts';
import { guardMonitor, type MonitorAnswer } from './guarded-monitor.ts';

export interface AdviceSetup {
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  readonly createMonitor: () => Monitor;
  /** What was recorded before this process: the monitor sees it first. */
  readonly past: readonly RunInput[];
  readonly onAnswer: (answer: MonitorAnswer) => void;
  readonly onFailure: (message: string) => void;
}

/**
 * The monitor of a run under way. Where it goes on with a run that was cut off, it first sees all that was recorded, a little at a
 * time, so that recording goes on meanwhile; what comes then waits its turn.
 */
export interface Advice {
  push(input: RunInput): void;
  advanceTo(timeS: number): void;
  isBehind(): boolean;
  /** Once everything given so far has been seen. */
  caughtUp(): Promise<void>;
}

/** Longest time without a look at anything else [s]: what is told to windows is held back for as long at most. */
const sliceS = 0.02;
const breathS = 0.001;

/** A moment to advance to, or an input. */
type Step = number | RunInput;

export function createAdvice(setup: AdviceSetup): Advice {
  const { clock, scheduler, onAnswer } = setup;
  const monitor = guardMonitor(setup.createMonitor, setup.onFailure);
  let steps: Step[] = [...setup.past];
  let next = 0;
  let isBehind = steps.length > 0;
  let whenCaughtUp: (() => void)[] = [];

  function take(step: Step): void {
    const answer = typeof step === 'number' ? monitor.advanceTo(step) : monitor.push(step);
    if (answer !== null) onAnswer(answer);
  }

  function catchUp(): void {
    const untilS = clock.monotonicS() + sliceS;
    for (; next < steps.length; next += 1) {
      if (clock.monotonicS() >= untilS) {
        scheduler.after(breathS, catchUp);
        return;
      }
      // The last answer of all is one of now.
      if (next === steps.length - 1) isBehind = false;
      take(steps[next] as Step);
    }
    steps = [];
    for (const tell of whenCaughtUp) tell();
    whenCaughtUp = [];
  }

  function give(step: Step): void {
    if (isBehind) steps.push(step);
    else take(step);
  }

  if (isBehind) scheduler.after(breathS, catchUp);
  return {
    push: give,
    advanceTo: give,
    isBehind: () => isBehind,
    caughtUp: () =>
      isBehind ? new Promise((resolve) => whenCaughtUp.push(resolve)) : Promise.resolve(),
  };
}
