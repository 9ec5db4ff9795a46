import { describe, expect, test } from 'vitest';
import { headStrength, ofStrength } from '../../../../shared-core/monitor/words/head-strength.ts';
import { vapourView } from '../../../../shared-core/monitor/words/vapour-words.ts';
import { lagTimeConstantS } from '../../../../shared-core/probe/index.ts';
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

  test('is doubted by head, model, lag and offset together, by hand calculation', () => {
    const bias = { meanK: 0.2, sdK: 0.3, offsetsK: [0.2], weights: [1] };
    const facts = factsOf(
      { bias },
      { head: { vapourC: 84.2, bulbC: 83.7, vapourSdK: 0.4, rateKPerS: -0.02 } },
    );
    const lagS = lagTimeConstantS(facts.settings.probe.lagT90S);
    const { modelSdK, strengthAbv } = facts.scale;
    // The lag is known to three parts in ten: of what stands between vapour and bulb, and of what the bulb lags at this rate.
    const headSdK = Math.hypot(0.4, modelSdK(84), 0.3 * 0.5, 0.3 * lagS * 0.02);
    const found = headStrength(facts);
    expect(found).toMatchObject({
      kind: 'known',
      sdK: expect.closeTo(Math.hypot(headSdK, 0.3), 9),
      strength: { value: strengthAbv(84) },
    });
    // With one offset left, 95 % is 1.96 standard deviations of the head's own doubt.
    if (found.kind !== 'known') return;
    expect(found.strength.low).toBeCloseTo(strengthAbv(84 + 1.96 * headSdK), 1);
    expect(found.strength.high).toBeCloseTo(strengthAbv(84 - 1.96 * headSdK), 1);
  });

  test('is told from a bulb that is as likely wet as dry and has been calm for half a minute, up to 4 K/min', () => {
    const kind = (...parts: Parameters<typeof factsOf>) => headStrength(factsOf(...parts)).kind;
    expect([
      kind({}, { head: { wet: 0.5 } }),
      kind({}, { head: { wet: 0.49 } }),
      kind({}, { situation: { calmS: 30 } }),
      kind({}, { situation: { calmS: 29 } }),
      kind({}, { head: { rateKPerS: 4 / 60 } }),
      kind({}, { head: { rateKPerS: -4.1 / 60 } }),
    ]).toEqual(['known', 'unsettled', 'known', 'unsettled', 'known', 'unsettled']);
  });

  test('of a tail whose head sinks is none only where it sinks by more than its doubt, and by 0.3 K/min', () => {
    const kind = (stage: 'tail' | 'main-fraction', rateKPerMin: number, sdKPerMin: number) =>
      headStrength(
        factsOf(
          { stage },
          { head: { ...headAt(84, rateKPerMin / 60), rateSdKPerS: sdKPerMin / 60 } },
        ),
      ).kind;
    expect([
      kind('tail', -0.31, 0.1),
      kind('tail', -0.29, 0.1),
      kind('tail', -0.5, 0.26),
      kind('tail', -0.5, 0.24),
      kind('main-fraction', -0.5, 0),
    ]).toEqual(['unsettled', 'known', 'known', 'unsettled', 'known']);
  });

  test('is said in the middle of a sentence, and why there is none', () => {
    const of = (...parts: Parameters<typeof factsOf>) => ofStrength(factsOf(...parts));
    expect([
      of(),
      of({}, { situation: { bathedS: null } }),
      of({}, { situation: { recededSinceS: 1790 } }),
      of({}, { situation: { calmS: 3 } }),
      of({ heat: 'off' }),
      of({}, { head: { rateKPerS: 0.1 } }),
      of({ fault: 'silent' }),
    ]).toEqual([
      expect.stringMatching(/^of \d\d–\d\d % vol$/),
      'of a strength not known before the head comes to rest',
      'of unknown strength while no vapour reaches the bulb',
      'of a strength not known until the bulb has settled in the vapour again',
      'of unknown strength while the bulb cools',
      'of a strength that changes too fast to tell',
      'of unknown strength while the probe is not trusted',
    ]);
  });
});
