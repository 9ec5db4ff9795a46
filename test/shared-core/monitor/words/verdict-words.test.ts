import { describe, expect, test } from 'vitest';
import type { Stage, StageSpan } from '#shared-core';
import { strengthRange, vapourStrength } from '../../../../shared-core/monitor/words/numbers.ts';
import { concludeVerdict } from '../../../../shared-core/monitor/words/verdict-words.ts';
import { factsOf, headAt } from './facts.ts';

const spans = (...stages: readonly Stage[]): StageSpan[] =>
  stages.map((stage, index) => ({ stage, fromS: 600 * index, toS: null, because: '' }));

describe('a verdict of no main fraction', () => {
  test('does not say that a strong head passed the limit when the still cooled down before', () => {
    const cold = factsOf(
      { stage: 'cool-down' },
      { head: headAt(40), situation: { lowestLevelC: 74.4 + 3.5, recededSinceS: 1500 } },
    );
    expect(concludeVerdict(cold, spans('warm-up', 'first-fraction', 'cool-down'))).toEqual({
      mainFraction: false,
      because:
        'No main fraction at 80 % vol or more: the head held at 77.9 °C, stronger than 80 % vol (82.8 °C on this probe), but the still cooled down before the first fraction had ended by the convention set. A shorter first fraction or a longer run would help.',
    });
  });

  test('says that the limit was judged passed where the tail was called, and how strong the head had been', () => {
    const { because } = concludeVerdict(
      factsOf({ stage: 'tail' }, { head: headAt(85) }),
      spans('warm-up', 'first-fraction', 'tail'),
    );
    expect(because).toContain('but was judged to have passed it when the first fraction ended');
    expect(because).not.toContain('hardly');
  });

  test('tells the strength of the vapour that held, not that of a bulb which cools', () => {
    const water = factsOf(
      { stage: 'tail' },
      { head: headAt(88.6), situation: { lowestLevelC: 99.2, recededSinceS: 1700 } },
    );
    expect(concludeVerdict(water, spans('warm-up', 'first-fraction', 'tail')).because).toMatch(
      /the lowest the head held at was 99\.2 °C, above 80 % vol \(82\.8 °C on this probe\)\. Vapour at that temperature has 0–\d+ % vol\. The charge held hardly any alcohol, or had lost it\.$/,
    );
  });

  test('where weak vapour held, names what would have made it stronger', () => {
    const weak = factsOf({ stage: 'tail' }, { situation: { lowestLevelC: 87 } });
    expect(concludeVerdict(weak, spans('warm-up', 'first-fraction', 'tail')).because).toMatch(
      /Vapour at that temperature has \d\d–\d\d % vol\. Too few plates, too little reflux or a weak charge;/,
    );
  });
});

describe('a verdict', () => {
  const because = (facts: ReturnType<typeof factsOf>, ...stages: readonly Stage[]) =>
    concludeVerdict(facts, spans(...stages));
  const no = (text: string) => ({ mainFraction: false, because: text });

  test('says how far a run without a main fraction had come', () => {
    expect([
      because(factsOf({ stage: 'warm-up' }, { situation: { arrivedS: null } }), 'warm-up'),
      because(factsOf({ stage: 'warm-up' }, { situation: { lowestLevelC: null } }), 'warm-up'),
      because(factsOf({ stage: 'first-fraction' }), 'warm-up', 'first-fraction'),
    ]).toEqual([
      no('No vapour reached the thermometer.'),
      no('Vapour reached the thermometer, but the head has not held yet.'),
      no('The first fraction had not ended by the convention set.'),
    ]);
  });

  test('of a main fraction says how long and from which temperature on; half a minute is the least', () => {
    const lasted = (mainS: number, lowestLevelC: number | null = 78.1) =>
      concludeVerdict(factsOf({ timeS: 1200 + mainS }, { situation: { lowestLevelC } }), [
        ...spans('warm-up', 'first-fraction', 'main-fraction'),
      ]);
    const ended = concludeVerdict(factsOf({ stage: 'tail' }), [
      { stage: 'main-fraction', fromS: 1000, toS: 1600, because: '' },
    ]);
    const stayed = (time: string) => ({
      mainFraction: true,
      because: `The vapour stayed stronger than 80 % vol (82.8 °C on this probe) for ${time}; the lowest the head held at was 78.1 °C.`,
    });
    expect([lasted(30), ended, lasted(29)]).toEqual([
      stayed('30 s'),
      stayed('10 min'),
      no(
        'No main fraction at 80 % vol or more: after the first fraction the head was stronger than 80 % vol (82.8 °C on this probe) for only 29 s; it takes 30 s to count as held.',
      ),
    ]);
  });

  test('vouches for no level that lies further below the azeotrope than pressure and probe explain, main fraction or not', () => {
    // The barometer's 0.1 kPa is 0.03 K; what is doubted is 2 K at least.
    const held = (lowestLevelC: number, ...stages: readonly Stage[]) =>
      because(factsOf({ stage: 'tail' }, { situation: { lowestLevelC } }), ...stages);
    const impossible = no(
      "No main fraction that can be vouched for: the head stood at 70.0 °C, 7.5 K below the azeotrope (77.5 °C at 98.6 kPa), where no ethanol–water vapour condenses; pressure and probe explain 2.0 K at most. Check the air pressure, the probe's correction and whether vapour bathed the bulb.",
    );
    expect([
      held(70, 'warm-up', 'first-fraction', 'tail'),
      held(70, 'warm-up', 'first-fraction', 'main-fraction', 'tail'),
      held(75.7, 'warm-up', 'first-fraction', 'main-fraction', 'tail').mainFraction,
    ]).toEqual([impossible, impossible, true]);
  });

  test('tells the strength on the true scale, where the probe reads high', () => {
    const bias = { meanK: 1, sdK: 0.3, offsetsK: [1], weights: [1] };
    const facts = factsOf({ stage: 'tail', bias }, { situation: { lowestLevelC: 87 } });
    const { low, high } = vapourStrength(
      facts.scale,
      86,
      Math.hypot(0.3, facts.scale.modelSdK(86)),
    );
    expect(because(facts, 'warm-up', 'first-fraction', 'tail').because).toContain(
      `Vapour at that temperature has ${strengthRange(low, high)}.`,
    );
  });

  test('names a column to a still that has none, and plates and reflux to others', () => {
    const causes = [0, 3, null].map((plates) => {
      const facts = factsOf({ stage: 'tail' }, { situation: { lowestLevelC: 87 } });
      const settings = { ...facts.settings, rig: { ...facts.settings.rig, plates } };
      return because({ ...facts, settings }, 'warm-up', 'first-fraction', 'tail').because;
    });
    const packing =
      'Too few plates, too little reflux or a weak charge; packing, lagging less, easing the heat or a stronger charge would help.';
    expect(causes.map((text) => text.split('% vol. ')[1])).toEqual([
      'A still without a column gives no more from this charge; a column or a stronger charge would help.',
      packing,
      packing,
    ]);
    expect(causes[0]).toMatch(
      /^No main fraction at 80 % vol or more with this rig: the lowest the head held at was 87\.0 °C, above 80 % vol \(82\.8 °C on this probe\)\. Vapour at that temperature has \d\d–\d\d % vol\./,
    );
  });
});
