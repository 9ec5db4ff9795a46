import { describe, expect, test } from 'vitest';
import { headStrength, ofStrength } from '../../../../shared-core/monitor/words/head-strength.ts';
import { vapourView } from '../../../../shared-core/monitor/words/vapour-words.ts';
import { factsOf, headAt } from './facts.ts';

describe('the strength at the head', () => {
  test.each([
    ['not-held', factsOf({}, { plateau: { heldS: null } })],
    ['receded', factsOf({}, { plateau: { recededSinceS: 1790 } })],
    ['returned', factsOf({}, { plateau: { calmS: 19 } })],
    ['moving', factsOf({}, { head: headAt(85, 2.5 / 60) })],
    ['cooling', factsOf({ heat: 'off' })],
    ['cooling', factsOf({ stage: 'tail' }, { head: headAt(88, -0.9 / 60) })],
    ['fault', factsOf({ fault: 'frozen' })],
  ] as const)('is not told while %s, in no view and no sentence', (why, facts) => {
    expect(headStrength(facts)).toEqual({ kind: 'unsettled', why });
    expect(ofStrength(facts)).not.toMatch(/\d/);
    expect(vapourView(facts, 'known')).toEqual({
      kind: 'unsettled',
      alcoholByVolume: null,
      ethanolMassPercent: null,
      explanation: expect.any(String),
    });
  });

  test('is not told in one place while another still waits for it', () => {
    expect(vapourView(factsOf(), 'unsettled')?.alcoholByVolume).toBeNull();
    expect(vapourView(factsOf(), 'known')?.alcoholByVolume).not.toBeNull();
  });

  test('of a moving head is wider by what the lag leaves open', () => {
    const width = (rateKPerS: number): number => {
      const found = headStrength(factsOf({}, { head: headAt(80, rateKPerS) }));
      return found.kind === 'known' ? found.strength.high - found.strength.low : Number.NaN;
    };
    expect(width(1.8 / 60)).toBeGreaterThan(width(0));
  });

  test('of a head that reads a little below the azeotrope is not sure to be the strongest there is', () => {
    const found = headStrength(factsOf({}, { head: headAt(77.15) }));
    expect(found).toMatchObject({ kind: 'known' });
    if (found.kind !== 'known') return;
    expect(found.strength.high - found.strength.low).toBeGreaterThan(1.5);
  });

  test('of a bulb that was doubted and rose away is not known, whatever it reads', () => {
    const doubtfulRise = { lowestC: 70.1, highestC: 72.4, toLimitK: 5.3, endedS: 1700 };
    expect(headStrength(factsOf({ doubtfulRise }, { head: headAt(79) }))).toEqual({
      kind: 'unsettled',
      why: 'doubted',
    });
  });

  test('of a head that ethanol–water vapour cannot have is none', () => {
    const cool = factsOf({}, { head: headAt(75) });
    expect(headStrength(cool)).toEqual({ kind: 'below-azeotrope' });
    expect(ofStrength(cool)).toBe('cooler than ethanol–water vapour can be');
  });
});
