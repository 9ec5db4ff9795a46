import { expect, test } from 'vitest';
import { surging } from '../../../../shared-core/monitor/call/surging.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond } from './call-second.ts';

test('calls when a head that has held swings over heat', () => {
  const calls = (facts = factsOf(), isSurging = true) =>
    surging.condition(callSecond(facts, { surging: isSurging }));
  expect(calls()).toBe(true);
  expect(calls(factsOf(), false)).toBe(false);
  expect(calls(factsOf({}, { situation: { heldS: null } }))).toBe(false);
  expect(calls(factsOf({ heat: 'off' }))).toBe(false);
  expect(calls(factsOf({ stage: 'cool-down' }))).toBe(false);
});

test('tells the swing beside the noise', () => {
  const noise = { whiteSdK: 0.04, slowSdK: 0.24 };
  expect(surging.reason(factsOf({ noise })).because).toBe(
    'The head swings up and down by far more than its noise of 0.2 K around 78.2 °C.',
  );
  expect(surging.sentence()).toBe('The column is surging.');
});
