import { OutOfRangeError, planRun } from '#shared-core';
import type { PlanAnswer, PlanQuestion } from './plan-messages.ts';

// A plan is some dozens of simulated runs: half a second in which the window must go on answering.
self.onmessage = ({ data }: MessageEvent<PlanQuestion>) => {
  self.postMessage(answerTo(data));
};

function answerTo({ id, request }: PlanQuestion): PlanAnswer {
  try {
    return { id, plan: planRun(request) };
  } catch (error) {
    if (error instanceof OutOfRangeError) return { id, plan: null };
    throw error;
  }
}
