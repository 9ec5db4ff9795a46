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
  /** What must be known of a result before anybody is told of it: what its sentences were made from, where it has some. */
  readonly onArrival?: (result: Result) => void;
  /** Typing pauses this long before anything is worked out. */
  readonly pauseMs: number;
}

/** What was worked out last, and from which request. */
interface Done<Result> {
  readonly key: string;
  readonly result: Result | null;
}

/** No request, as a key. */
const nothing = 'null';

/** What a worker makes of a request, beside the window; the last result stays in view meanwhile. */
export function useWorkedOut<Request, Result>(
  request: Request | null,
  way: WayOfWork<Request, Result>,
): WorkedOut<Result> {
  const [done, setDone] = useState<Done<Result>>({ key: nothing, result: null });
  const asker = useRef<Asker<Request> | null>(null);
  const asked = useRef(nothing);
  const key = JSON.stringify(request);

  useEffect(() => () => asker.current?.end(), []);

  useEffect(() => {
    asker.current?.forget();
    if (key === nothing) return;
    asker.current ??= createAsker({
      ...way,
      onResult: (result) => {
        if (result !== null) way.onArrival?.(result);
        setDone({ key: asked.current, result });
      },
    });
    const { ask } = asker.current;
    const timer = setTimeout(() => {
      asked.current = key;
      ask(JSON.parse(key));
    }, way.pauseMs);
    return () => clearTimeout(timer);
  }, [key, way]);

  return { result: done.result, isMaking: key !== nothing && key !== done.key };
}
