import { expect, test } from 'vitest';
import { probeImplausible } from '../../../../shared-core/monitor/call/probe-implausible.ts';
import { factsOf } from '../words/facts.ts';
import { callSecond } from './call-second.ts';

const { condition, occurrence, reason, sentence } = probeImplausible;

test('calls for each reading that cannot be, and for no other trouble of a probe', () => {
  const faults = [
    ...['spikes', 'step', 'frozen', 'above-boiling-water'],
    ...['hotter-than-pot', 'lost', 'silent', 'open-circuit', null],
  ] as ReturnType<typeof factsOf>['fault'][];
  expect(faults.filter((fault) => condition(callSecond(factsOf({ fault }))))).toEqual(
    faults.slice(0, 4),
  );
  expect(condition(callSecond(factsOf({ doubt: 'below-boiling' })))).toBe(false);
  expect(condition(callSecond(factsOf({ fault: 'frozen', stage: 'cool-down' })))).toBe(false);
});

test('tells what cannot be, by the newest of its causes, and sends nobody’s hands to a hot head', () => {
  const frozen = factsOf({ fault: 'frozen' });
  expect(reason(frozen).because).toBe(
    'At 0:30:00: the reading has stopped changing altogether, even in its last digit; last trusted value 78.2 °C.',
  );
  expect(sentence(frozen)).toMatch(/^The head cannot be trusted: the reading has stopped/);
  const keys = [frozen, factsOf({ fault: 'spikes' }), factsOf({ fault: 'lost' })].map(
    (facts) => occurrence(facts)?.key,
  );
  expect(keys).toEqual(['frozen', 'spikes', undefined]);
  expect(probeImplausible.act).toBe(
    'Read the glass thermometer by eye; heat off and cold before you touch or open the head.',
  );
});

test('says so where no reading has ever been believed, and where the fault has gone by the time it is told', () => {
  expect(reason(factsOf({ fault: 'spikes', lastTrustedC: null })).because).toBe(
    'At 0:30:00: readings jump back and forth faster than a bulb can follow; nothing believed yet.',
  );
  expect([reason(factsOf()).because, sentence(factsOf())]).toEqual([
    'At 0:30:00: the probe is not trusted; last trusted value 78.2 °C.',
    'The head cannot be trusted.',
  ]);
  expect(occurrence(factsOf())).toBeNull();
});
