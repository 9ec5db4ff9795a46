import { OutOfRangeError } from '#shared-core';

/** What a worker is asked, and what it answers: null where the request lies outside what can be worked out. */
export interface Question<Request> {
  readonly id: number;
  readonly request: Request;
}
export interface Answer<Result> {
  readonly id: number;
  readonly result: Result | null;
}

/** Makes a worker answer what it is asked: null for what lies outside the ranges. */
export function answerQuestions<Request, Result>(workOut: (request: Request) => Result | null) {
  self.onmessage = ({ data: { id, request } }: MessageEvent<Question<Request>>) => {
    const answer: Answer<Result> = { id, result: withinRange(() => workOut(request)) };
    self.postMessage(answer);
  };
}

/** What is worked out, or null where the request lies outside what can be. */
export function withinRange<Result>(workOut: () => Result | null): Result | null {
  try {
    return workOut();
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
