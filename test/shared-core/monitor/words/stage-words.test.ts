import { describe, expect, test } from 'vitest';
import { type Stage, stages } from '#shared-core';
import {
  stageBecause,
  stageWouldChangeIf,
  standingAt,
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

  test('a head that was never read stands at no temperature', () => {
    expect(standingAt(null)).toBe('unknown');
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

describe('the evidence for each stage', () => {
  const because = (stage: Stage, ...[changes, parts]: Parameters<typeof factsOf>) =>
    stageBecause(factsOf({ stage, ...changes }, parts));
  const azeotrope = 'the azeotrope at 98.6 kPa, 77.5 °C';

  test('is none without a reading, and waits while the probe is blind', () => {
    expect([
      stageBecause({ ...factsOf(), head: null }),
      because('main-fraction', { fault: 'silent' }),
      because('main-fraction', { fault: 'below-boiling' }),
    ]).toEqual([
      'No reading of the head has come yet.',
      'Staging waits: the probe sends nothing. The last sure stage is kept.',
      expect.stringMatching(/^The head is at 78\.2 °C/),
    ]);
  });

  test('of the warm-up is how far the bulb is from the azeotrope, and whether vapour is there', () => {
    const head = headAt(66);
    expect([
      because('warm-up', {}, { head, situation: { arrivedS: null } }),
      because('warm-up', {}, { head }),
    ]).toEqual([
      `The bulb is at 66.0 °C, 11.5 K below ${azeotrope}; no vapour bathes it yet.`,
      `Vapour has reached the bulb, which is at 66.0 °C, 11.5 K below ${azeotrope}, and still warms up.`,
    ]);
  });

  test('of the first fraction is how much is set apart, booked or estimated, once the head has come to rest', () => {
    const firstFraction = {
      over: false,
      done: 3.24,
      wanted: 5,
      unit: 'mL',
      estimated: false,
    } as const;
    const bathes = `Vapour bathes the bulb at 78.2 °C (${azeotrope});`;
    const convention =
      'Its end is your convention: light volatiles are too little to be seen by temperature.';
    expect([
      because('first-fraction', { firstFraction }, { situation: { heldS: null } }),
      because('first-fraction', { firstFraction }),
      because('first-fraction', { firstFraction: { ...firstFraction, estimated: true } }),
    ]).toEqual([
      `${bathes} it has not come to rest yet.`,
      `${bathes} 3.2 of 5 mL of the first fraction so far. ${convention}`,
      `${bathes} 3.2 of 5 mL of the first fraction so far (estimated, nothing booked). ${convention}`,
    ]);
  });

  test('of the tail is the probability that the limit is passed, from one in two on', () => {
    const at = (passed: number) => because('tail', {}, { head: headAt(85), outlook: { passed } });
    expect([at(0.97), at(0.5)].map((text) => text.replace(/\d\d–\d\d % vol\.$/, '#'))).toEqual([
      'The head is at 85.0 °C; the vapour is weaker than the limit of 80 % vol (82.8 °C on this probe) with a probability of 97 %: vapour of #',
      'The head is at 85.0 °C; the vapour is weaker than the limit of 80 % vol (82.8 °C on this probe) with a probability of 50 %: vapour of #',
    ]);
  });

  test('of the cool-down is how long no vapour has come, and whether the heat is known to be off', () => {
    const parts = { head: headAt(70), situation: { absentS: 240, recededSinceS: 1560 } };
    expect([because('cool-down', {}, parts), because('cool-down', { heat: 'off' }, parts)]).toEqual(
      [
        `No vapour has reached the bulb for 4 min; it is at 70.0 °C, 7.5 K below ${azeotrope}.`,
        `No vapour has reached the bulb for 4 min after the heat was taken off; it is at 70.0 °C, 7.5 K below ${azeotrope}.`,
      ],
    );
  });

  test('tells the vapour beside a bulb that lags by 0.15 K and is in vapour', () => {
    const standing = (vapourC: number, wet: number) =>
      /^The head is at (.*?), [^,]* the limit/.exec(
        because('main-fraction', {}, { head: { bulbC: 78, vapourC, wet } }),
      )?.[1];
    const counted = "78.0 °C, with the bulb's lag counted 77.8 °C";
    expect([standing(78.14, 1), standing(77.8, 0.4), standing(77.8, 0.5)]).toEqual([
      '78.0 °C',
      '78.0 °C',
      counted,
    ]);
  });
});

describe('what would change a stage', () => {
  test('is told with the temperatures of this probe and the convention set', () => {
    expect(stages.map((stage) => stageWouldChangeIf(factsOf({ stage })))).toEqual([
      'The bulb passed 72.5 °C in vapour: then the first fraction begins.',
      'The head held and 5 mL had been set apart: then the main fraction begins. If the head holds above 82.8 °C, there is no main fraction.',
      'The head passed 82.8 °C: then the tail begins.',
      'The head held below 82.8 °C for some minutes: then it is the main fraction again. No vapour for some minutes: then the cool-down begins.',
      'Vapour came back to the bulb: the stage before then goes on.',
    ]);
  });

  test('is good readings where the probe is blind, and the return of vapour where it has receded', () => {
    const receded = (levelC: number | null, stage: Stage = 'tail') =>
      stageWouldChangeIf(factsOf({ stage }, { situation: { recededSinceS: 1700, levelC } }));
    const cameBack = (at: string) =>
      `The head came back near ${at} °C or higher: the stage then goes on. After some minutes below, it becomes the cool-down.`;
    expect([
      stageWouldChangeIf(factsOf({ fault: 'silent' })),
      receded(78.2),
      receded(88),
      receded(null),
      receded(78.2, 'cool-down'),
    ]).toEqual([
      'Good readings came in again: staging then goes on where it was.',
      cameBack('78.2'),
      cameBack('82.8'),
      cameBack('77.5'),
      'Vapour came back to the bulb: the stage before then goes on.',
    ]);
  });
});
