import type { RequestAnswer } from '#shared-core';
import type { Clock } from '../clock/index.ts';

/** What the report holds. */
export type ProblemReport = RequestAnswer<'problem-report/make'>;

type RecentProblem = ProblemReport['recentProblems'][number];

/** What went wrong since the program was started. */
export interface ProblemLog {
  note(what: string): void;
  /** The newest last. */
  recent(): readonly RecentProblem[];
}

const mostKept = 50;

/** Keeps the newest few; what comes again stands once, at its newest moment, so that a chatterer pushes nothing else out. */
export function createProblemLog(clock: Clock): ProblemLog {
  const kept = new Map<string, RecentProblem>();
  return {
    note(what) {
      const times = 1 + (kept.get(what)?.times ?? 0);
      kept.delete(what);
      kept.set(what, { lastAtIso: new Date(clock.wallMs()).toISOString(), times, what });
      const [oldest] = kept.keys();
      if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest);
    },
    recent: () => [...kept.values()],
  };
}
