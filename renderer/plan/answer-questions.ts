import { OutOfRangeError } from '#shared-core';
import type { Answer, Question } from './use-worked-out.ts';

/** Makes a worker answer what it is asked: null for what lies outside the ranges. */
export function answerQuestions<Request, Result>(workOut: (request: Request) => Result | null) {
  self.onmessage = ({ data: { id, request } }: MessageEvent<Question<Request>>) => {
    const answer: Answer<Result> = { id, result: withinRange(() => workOut(request)) };
    self.postMessage(answer);
  };
}

function withinRange<Result>(workOut: () => Result | null): Result | null {
  try {
    return workOut();
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
