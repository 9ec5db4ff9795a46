import { useEffect, useRef, useState } from 'react';
import { startWorker } from '../parts/index.ts';

/** Typing pauses this long before anything is worked out. */
const pauseMs = 400;

/** What a worker is asked, and what it answers: null where the request lies outside what can be worked out. */
export interface Question<Request> {
  readonly id: number;
  readonly request: Request;
}
export interface Answer<Result> {
  readonly id: number;
  readonly result: Result | null;
}

export interface WorkedOut<Result> {
  readonly result: Result | null;
  /** The result in view is older than the request. */
  readonly isMaking: boolean;
}

/**
 * What a worker makes of a request, beside the window; the last result stays in view meanwhile.
 *
 * @param makeWorker the same function every time, or none is started but the first
 */
export function useWorkedOut<Request, Result>(
  request: Request | null,
  makeWorker: () => Worker,
): WorkedOut<Result> {
  const [state, setState] = useState<WorkedOut<Result>>({ result: null, isMaking: false });
  const worker = useRef<Worker | null>(null);
  const asked = useRef(0);
  const key = JSON.stringify(request);

  useEffect(() => () => worker.current?.terminate(), []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a worker is started once, whichever function would start it
  useEffect(() => {
    // Whatever was asked before is out of date, also when the entries make no request any more.
    asked.current += 1;
    setState((known) => ({ ...known, isMaking: key !== 'null' }));
    if (key === 'null') return;
    const question: Question<Request> = { id: asked.current, request: JSON.parse(key) };
    // Not before there is something to work out: a run that is past its warm-up needs no plan.
    const ask = () => {
      // A window that may start no worker goes without, and everything else goes on.
      worker.current ??= startWorker(makeWorker, ({ id, result }: Answer<Result>) => {
        if (id === asked.current) setState({ result, isMaking: false });
      });
      worker.current?.postMessage(question);
    };
    const timer = setTimeout(ask, pauseMs);
    return () => clearTimeout(timer);
  }, [key]);

  return state;
}
