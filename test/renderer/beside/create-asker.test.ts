import { expect, test } from 'vitest';
import type { Question } from '../../../renderer/beside/answer-questions.ts';
import { createAsker } from '../../../renderer/beside/create-asker.ts';

/** A worker that answers when it is told to. */
function slowWorker() {
  const given: Question<string>[] = [];
  const worker = {
    onmessage: null as ((event: { data: unknown }) => void) | null,
    onerror: null as (() => void) | null,
    postMessage: (question: Question<string>) => void given.push(question),
    terminate: () => undefined,
  };
  return {
    given,
    make: () => worker as unknown as Worker,
    answer: () => {
      const { id, request } = given.at(-1) as Question<string>;
      worker.onmessage?.({ data: { id, result: request.toUpperCase() } });
    },
    fail: () => worker.onerror?.(),
  };
}

function askerOf(makeWorker: () => Worker) {
  const results: (string | null)[] = [];
  const asker = createAsker<string, string>({
    makeWorker,
    instead: (request) => `${request} here`,
    onResult: (result) => results.push(result),
  });
  return { asker, results };
}

test('of questions asked while one is worked on, only the newest is worked on next, and only it is answered', () => {
  const { given, make, answer } = slowWorker();
  const { asker, results } = askerOf(make);
  for (const request of ['a', 'b', 'c', 'd']) asker.ask(request);
  answer();
  answer();
  expect(given.map(({ request }) => request)).toEqual(['a', 'd']);
  expect(results).toEqual(['D']);
});

test('what was forgotten is not answered, and what is asked after it is', () => {
  const { make, answer } = slowWorker();
  const { asker, results } = askerOf(make);
  asker.ask('a');
  asker.forget();
  answer();
  expect(results).toEqual([]);
  asker.ask('b');
  answer();
  expect(results).toEqual(['B']);
});

test('a worker that breaks over a question is asked the next one', () => {
  const { make, answer, fail } = slowWorker();
  const { asker, results } = askerOf(make);
  asker.ask('a');
  fail();
  asker.ask('b');
  answer();
  expect(results).toEqual([null, 'B']);
});

test('a window that may start no worker does the work itself', () => {
  const { asker, results } = askerOf(() => {
    throw new Error('not allowed here');
  });
  asker.ask('a');
  expect(results).toEqual(['a here']);
});
