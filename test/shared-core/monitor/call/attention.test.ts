import { expect, test } from 'vitest';
import { attention } from '../../../../shared-core/monitor/call/attention.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond } from './call-second.ts';

test('calls a minute after the check was due', () => {
  const dueFor = (waitedS: number) =>
    attention.condition(callSecond(factsOf({ attentionDueS: 1800 - waitedS })));
  expect([dueFor(59), dueFor(60)]).toEqual([false, true]);
  expect(attention.condition(callSecond(factsOf()))).toBe(false);
});

test('tells how long nobody has answered', () => {
  expect(attention.reason(factsOf({ attentionDueS: 1740 })).because).toBe(
    'The check was due 60 s ago and nobody answered.',
  );
  expect(attention.sentence()).toBe('Nobody has confirmed being at the still.');
});
