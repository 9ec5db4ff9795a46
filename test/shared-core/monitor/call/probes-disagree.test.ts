import { expect, test } from 'vitest';
import { probesDisagree } from '../../../../shared-core/monitor/call/probes-disagree.ts';
import { factsOf, headAt } from '../words/facts.ts';
import { callSecond } from './call-second.ts';

const { act, condition, consequence, occurrence, reason, sentence, speaks } = probesDisagree;
const contradicted = factsOf({ fault: 'hotter-than-pot', potC: 21.4 }, { head: headAt(78.2) });

test('asks about a head that is hotter than its pot, and about no fault of the head itself', () => {
  expect(condition(callSecond(contradicted))).toBe(true);
  expect(occurrence(contradicted)?.key).toBe('hotter-than-pot');
  const others = [
    factsOf({ fault: 'frozen' }),
    factsOf({ fault: 'silent' }),
    factsOf(),
    factsOf({ fault: 'hotter-than-pot', stage: 'cool-down' }),
  ];
  expect(others.map((facts) => condition(callSecond(facts)))).toEqual([false, false, false, false]);
  expect(occurrence(factsOf({ fault: 'frozen' }))).toBeNull();
});

test('tells both readings, blames neither probe, and says that the calls go on', () => {
  expect(reason(contradicted).because).toBe(
    'The head reads 78.2 °C, the pot that feeds it 21.4 °C: one of the two cannot be right.',
  );
  expect(reason(factsOf({ fault: 'hotter-than-pot', potC: null })).because).toBe(
    'The head reads hotter than the pot that feeds it.',
  );
  expect(sentence()).toMatch(/one of the two is wrong\.$/);
  expect(consequence).toMatch(/^Stages and the heat-off call go by the head alone/);
  expect(act).toMatch(/heat off and cold before you touch/);
});

test('leaves the sentence to the run once it is answered', () => {
  expect(
    ['unacknowledged', 'acknowledged'].map((state) =>
      speaks(contradicted, state as 'acknowledged'),
    ),
  ).toEqual([true, false]);
});
