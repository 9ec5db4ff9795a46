import { type Answer, type Question, withinRange } from './answer-questions.ts';
import { startWorker } from './start-worker.ts';

export interface Asker<Request> {
  /** Asks this in place of whatever still waits; what is being worked on is finished, and then forgotten. */
  ask(request: Request): void;
  /** Whatever was asked is out of date. */
  forget(): void;
  end(): void;
}

interface AskerParts<Request, Result> {
  readonly makeWorker: () => Worker;
  /** In a window that may start no worker. */
  readonly instead: (request: Request) => Result | null;
  /** The answer to the newest question, and to no other. */
  readonly onResult: (result: Result | null) => void;
}

/**
 * Asks a worker one question at a time, the newest next: a cursor that is dragged over a week asks for more than can be worked
 * out, and only where it comes to rest is of interest.
 */
export function createAsker<Request, Result>(parts: AskerParts<Request, Result>): Asker<Request> {
  const { makeWorker, instead, onResult } = parts;
  let worker: Worker | null = null;
  let newest = 0;
  let asked = 0;
  let isBusy = false;
  let waiting: Question<Request> | null = null;

  const next = () => {
    if (isBusy || waiting === null) return;
    const question = waiting;
    waiting = null;
    // Not before there is something to work out: many windows never ask.
    worker ??= startWorker(
      makeWorker,
      ({ id, result }: Answer<Result>) => settle(id, result),
      // It broke over this question; the next may fare better.
      () => settle(asked, null),
    );
    if (worker === null) return onResult(withinRange(() => instead(question.request)));
    isBusy = true;
    asked = question.id;
    worker.postMessage(question);
  };
  const settle = (id: number, result: Result | null) => {
    isBusy = false;
    if (id === newest) onResult(result);
    next();
  };

  return {
    ask: (request) => {
      newest += 1;
      waiting = { id: newest, request };
      next();
    },
    forget: () => {
      newest += 1;
      waiting = null;
    },
    end: () => {
      worker?.terminate();
      worker = null;
      isBusy = false;
    },
  };
}
