import { useEffect, useRef, useState } from 'react';
import { type Asker, createAsker } from '../beside/index.ts';

export interface WorkedOut<Result> {
  readonly result: Result | null;
  /** The result in view is older than the request. */
  readonly isMaking: boolean;
}

/** How something is worked out beside the window; the same object every time. */
interface WayOfWork<Request, Result> {
  /** Holds the worker's address, which the builder looks for. */
  readonly makeWorker: () => Worker;
  /** In a window that may start no worker. */
  readonly instead: (request: Request) => Result | null;
  /** Typing pauses this long before anything is worked out. */
  readonly pauseMs: number;
}

/** What a worker makes of a request, beside the window; the last result stays in view meanwhile. */
export function useWorkedOut<Request, Result>(
  request: Request | null,
  way: WayOfWork<Request, Result>,
): WorkedOut<Result> {
  const [state, setState] = useState<WorkedOut<Result>>({ result: null, isMaking: false });
  const asker = useRef<Asker<Request> | null>(null);
  const key = JSON.stringify(request);

  useEffect(() => () => asker.current?.end(), []);

  useEffect(() => {
    asker.current?.forget();
    setState((known) => ({ ...known, isMaking: key !== 'null' }));
    if (key === 'null') return;
    asker.current ??= createAsker({
      ...way,
      onResult: (result) => setState({ result, isMaking: false }),
    });
    const { ask } = asker.current;
    const timer = setTimeout(() => ask(JSON.parse(key)), way.pauseMs);
    return () => clearTimeout(timer);
  }, [key, way]);

  return state;
}
