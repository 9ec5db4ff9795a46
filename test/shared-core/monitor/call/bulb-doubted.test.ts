import { expect, test } from 'vitest';
import { bulbDoubted } from '../../../../shared-core/monitor/call/bulb-doubted.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond } from './call-second.ts';

const { act, condition, occurrence, reason, sentence, speaks } = bulbDoubted;

test('calls for a level that no vapour can have, not for a fault of the probe', () => {
  const doubted = factsOf({ doubt: 'below-boiling' });
  expect(condition(callSecond(doubted))).toBe(true);
  expect(occurrence(doubted)?.key).toBe('below-boiling');
  const others = [
    factsOf(),
    factsOf({ fault: 'frozen' }),
    factsOf({ doubt: 'below-boiling', stage: 'cool-down' }),
  ];
  expect(others.map((facts) => condition(callSecond(facts)))).toEqual([false, false, false]);
});

test('tells the level beside the azeotrope and what would explain it, and what to look at with nothing touched while hot', () => {
  expect(act).toMatch(/^Check the air pressure entered .*heat off and cold before you touch/);
  const level = (lowestLaterC: number) =>
    reason(factsOf({ doubt: 'below-boiling' }, { situation: { lowestLaterC } })).because;
  expect(level(73.7)).toBe(
    'The head rested at 73.7 °C, 3.8 K below the azeotrope at 98.6 kPa (77.5 °C), where no ethanol–water vapour condenses. An air pressure of about 84 kPa would explain it, or a bulb that hangs badly or a probe that reads 3.8 K low.',
  );
  // Lower than people distil: no air pressure explains that.
  expect(level(67.5)).toMatch(
    /condenses\. Likely is a bulb that hangs badly or a probe that reads 10/,
  );
});

test('leaves the sentence to the run once it is answered', () => {
  const doubted = factsOf({ doubt: 'below-boiling' });
  expect(sentence(doubted)).toMatch(/^The head cannot be relied on: it rests below/);
  expect([speaks(doubted, 'unacknowledged'), speaks(doubted, 'acknowledged')]).toEqual([
    true,
    false,
  ]);
});
