import { describe, expect, test } from 'vitest';
import { quietAlarmTrack } from '../../../../shared-core/alarms/index.ts';
import type { StandingAlarm } from '../../../../shared-core/monitor/alarm-bank.ts';
import type { MonitorFacts } from '../../../../shared-core/monitor/monitor-facts.ts';
import { createSentenceKeeper } from '../../../../shared-core/monitor/words/sentence-keeper.ts';
import type { Alarm } from '../../../../shared-core/snapshot/index.ts';
import { factsOf, headAt } from './facts.ts';

type Parts = Parameters<typeof factsOf>;

function standing(alarm: Alarm, state: 'unacknowledged' | 'shelved' = 'unacknowledged') {
  const track = { ...quietAlarmTrack, state, active: true, raisedS: 1 };
  return { alarm, track, reason: { because: '', wouldChangeIf: '' } } satisfies StandingAlarm;
}

/** What the sentence is about from which second on, where each second is made from its number. */
function topics(
  untilS: number,
  at: (timeS: number) => MonitorFacts,
  alarmsAt: (timeS: number) => readonly Alarm[] = () => [],
): readonly string[] {
  const keeper = createSentenceKeeper();
  const list: string[] = [];
  let last = '';
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    keeper.second(
      { ...at(timeS), timeS },
      alarmsAt(timeS).map((alarm) => standing(alarm)),
    );
    const { topic } = keeper.kept();
    if (topic !== last) list.push(`${timeS} ${topic}`);
    last = topic;
  }
  return list;
}

describe('what the sentence is about', () => {
  const first = (...parts: Parts) => topics(1, () => factsOf(...parts));

  test('is the stage, and within it how far vapour and head have come', () => {
    expect(
      [
        topics(1, () => ({ ...factsOf(), head: null })),
        first({ stage: 'warm-up' }, { situation: { arrivedS: null } }),
        first({ stage: 'warm-up' }),
        first({ stage: 'first-fraction' }, { situation: { heldS: null } }),
        first({ stage: 'first-fraction' }),
        first(),
        first({ stage: 'tail' }),
        first({ stage: 'cool-down' }),
      ].flat(),
    ).toEqual([
      '1 waiting',
      '1 warming',
      '1 arriving',
      '1 settling',
      '1 first',
      '1 main',
      '1 tail',
      '1 cooling',
    ]);
  });

  test('is the first reading that is waited for, before any second has passed', () => {
    expect(createSentenceKeeper().kept()).toEqual({
      topic: 'waiting',
      sinceS: 0,
      strength: 'unsettled',
      limitAhead: null,
    });
  });

  test('is a blind probe before anything else, then the cool-down, vapour that has gone, heat that is off', () => {
    const gone = { situation: { recededSinceS: 1 } };
    expect(
      [
        first({ fault: 'silent', stage: 'cool-down' }),
        first({ heat: 'off', stage: 'cool-down' }, gone),
        first({ heat: 'off' }, gone),
        first({ heat: 'off' }),
        first({ fault: 'hotter-than-pot' }),
      ].flat(),
    ).toEqual(['1 unjudged', '1 cooling', '1 receded', '1 heat-off', '1 main']);
  });

  test('is a run that is over once heat off, cold or unheard, has lasted an hour, and nothing warms up again', () => {
    const off = { stage: 'cool-down', heat: 'off' } as const;
    const cold = { head: headAt(21) };
    const warmedAt = (timeS: number) => factsOf(off, timeS === 3000 ? { head: headAt(41) } : cold);
    expect([
      topics(3700, () => factsOf(off, cold)),
      topics(6700, warmedAt),
      topics(3700, (timeS) => factsOf({ ...off, fault: timeS > 600 ? 'lost' : null }, cold)),
      topics(3700, (timeS) => factsOf({ ...off, heat: timeS < 3650 ? 'off' : 'on' }, cold)),
      topics(3700, () => factsOf({ ...off, heat: 'on' }, cold)),
      topics(3700, () => factsOf({ ...off, potC: 77 }, cold)),
      topics(3700, () => factsOf({ ...off, potC: 78 }, cold)),
      topics(3700, () => factsOf(off, { head: headAt(40) })),
    ]).toEqual([
      ['1 cooling', '3601 over'],
      ['1 cooling', '6601 over'],
      ['1 cooling', '601 unjudged', '3601 over'],
      ['1 cooling', '3601 over', '3650 cooling'],
      ['1 cooling'],
      ['1 cooling', '3601 over'],
      ['1 cooling'],
      ['1 cooling'],
    ]);
  });

  test('is no alarm that was put aside', () => {
    const keeper = createSentenceKeeper();
    keeper.second({ ...factsOf(), timeS: 1 }, [standing('over-limit', 'shelved')]);
    expect(keeper.kept().topic).toBe('main');
  });

  test('is vapour that has come back for twenty seconds, and after a habit of coming and going too', () => {
    const back = (goneS: readonly (readonly [number, number])[], timeS: number) => {
      const away = goneS.find(([fromS, toS]) => timeS >= fromS && timeS < toS);
      const lastBackS = goneS.findLast(([, toS]) => toS <= timeS)?.[1];
      return factsOf(
        {},
        {
          situation: {
            recededSinceS: away?.[0] ?? null,
            calmS: lastBackS === undefined ? 800 : timeS - lastBackS,
          },
        },
      );
    };
    expect(topics(80, (timeS) => back([[10, 40]], timeS))).toEqual([
      '1 main',
      '10 receded',
      '40 returning',
      '60 main',
    ]);
    // The third time it stays away until the habit is over, 150 s after it began.
    const thrice = [
      [10, 20],
      [60, 70],
      [100, 255],
    ] as const;
    expect(topics(300, (timeS) => back(thrice, timeS)).slice(-4)).toEqual([
      '100 to-and-fro',
      '251 receded',
      '255 returning',
      '275 main',
    ]);
    const settling = [
      [10, 20],
      [60, 70],
      [100, 245],
    ] as const;
    expect(topics(300, (timeS) => back(settling, timeS)).slice(-3)).toEqual([
      '100 to-and-fro',
      '251 returning',
      '265 main',
    ]);
  });
});

describe('a sentence that stands', () => {
  const until = (endS: number, alarm: Alarm) => (timeS: number) => (timeS <= endS ? [alarm] : []);
  const main = () => factsOf();

  test('is an alarm’s for a minute at least, and for half a minute after its condition has gone', () => {
    expect([
      topics(100, main, until(10, 'over-limit')),
      topics(160, main, until(100, 'over-limit')),
      topics(100, main, until(31, 'over-limit')),
    ]).toEqual([
      ['1 over-limit', '61 main'],
      ['1 over-limit', '130 main'],
      ['1 over-limit', '61 main'],
    ]);
  });

  test('of an alarm gives way at once to a more urgent one, and to a less urgent one only when it is over', () => {
    const then = (before: Alarm, after: Alarm) =>
      topics(100, main, (timeS) => (timeS < 10 ? [before] : [after]));
    expect([
      then('over-limit', 'near-dryness'),
      then('over-limit', 'plateau-departure'),
      then('plateau-departure', 'over-limit'),
      then('over-limit', 'surging'),
    ]).toEqual([
      ['1 over-limit', '10 near-dryness'],
      ['1 over-limit', '10 plateau-departure'],
      ['1 plateau-departure', '61 over-limit'],
      ['1 over-limit', '61 surging'],
    ]);
  });

  test('of an alarm that has ended gives way to what anybody at the still can see', () => {
    const seen = (...parts: Parts) =>
      topics(12, (timeS) => (timeS < 10 ? factsOf() : factsOf(...parts)), until(9, 'over-limit'));
    expect(
      [
        seen({}, { situation: { recededSinceS: 10 } }),
        seen({ stage: 'cool-down' }),
        seen({ heat: 'off' }),
        seen({ fault: 'silent' }),
        seen({ stage: 'tail' }),
      ].map((list) => list[1]),
    ).toEqual(['10 receded', '10 cooling', '10 heat-off', '10 unjudged', undefined]);
  });

  test('of an alarm that does not outlast its condition goes with it', () => {
    expect(topics(30, main, until(9, 'bulb-doubted'))).toEqual(['1 bulb-doubted', '10 main']);
  });

  test('on the main fraction stands for a minute before its plateau is said to end, unless the rise is read', () => {
    const leavesAt30 = (etaS: number | null) => (timeS: number) =>
      factsOf(
        {},
        {
          head: headAt(timeS < 30 ? 78.2 : 79, 0.01),
          situation: { departedS: timeS < 30 ? null : 30 },
          outlook: { etaS },
        },
      );
    expect([topics(90, leavesAt30(null)), topics(90, leavesAt30(100))]).toEqual([
      ['1 main', '61 leaving'],
      ['1 main', '30 leaving'],
    ]);
  });

  test('on a plateau that ends stands for a minute while the head hangs above it, and no longer below it', () => {
    const back = (aboveK: number) =>
      topics(200, (timeS) => {
        const isGone = timeS >= 70 && timeS < 80;
        return factsOf(
          {},
          {
            head: headAt(78.2 + (isGone ? 1 : timeS < 70 ? 0 : aboveK)),
            situation: { departedS: isGone ? 70 : null },
          },
        );
      });
    expect([back(0.36), back(0.3), back(-0.1)]).toEqual([
      ['1 main', '70 leaving'],
      ['1 main', '70 leaving', '130 main'],
      ['1 main', '70 leaving', '80 main'],
    ]);
  });

  test('on a plateau that ends stands while a slow rise is told from noise, however small, until the head is back', () => {
    const slowly = topics(400, (timeS) =>
      factsOf(
        {},
        {
          head: headAt(78.2 + (timeS < 70 ? 0 : timeS < 350 ? 0.2 : -0.1)),
          situation: { departedS: timeS < 70 ? null : 70 },
        },
      ),
    );
    expect(slowly.slice(0, 3)).toEqual(['1 main', '70 leaving', '350 main']);
  });
});

test('a strength is told once it has been known for half a minute, and is taken back at once', () => {
  const keeper = createSentenceKeeper();
  const told = Array.from({ length: 100 }, (_, index) => {
    const timeS = index + 1;
    const moving = timeS <= 10 || timeS === 60;
    keeper.second({ ...factsOf({}, { head: headAt(78.2, moving ? 0.1 : 0) }), timeS }, []);
    return keeper.kept().strength;
  });
  const changes = told.flatMap((strength, index) =>
    strength === told[index - 1] ? [] : [`${index + 1} ${strength}`],
  );
  expect(changes).toEqual(['1 unsettled', '40 known', '60 unsettled', '90 known']);
});
