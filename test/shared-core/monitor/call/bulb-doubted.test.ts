import { expect, test } from 'vitest';
import { bulbDoubted } from '../../../../shared-core/monitor/call/bulb-doubted.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond } from './call-second.ts';

const { condition, occurrence, reason, sentence, speaks } = bulbDoubted;
const rise = { lowestC: 70.1, highestC: 72.4, toLimitK: 5.3, endedS: null };

test('calls for a bulb that hangs badly or rises away from a doubted level, not for a fault of the probe', () => {
  const doubted = [
    factsOf({ doubt: 'below-boiling' }),
    factsOf({ doubt: 'warm-without-vapour' }),
    factsOf({ doubtfulRise: rise }),
  ];
  expect(doubted.map((facts) => condition(callSecond(facts)))).toEqual([true, true, true]);
  expect(doubted.map((facts) => occurrence(facts)?.key)).toEqual([
    'below-boiling',
    'warm-without-vapour',
    'rises-away',
  ]);
  const others = [
    factsOf({ fault: 'frozen' }),
    factsOf({ doubtfulRise: { ...rise, endedS: 1790 } }),
    factsOf({ doubt: 'below-boiling', stage: 'cool-down' }),
  ];
  expect(others.map((facts) => condition(callSecond(facts)))).toEqual([false, false, false]);
});

test('tells the reading beside the azeotrope, and what to look at with nothing touched while hot', () => {
  const told = (['below-boiling', 'warm-without-vapour'] as const).map((doubt) =>
    reason(factsOf({ doubt })),
  );
  expect(told.map(({ act }) => act)).toEqual([
    expect.stringMatching(/^Check the air pressure entered .*heat off and cold before you touch/),
    expect.stringMatching(/^Look whether vapour .*heat off and cold before you touch/),
  ]);
  expect(told[0]?.because).toBe(
    'The head reads 78.2 °C, the azeotrope at 98.6 kPa boils at 77.5 °C: it rests below the lowest boiling point at this air pressure.',
  );
  expect(reason(factsOf({ doubtfulRise: rise })).because).toMatch(
    /it has read too low for vapour, and rises away from that level\.$/,
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
