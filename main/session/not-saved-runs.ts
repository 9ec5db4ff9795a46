import type { EventBody, LogHeader, Result, ServiceProblem } from '#shared-core';
import type { Scheduler } from '../clock/index.ts';
import { type FileProblem, serviceProblemOf } from '../file-layer/index.ts';
import type { Recorder } from '../recorder/index.ts';
import type { LiveRun } from './live-run.ts';

/** A run that has ended, and of which the disk did not take all. */
export interface EndedRun {
  readonly runId: string;
  readonly header: LogHeader;
  readonly run: LiveRun;
  readonly recorder: Recorder;
  readonly endedS: number;
  /** Why the disk did not take it when it ended. */
  readonly problem: FileProblem;
}

export interface NotSavedSetup {
  readonly scheduler: Scheduler;
  /** Told with each try that failed, and when a run is saved. */
  readonly onChange: () => void;
  readonly onSaved: (runId: string) => void;
}

/** They stay in memory whole, and are tried again as one under way is, until the disk takes them or the program ends. */
export interface NotSavedRuns {
  add(run: EndedRun): void;
  /** Newest first. */
  all(): readonly EndedRun[];
  find(runId: string): EndedRun | undefined;
  /** What a window is told of them. */
  told(goneFolder: ServiceProblem | null): Pick<EventBody<'recording'>, 'notSaved'>;
  /** Once more each, and then never again: the program ends. */
  lastChance(): Promise<void>;
}

/** As long as the recorder leaves a disk alone that has refused something [s]. */
const retryEveryS = 2;

export function createNotSavedRuns({ scheduler, onChange, onSaved }: NotSavedSetup): NotSavedRuns {
  let runs: readonly EndedRun[] = [];
  let stop: (() => void) | null = null;
  /** One try at a time: a disk that holds its answer is not asked again. */
  let trying: Promise<void> | null = null;

  function keep(rest: readonly EndedRun[]): void {
    runs = rest;
    if (runs.length > 0) {
      stop ??= scheduler.every(retryEveryS, () => void tryAll());
      return;
    }
    stop?.();
    stop = null;
  }

  function tryAll(): Promise<void> {
    trying ??= tryEach().finally(() => {
      trying = null;
    });
    return trying;
  }

  async function tryEach(): Promise<void> {
    for (const ended of runs) {
      const saved: Result<void, FileProblem> = await ended.recorder.saveAgain();
      if (saved.ok) keep(runs.filter((other) => other !== ended));
      onChange();
      if (saved.ok) onSaved(ended.runId);
    }
  }

  return {
    add: (run) => keep([run, ...runs]),
    all: () => runs,
    find: (runId) => runs.find((run) => run.runId === runId),
    told(goneFolder) {
      if (runs.length === 0) return {};
      return {
        notSaved: runs.map(({ runId, header, endedS, recorder, problem }) => {
          const now = recorder.status();
          return {
            runId,
            name: header.settings.name,
            endedS,
            savedToS: Math.min(now.savedToS, endedS),
            problem: goneFolder ?? serviceProblemOf(now.problem ?? problem),
          };
        }),
      };
    },
    async lastChance() {
      stop?.();
      stop = () => {};
      await trying;
      await tryAll();
    },
  };
}
