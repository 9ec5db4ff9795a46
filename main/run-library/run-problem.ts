import type { ServiceProblem } from '#shared-core';
import { type FileProblem, serviceProblemOf } from '../file-layer/index.ts';

/** What a problem with a run's files means for whoever asked for that run. */
export function runProblem(runId: string, problem: FileProblem): ServiceProblem {
  if (problem.kind === 'missing') return { kind: 'run-not-found', runId };
  if (problem.kind === 'failed') return { kind: 'run-unreadable', runId, message: problem.message };
  return serviceProblemOf(problem);
}
