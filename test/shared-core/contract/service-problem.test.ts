import { expect, test } from 'vitest';
import { worded } from '#shared-core';
import {
  problemToSend,
  type ServiceProblem,
  serviceProblemSchema,
} from '../../../shared-core/contract/service-problem.ts';

const sentence = 'The run {name} has no record.';

test('a problem with words of ours goes on its way with what they were made from, and is still one of the contract', () => {
  const message = worded(sentence, { name: 'Pears' });
  const problems: readonly ServiceProblem[] = [
    { kind: 'request-invalid', message },
    { kind: 'run-unreadable', runId: 'a', message },
    { kind: 'internal', message },
  ];
  for (const problem of problems) {
    const sent = problemToSend(problem);
    expect(sent).toEqual({
      ...problem,
      wording: { [message]: { sentence, values: { name: 'Pears' } } },
    });
    expect(serviceProblemSchema.parse(sent)).toEqual(sent);
  }
});

test('what came with words already keeps what they were made from', () => {
  const wording = { other: { sentence: 'other', values: {} } };
  const message = worded(sentence, { name: 'Quinces' });
  expect(problemToSend({ kind: 'internal', message, wording })).toEqual({
    kind: 'internal',
    message,
    wording: { ...wording, [message]: { sentence, values: { name: 'Quinces' } } },
  });
});

test('one whose words nobody here made, or that has none, goes as it is', () => {
  const problems: readonly ServiceProblem[] = [
    { kind: 'internal', message: 'EIO: i/o error, read' },
    { kind: 'port-failed', path: '/dev/ttyUSB0', message: 'EIO' },
    { kind: 'no-probe' },
  ];
  expect(problems.map(problemToSend)).toEqual(problems);
});
