import { expect, test } from 'vitest';
import { fail, succeed } from '#shared-core';
import { answerRequest } from '../../../main/session/answer-request.ts';
import type { RequestHandlers } from '../../../main/session/request-handlers.ts';

const teacher = { mayCommand: true };
const runs = { runs: [] };

test('a known request with a whole body is answered by its handler, who is told who asks', async () => {
  const asked: unknown[] = [];
  const handlers: Partial<RequestHandlers> = {
    'runs/list': async (body, asker) => {
      asked.push([body, asker]);
      return succeed(runs);
    },
  };
  const viewer = { mayCommand: false };
  expect(await answerRequest(handlers, 'runs/list', {}, viewer)).toEqual(succeed(runs));
  expect(asked).toEqual([[{}, viewer]]);
});

test('what nobody answers, and what is no request, is said by name, briefly', async () => {
  for (const name of ['runs/list', 'toString', 'x'.repeat(200)]) {
    expect(await answerRequest({}, name, {}, teacher)).toEqual(
      fail({
        kind: 'request-invalid',
        message: `There is no request "${name.slice(0, 80)}".`,
      }),
    );
  }
});

test('a viewer who commands is refused before anybody looks at what is asked', async () => {
  const handlers: Partial<RequestHandlers> = {
    'run/stop': () => Promise.reject(new Error('asked all the same')),
  };
  expect(await answerRequest(handlers, 'run/stop', 'nonsense', { mayCommand: false })).toEqual(
    fail({ kind: 'viewer-may-not-command' }),
  );
});

test('of a body that is wrong in many places the first three are told', async () => {
  const handlers: Partial<RequestHandlers> = {
    'packs/make': () => Promise.reject(new Error('asked all the same')),
  };
  const body = { packId: 7, runIds: [7, 7, 7] };
  const answer = await answerRequest(handlers, 'packs/make', body, teacher);
  if (answer.ok || answer.error.kind !== 'request-invalid') throw new Error('It was taken.');
  expect(answer.error.message.match(/✖/g)).toHaveLength(3);
});

test('a handler that fails is one request that failed, told briefly', async () => {
  const failing = (error: unknown): Partial<RequestHandlers> => ({
    'runs/list': () => Promise.reject(error),
  });
  const answers = [];
  for (const error of [new Error('a bug'), 'no error at all', new Error('x'.repeat(1000))]) {
    answers.push(await answerRequest(failing(error), 'runs/list', {}, teacher));
  }
  expect(answers).toEqual(
    ['a bug', 'no error at all', 'x'.repeat(400)].map((message) =>
      fail({ kind: 'internal', message }),
    ),
  );
});
