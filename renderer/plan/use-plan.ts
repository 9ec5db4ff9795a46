import { useEffect, useRef, useState } from 'react';
import type { PlanRequest, RunPlan } from '#shared-core';
import type { PlanAnswer, PlanQuestion } from './plan-messages.ts';

/** Typing pauses this long before a plan is made. */
const pauseMs = 400;

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

  useEffect(() => {
    const made = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
    made.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      if (data.id === asked.current) setState({ plan: data.plan, isMaking: false });
    };
    worker.current = made;
    return () => made.terminate();
  }, []);

  useEffect(() => {
    // Whatever was asked before is out of date, also when the entries make no request any more.
    asked.current += 1;
    setState((known) => ({ ...known, isMaking: key !== 'null' }));
    if (key === 'null') return;
    const question: PlanQuestion = { id: asked.current, request: JSON.parse(key) };
    const timer = setTimeout(() => worker.current?.postMessage(question), pauseMs);
    return () => clearTimeout(timer);
  }, [key]);

  return state;
}
