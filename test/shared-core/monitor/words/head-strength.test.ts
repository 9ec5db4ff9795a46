import { describe, expect, test } from 'vitest';
import { headStrength, ofStrength } from '../../../../shared-core/monitor/words/head-strength.ts';
import { vapourView } from '../../../../shared-core/monitor/words/vapour-words.ts';
import { factsOf, headAt } from './facts.ts';

describe('the strength at the head', () => {
  test.each([
    ['receded', factsOf({}, { situation: { recededSinceS: 1790 } })],
    ['returned', factsOf({}, { head: { wet: 0.4 } })],
    ['moving', factsOf({}, { head: headAt(85, 4.5 / 60) })],
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

  test('is none at all before vapour has come', () => {
    const before = factsOf({}, { situation: { bathedS: null } });
    expect(headStrength(before)).toEqual({ kind: 'unsettled', why: 'not-held' });
    expect(vapourView(before, 'known')).toBeNull();
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

  test('of a head that ethanol–water vapour cannot have is none', () => {
    const cool = factsOf({}, { head: headAt(75) });
    expect(headStrength(cool)).toEqual({ kind: 'below-azeotrope' });
    expect(ofStrength(cool)).toBe('cooler than ethanol–water vapour can be');
  });
});
