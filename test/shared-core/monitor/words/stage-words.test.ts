import { describe, expect, test } from 'vitest';
import { stages } from '#shared-core';
import {
  stageBecause,
  stageWouldChangeIf,
} from '../../../../shared-core/monitor/words/stage-words.ts';
import { factsOf, headAt, limitC } from './facts.ts';

describe('why a stage is called', () => {
  test('a head past the limit is so much above it, never less than nothing below', () => {
    const passing = factsOf({}, { head: headAt(limitC + 0.04, 0.4 / 60) });
    expect(stageBecause(passing)).toMatch(
      /^The head is at 82\.8 °C, less than 0\.1 K above the limit of 80 % vol \(82\.8 °C on this probe\), and rising 0\.4 K\/min: vapour of \d\d–\d\d % vol\.$/,
    );
  });

  test('a movement that is no larger than its own uncertainty is none', () => {
    const head = { ...headAt(78.2, 0.3 / 60), rateSdKPerS: 0.2 / 60 };
    expect(stageBecause(factsOf({}, { head }))).toContain('and at no sure rate: vapour of');
  });

  test('a receded head is said to be below its plateau only where it is', () => {
    const situation = { recededSinceS: 1770, levelC: 81.4 };
    const inTail = factsOf({ stage: 'tail' }, { head: headAt(84.1), situation });
    expect(stageBecause(inTail)).toBe(
      'The head fell to 84.1 °C: vapour has receded from the bulb for 30 s.',
    );
    expect(stageBecause(factsOf({}, { head: headAt(76), situation }))).toBe(
      'The head fell to 76.0 °C, below the 81.4 °C of its plateau: vapour has receded from the bulb for 30 s.',
    );
  });

  test('a limit that the vapour has passed before its lagging bulb is told with both temperatures', () => {
    const head = { bulbC: limitC - 0.4, vapourC: limitC + 0.1, rateKPerS: 4 / 60 };
    expect(stageBecause(factsOf({}, { head }))).toMatch(
      /^The head is at 82\.4 °C, with the bulb's lag counted 82\.9 °C, 0\.1 K above the limit/,
    );
  });

  test('a tail whose head has come back is not called by a probability that speaks against it', () => {
    const back = factsOf({ stage: 'tail' }, { head: headAt(82.2), outlook: { passed: 0.01 } });
    expect(stageBecause(back)).toMatch(
      /^The head has passed the limit of 80 % vol \(82\.8 °C on this probe\) before, and has not been below it for long\. It is at 82\.2 °C now: vapour of/,
    );
  });

  test('a bulb that vapour has reached is not said to be without', () => {
    const arriving = factsOf(
      { stage: 'warm-up' },
      { head: headAt(66), situation: { heldS: null } },
    );
    expect(stageBecause(arriving)).toMatch(/^Vapour has reached the bulb, which is at 66\.0 °C/);
  });

  test('no stage tells a difference or rate to hundredths, or a negative one', () => {
    for (const stage of stages) {
      for (const rate of [-0.35 / 60, 0, 4.55 / 60]) {
        const facts = factsOf({ stage }, { head: headAt(82.96, rate) });
        expect(`${stageBecause(facts)} ${stageWouldChangeIf(facts)}`).not.toMatch(
          /\d\.\d\d|[-−]\d/,
        );
      }
    }
  });

  test.each(stages)('what would change %s goes on from "This would change if"', (stage) => {
    expect(stageWouldChangeIf(factsOf({ stage }))).toMatch(
      /^(The (bulb|head) (passed|held)|Vapour came back)/,
    );
  });
});
