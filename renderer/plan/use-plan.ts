import { useEffect, useRef, useState } from 'react';
import type { PlanRequest, RunPlan } from '#shared-core';
import { startWorker } from '../parts/index.ts';
import type { PlanAnswer, PlanQuestion } from './plan-messages.ts';

/** Typing pauses this long before a plan is made. */
const pauseMs = 400;

const makeWorker = () =>
  new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });

export interface PlanState {
  readonly plan: RunPlan | null;
  /** The plan in view is older than the entries. */
  readonly isMaking: boolean;
}

/** The plan for a request, made beside the window; the last plan stays in view meanwhile. */
export function usePlan(request: PlanRequest | null): PlanState {
  const [state, setState] = useState<PlanState>({ plan: null, isMaking: false });
  const worker = useRef<Worker | null>(null);
  const asked = useRef(0);
  const key = JSON.stringify(request);

  useEffect(() => () => worker.current?.terminate(), []);

  useEffect(() => {
    // Whatever was asked before is out of date, also when the entries make no request any more.
    asked.current += 1;
    setState((known) => ({ ...known, isMaking: key !== 'null' }));
    if (key === 'null') return;
    const question: PlanQuestion = { id: asked.current, request: JSON.parse(key) };
    // Not before there is something to plan: a run that is past its warm-up needs none.
    const ask = () => {
      // A window that may start no worker goes without a plan, and everything else goes on.
      worker.current ??= startWorker(makeWorker, ({ id, plan }: PlanAnswer) => {
        if (id === asked.current) setState({ plan, isMaking: false });
      });
      worker.current?.postMessage(question);
    };
    const timer = setTimeout(ask, pauseMs);
    return () => clearTimeout(timer);
  }, [key]);

  return state;
}
