import { describe, expect, test } from 'vitest';
import { alarmCatalogue } from '../../../../shared-core/monitor/call/index.ts';
import { composeSentence } from '../../../../shared-core/monitor/words/sentence.ts';
import type { Kept, Topic } from '../../../../shared-core/monitor/words/sentence-keeper.ts';
import { factsOf, headAt } from './facts.ts';

function sayOf(topic: Topic, facts = factsOf(), kept: Partial<Kept> = {}) {
  const { sentence, act } = composeSentence(facts, {
    topic,
    sinceS: 0,
    strength: 'known',
    limitAhead: null,
    ...kept,
  });
  return [sentence, act];
}

describe('what is said of each topic, and what it asks for', () => {
  test('before and beside vapour', () => {
    expect([
      sayOf('waiting'),
      sayOf('unjudged', factsOf({ fault: 'frozen' })),
      sayOf('unjudged'),
      sayOf('warming', factsOf({}, { head: headAt(31.26) })),
      sayOf('arriving', factsOf({}, { head: headAt(66) })),
      sayOf('returning'),
      sayOf('to-and-fro'),
    ]).toEqual([
      ['Waiting for the first reading of the head.', null],
      [
        'The head cannot be judged: the reading has stopped changing altogether, even in its last digit.',
        null,
      ],
      ['The head cannot be judged just now.', null],
      ['Warming up: the head is at 31.3 °C, no vapour has reached it.', null],
      ['Vapour is arriving at the head: 66.0 °C.', 'Ease the heat and watch the glass.'],
      ['Vapour is back at the thermometer: the head is settling at 78.2 °C.', null],
      [
        'Vapour comes and goes at the thermometer, as with a flame taken away and put back: the head is at 78.2 °C.',
        null,
      ],
    ]);
  });

  test('a head without a reading is waited for, whatever was being said', () => {
    expect(sayOf('main', { ...factsOf(), head: null })).toEqual([
      'Waiting for the first reading of the head.',
      null,
    ]);
  });

  test('the first fraction is to be set apart, in the unit agreed on, also while vapour comes and goes', () => {
    const by = (unit: 'mL' | 'drops' | 'min', wanted: number) =>
      factsOf({
        stage: 'first-fraction',
        firstFraction: { over: false, done: 0, wanted, unit, estimated: false },
      });
    expect([
      sayOf('settling', by('mL', 5)),
      sayOf('first', by('drops', 30)),
      sayOf('first', by('min', 4)),
      sayOf('to-and-fro', by('mL', 5))[1],
    ]).toEqual([
      [
        'The first fraction begins; the head is settling at 78.2 °C.',
        'Collect the first 5 mL apart.',
      ],
      ['The first fraction is coming over at 78.2 °C.', 'Collect the first 30 drops apart.'],
      [
        'The first fraction is coming over at 78.2 °C.',
        'Collect what comes in the first 4 min apart.',
      ],
      'Collect the first 5 mL apart.',
    ]);
  });

  test('main fraction and tail are told with their strength, once it is both known and to be told', () => {
    const cool = factsOf({}, { head: headAt(74) });
    const shown = (topic: Topic, facts: ReturnType<typeof factsOf>, strength: Kept['strength']) =>
      sayOf(topic, facts, { strength });
    expect([
      shown('main', factsOf(), 'known'),
      shown('main', factsOf(), 'unsettled'),
      shown('main', factsOf(), 'below-azeotrope'),
      shown('main', cool, 'known'),
      shown('tail', factsOf({}, { head: headAt(88) }), 'known'),
      shown('tail', factsOf({}, { head: headAt(88) }), 'unsettled'),
    ]).toEqual([
      [
        expect.stringMatching(/^The main fraction is coming over at 78\.2 °C, \d\d–\d\d % vol\.$/),
        null,
      ],
      ['The main fraction is coming over at 78.2 °C; its strength has not settled yet.', null],
      [
        'The main fraction is coming over at 78.2 °C, cooler than ethanol–water vapour can be.',
        'See through the glass whether the bulb sits in the vapour at the side arm.',
      ],
      ['The main fraction is coming over at 74.0 °C; its strength has not settled yet.', null],
      [expect.stringMatching(/^The tail is coming over at 88\.0 °C, \d\d–\d\d % vol\.$/), null],
      ['The tail is coming over at 88.0 °C; its strength has not settled yet.', null],
    ]);
  });

  test('the end of a plateau is told against where the head held, with the limit where it is foreseen', () => {
    const above = { head: headAt(79) };
    const limitAhead = {
      by: 'rate',
      bySinceS: 1700,
      madeS: 1800,
      expectedS: { value: 1860, low: 1830, high: 1920 },
    } as const;
    expect([
      sayOf('leaving', factsOf({}, above)),
      sayOf('leaving', factsOf({}, above), { limitAhead })[0],
      sayOf('leaving', factsOf({}, { ...above, situation: { levelC: null } }), { limitAhead })[0],
    ]).toEqual([
      [
        'The plateau is ending: the head is at 79.0 °C, 0.8 K above where it held.',
        'Stay at the still and have the next receiver ready.',
      ],
      'The plateau is ending: the head is at 79.0 °C, 0.8 K above where it held; the limit comes within 2 min.',
      'The plateau is ending: the head is at 79.0 °C; the limit comes within 2 min.',
    ]);
  });

  test('a run that is over is asked about once, with what is known of it', () => {
    const off = { heat: 'off', stage: 'cool-down' } as const;
    const question =
      'Is the run over? Once nothing drips, turn the water off and stop the recording.';
    expect([
      sayOf('over', factsOf(off, { head: headAt(21) })),
      sayOf('over', factsOf({ ...off, fault: 'lost' }, { head: headAt(21) })),
    ]).toEqual([
      ['The heat is off, and the head has been below 40 °C for over 60 min.', question],
      ['The head cannot be judged: the probe is disconnected.', question],
    ]);
  });

  test('vapour that has gone and a still that cools ask for the heat, and once it is known to be off for the cooling water', () => {
    const off = factsOf({ heat: 'off' });
    expect([
      sayOf('receded'),
      sayOf('receded', off)[1],
      sayOf('cooling'),
      sayOf('cooling', off)[1],
      sayOf('heat-off', off),
    ]).toEqual([
      [
        'Vapour has left the thermometer: the head has sunk to 78.2 °C.',
        'See whether the pot still boils.',
      ],
      'Keep the cooling water running until nothing drips.',
      ['The still is cooling down.', 'Make sure that the heat is off.'],
      'Keep the cooling water running until nothing drips.',
      [
        'The heat is off; the head is at 78.2 °C.',
        'Keep the cooling water running until nothing drips.',
      ],
    ]);
  });
});

test('beside a reading that is shown nobody waits for the first, also where nothing is concluded of it yet', () => {
  const kept = { topic: 'waiting', sinceS: 0, strength: 'unsettled', limitAhead: null } as const;
  const none = { ...factsOf(), head: null };
  expect([null, 20.02].map((shownC) => composeSentence(none, kept, shownC).sentence)).toEqual([
    'Waiting for the first reading of the head.',
    'The head is at 20.0 °C; it is too early to say more.',
  ]);
});

test('from the second on in which the attention check is due, that is what is asked, but for an alarm', () => {
  const due = (attentionDueS: number) => factsOf({ timeS: 1800, attentionDueS });
  expect([
    sayOf('arriving', due(1801))[1],
    sayOf('arriving', due(1800))[1],
    sayOf('plateau-departure', due(1800))[1],
  ]).toEqual([
    'Ease the heat and watch the glass.',
    'Confirm that you are at the still.',
    alarmCatalogue['plateau-departure'].act,
  ]);
});
