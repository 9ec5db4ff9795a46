import { describe, expect, test } from 'vitest';
import { massFractionFromAlcoholByVolume } from '../../../../shared-core/alcoholometry/index.ts';
import { createVapourScale } from '../../../../shared-core/monitor/situation/vapour-scale.ts';
import { scaleFinding } from '../../../../shared-core/monitor/words/scale-finding.ts';
import { vapourView } from '../../../../shared-core/monitor/words/vapour-words.ts';
import { factsOf, headAt } from './facts.ts';

/** A scale that is known: the strength is doubted by the head's own uncertainty alone. */
const sure = { meanK: 0, sdK: 0, offsetsK: [0], weights: [1] };
const { azeotropeC, waterC, strengthAbv } = createVapourScale(98.6, 80);

describe('the vapour beside the sentence', () => {
  test('is told with the same strength by mass', () => {
    const view = vapourView(factsOf({ bias: sure }, { head: headAt(84) }), 'known');
    const byMass = (alcoholByVolume: number) =>
      expect.closeTo(100 * massFractionFromAlcoholByVolume({ alcoholByVolume }), 9);
    const { value, low, high } = view?.alcoholByVolume ?? { value: 0, low: 0, high: 0 };
    expect([value, low < value, value < high]).toEqual([strengthAbv(84), true, true]);
    expect(view?.ethanolMassPercent).toEqual({
      value: byMass(value),
      low: byMass(low),
      high: byMass(high),
    });
  });

  test('says how a strength was read, and near the azeotrope that the temperature says little', () => {
    const explained = (temperatureC: number, vapourSdK: number) =>
      vapourView(factsOf({ bias: sure }, { head: { ...headAt(temperatureC), vapourSdK } }), 'known')
        ?.explanation;
    const little = 'Near the azeotrope the temperature says little about the strength.';
    const read =
      /^Read from the temperature at which such vapour condenses at 98\.6 kPa; the standard uncertainty of the temperature is (0\.\d|less than 0\.1) K\.$/;
    expect([
      explained(azeotropeC + 0.3, 0.8),
      explained(azeotropeC + 0.3, 0.04),
      explained(84, 0.8),
    ]).toEqual([little, expect.stringMatching(read), expect.stringMatching(read)]);
  });

  test('is hotter than steam only where that is past doubt', () => {
    const kindAt = (aboveWaterK: number) =>
      vapourView(
        factsOf({ bias: sure }, { head: { ...headAt(waterC + aboveWaterK), vapourSdK: 0.5 } }),
        'known',
      )?.kind;
    expect([kindAt(-1), kindAt(0.9), kindAt(2)]).toEqual([
      'ethanol-water',
      'ethanol-water',
      'above-water',
    ]);
  });

  test('is not shown without a head, or once the still cools down', () => {
    expect([
      vapourView({ ...factsOf(), head: null }, 'known'),
      vapourView(factsOf({ stage: 'cool-down' }), 'known'),
    ]).toEqual([null, null]);
  });

  test('says why no strength is told', () => {
    const why = (facts: ReturnType<typeof factsOf>, shown: 'known' | 'unsettled' = 'known') =>
      vapourView(facts, shown)?.explanation;
    expect([
      why(factsOf({}, { situation: { recededSinceS: 1790 } })),
      why(factsOf({}, { situation: { calmS: 29 } })),
      why(factsOf({}, { head: { rateKPerS: 5 / 60 } })),
      why(factsOf({ heat: 'off' })),
      why(factsOf({ fault: 'frozen' })),
      why(factsOf(), 'unsettled'),
    ]).toEqual([
      'No vapour reaches the bulb just now: what it shows is its own cooling.',
      'Vapour is back at the bulb, which needs some seconds to settle in it.',
      'The head moves by more than 4 K/min: the bulb lags too far behind the vapour.',
      'The heat is off or the head sinks in the tail: vapour dies away, and the bulb shows its own cooling.',
      'The probe is not trusted just now.',
      'The bulb has only just settled in the vapour: the strength is told once it has stayed so for half a minute.',
    ]);
  });

  test('that cannot be ethanol–water vapour names what to look at, also while that is still being said', () => {
    const cannot = {
      kind: 'below-azeotrope',
      alcoholByVolume: null,
      ethanolMassPercent: null,
      explanation: `No ethanol–water vapour condenses below ${azeotropeC.toFixed(1)} °C at 98.6 kPa. See through the glass whether the bulb sits in the vapour at the side arm, then check the air pressure entered and the probe's correction; lighter volatiles are the rarer cause.`,
    };
    expect([
      vapourView(factsOf({}, { head: headAt(74) }), 'known'),
      vapourView(factsOf(), 'below-azeotrope'),
    ]).toEqual([cannot, cannot]);
  });
});

describe('how far the probe is told to be off', () => {
  const bias = {
    meanK: 0.4,
    sdK: 0.3,
    offsetsK: Array.from({ length: 1001 }, (_, index) => index / 1000),
    weights: Array.from({ length: 1001 }, () => 1 / 1001),
  };

  test('is nothing before vapour, no range before the head has held, then the middle 95 % of what is believed', () => {
    const none = { situation: { lowestLevelC: null } };
    expect([
      scaleFinding(factsOf({ bias, stage: 'warm-up' })),
      scaleFinding(factsOf({ bias }, none)),
    ]).toEqual([
      { probeReadsHighK: 0, probeReadsHighRangeK: null },
      { probeReadsHighK: 0.4, probeReadsHighRangeK: null },
    ]);
    expect(scaleFinding(factsOf({ bias }))).toEqual({
      probeReadsHighK: 0.4,
      probeReadsHighRangeK: { low: expect.closeTo(0.025, 2), high: expect.closeTo(0.975, 2) },
    });
  });
});
