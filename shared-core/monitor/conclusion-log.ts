import type { RunEvent, RunEventName, RunProblem, Verdicts } from '../snapshot/index.ts';
import type { Stage, StageSpan } from '../stages/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import type { MonitorChange } from './monitor.ts';

/** What the monitor has concluded so far, in the order concluded. */
export interface ConclusionLog {
  enterStage(stage: Stage, fromS: number, because: string): void;
  event(event: RunEventName, timeS: number, because: string): void;
  estimate(timeS: number, headVapourAbv: Estimate | null): void;
  forecast(madeS: number, mainFractionEndS: Estimate | null): void;
  /** Notes a problem that lasts; returns the number to close it by. */
  openProblem(problem: string, fromS: number): number;
  closeProblem(number: number, toS: number): void;
  /** All that were told so far; another list once one more was told. */
  estimates(): Verdicts['estimates'];
  recentEvents(): readonly RunEvent[];
  takeChanges(): readonly MonitorChange[];
  parts(): Pick<Verdicts, 'stages' | 'events' | 'estimates' | 'forecasts' | 'problems'>;
}

/** As many as a snapshot may bring. */
const shownEvents = 20;

export function createConclusionLog(firstBecause: string): ConclusionLog {
  const spans: StageSpan[] = [{ stage: 'warm-up', fromS: 0, toS: null, because: firstBecause }];
  const runEvents: RunEvent[] = [];
  let estimates: Verdicts['estimates'] = [];
  const forecasts: { madeS: number; mainFractionEndS: Estimate | null }[] = [];
  const problems: RunProblem[] = [];
  let recent: readonly RunEvent[] = [];
  let changes: MonitorChange[] = [];

  return {
    enterStage: (stage, fromS, because) => {
      const last = spans[spans.length - 1];
      const startS = last === undefined ? fromS : Math.max(fromS, last.fromS);
      if (last !== undefined) spans[spans.length - 1] = { ...last, toS: startS };
      const span: StageSpan = { stage, fromS: startS, toS: null, because };
      spans.push(span);
      changes.push({ kind: 'stage-entered', timeS: startS, span });
    },
    event: (event, timeS, because) => {
      const entry: RunEvent = { event, timeS, because };
      runEvents.push(entry);
      recent = runEvents.slice(-shownEvents);
      changes.push({ kind: 'event', timeS, event: entry });
    },
    estimate: (timeS, headVapourAbv) => {
      estimates = [...estimates, { timeS, headVapourAbv }];
    },
    forecast: (madeS, mainFractionEndS) => forecasts.push({ madeS, mainFractionEndS }),
    openProblem: (problem, fromS) => problems.push({ problem, fromS, toS: null }) - 1,
    closeProblem: (number, toS) => {
      const open = problems[number];
      if (open !== undefined) problems[number] = { ...open, toS };
    },
    estimates: () => estimates,
    recentEvents: () => recent,
    takeChanges: () => {
      const taken = changes;
      changes = [];
      return taken;
    },
    parts: () => ({
      stages: spans.slice(),
      events: runEvents.slice(),
      estimates: estimates.slice(),
      forecasts: forecasts.slice(),
      problems: problems.slice(),
    }),
  };
}
