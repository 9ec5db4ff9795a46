import { expect, test } from 'vitest';
import { createStageFollower } from '../../../../shared-core/monitor/conclude/stage-follower.ts';
import type { HeadNow } from '../../../../shared-core/monitor/situation/head-course.ts';
import { factsOf, headAt } from '../words/facts.ts';

function now(parts: Parameters<typeof factsOf>[1], fault: HeadNow['fault'] = null): HeadNow {
  const { head, situation, outlook, bias } = factsOf({}, parts);
  return { head, situation, outlook, belief: bias, fault, lastTrustedC: 78, surging: false };
}

const around = { firstFractionOver: true, isHeatOff: false };
const gone = {
  head: { vapourC: 78, bulbC: 30 },
  situation: { recededSinceS: 1300, leftAloneS: 500 },
};

test('a stage begins in the second it is called; the cool-down when vapour has receded', () => {
  const follower = createStageFollower();
  const told = [];
  for (const [timeS, parts] of [
    [1, { situation: { bathedS: null } }],
    [900, {}],
    [901, {}],
    [1200, {}],
    [1800, gone],
  ] as const) {
    follower.second(timeS, now(parts), around);
    told.push(`${follower.stage()} since ${follower.sinceS()}`);
  }
  expect(told).toEqual([
    'warm-up since 0',
    'first-fraction since 900',
    'main-fraction since 901',
    'main-fraction since 901',
    'cool-down since 1300',
  ]);
});

test('a second without a head, or with one that cannot be trusted, leaves the stage as it was; a contradicted one does not', () => {
  const follower = createStageFollower();
  const stageAfter = (second: HeadNow) => {
    follower.second(900, second, around);
    return follower.stage();
  };
  expect([
    stageAfter({ ...now({}), head: null }),
    stageAfter(now({}, 'silent')),
    stageAfter(now({}, 'hotter-than-pot')),
  ]).toEqual(['warm-up', 'warm-up', 'first-fraction']);
});

test('the probability is by what decides the stage: the limit, the time without vapour, or how sure vapour is there', () => {
  const follower = createStageFollower();
  const probabilityAfter = (timeS: number, parts: Parameters<typeof factsOf>[1]) => {
    follower.second(timeS, now(parts), around);
    return follower.probability();
  };
  expect([
    probabilityAfter(1, { head: { wet: 0.2 }, situation: { bathedS: null } }),
    probabilityAfter(2, { head: { wet: 0.9 } }),
    probabilityAfter(3, { outlook: { passedOfLate: 0.03 } }),
    probabilityAfter(4, { outlook: { passedOfLate: 0.97 } }),
    probabilityAfter(5, gone),
  ]).toEqual([
    expect.closeTo(0.8, 9),
    0.9,
    expect.closeTo(0.97, 9),
    0.97,
    expect.closeTo(1 - Math.exp(-500 / 120), 9),
  ]);
});

type Second = {
  readonly weak?: number;
  readonly bathed?: boolean;
  readonly leftAloneS?: number;
  readonly longestBreakS?: number;
  readonly bulbC?: number;
  readonly firstOver?: boolean;
  readonly off?: boolean;
};

function stagesOf(seconds: readonly Second[]): readonly string[] {
  const follower = createStageFollower();
  const stages: string[] = [];
  for (const second of seconds) {
    const { firstOver = true, off = false } = second;
    follower.second(1800, evidence(second), { firstFractionOver: firstOver, isHeatOff: off });
    if (stages.at(-1) !== follower.stage()) stages.push(follower.stage());
    expect(follower.probability()).toBeGreaterThanOrEqual(0);
    expect(follower.probability()).toBeLessThanOrEqual(1);
  }
  return stages;
}

function evidence(second: Second): HeadNow {
  const { weak = 0, bathed = true, leftAloneS = 0, longestBreakS = 0, bulbC = 78.2 } = second;
  return now({
    head: { ...headAt(78.2), bulbC },
    situation: {
      bathedS: bathed ? 900 : null,
      absentS: leftAloneS,
      leftAloneS,
      longestBreakS,
      recededSinceS: leftAloneS > 0 ? 1700 : null,
    },
    outlook: { passedOfLate: weak },
  });
}

const times = (count: number, second: Second): Second[] => Array<Second>(count).fill(second);

test('a run goes from warm-up to the tail, and over without a main fraction where all was weak', () => {
  expect(stagesOf([{ bathed: false }, { firstOver: false }, { weak: 0.1 }, { weak: 0.6 }])).toEqual(
    ['warm-up', 'first-fraction', 'main-fraction', 'tail'],
  );
  expect(stagesOf([{ firstOver: false }, { weak: 0.7 }, { weak: 0.95 }])).toEqual([
    'first-fraction',
    'tail',
  ]);
});

test('a tail is taken back by a minute and a half of strong vapour, not by less', () => {
  const tail: Second[] = [{ firstOver: false }, { weak: 0.1 }, { weak: 0.9 }];
  expect(stagesOf([...tail, ...times(89, { weak: 0.05 }), { weak: 0.3 }]).at(-1)).toBe('tail');
  expect(stagesOf([...tail, ...times(90, { weak: 0.05 })]).at(-1)).toBe('main-fraction');
});

test('while no vapour comes, however strong the last was, no tail is taken back', () => {
  const tail: Second[] = [{ firstOver: false }, { weak: 0.1 }, { weak: 0.9 }];
  const strong = (count: number, leftAloneS = 0) => times(count, { weak: 0.05, leftAloneS });
  const away = [...tail, ...strong(50), ...strong(60, 20)];
  expect(stagesOf([...away, ...strong(39), { weak: 0.3 }]).at(-1)).toBe('tail');
  expect(stagesOf([...away, ...strong(40)]).at(-1)).toBe('main-fraction');
});

test('in the tail half the time without vapour ends the run: a wrong end costs nothing there', () => {
  const tail: Second[] = [{ firstOver: false }, { weak: 0.1 }, { weak: 0.9 }];
  const gone = (leftAloneS: number, off = false): string | undefined =>
    stagesOf([...tail, { weak: 0.9, leftAloneS, bulbC: 40, off }]).at(-1);
  expect([gone(240), gone(241), gone(120, true), gone(121, true)]).toEqual([
    'tail',
    'cool-down',
    'tail',
    'cool-down',
  ]);
});

test('heat taken away ends the run only when nothing came back for long and the bulb has cooled', () => {
  const main: Second[] = [{ firstOver: false }, { weak: 0.1 }];
  const gone = (leftAloneS: number, bulbC: number, off = false): string | undefined =>
    stagesOf([...main, { leftAloneS, bulbC, off }]).at(-1);
  expect([gone(480, 40), gone(481, 40), gone(481, 75)]).toEqual([
    'main-fraction',
    'cool-down',
    'main-fraction',
  ]);
  expect([gone(240, 40, true), gone(241, 40, true)]).toEqual(['main-fraction', 'cool-down']);
});

test('vapour that comes back after a cool-down goes on with the stage before it', () => {
  expect(
    stagesOf([{ firstOver: false }, { weak: 0.1 }, { leftAloneS: 500, bulbC: 30 }, { weak: 0.1 }]),
  ).toEqual(['first-fraction', 'main-fraction', 'cool-down', 'main-fraction']);
});

test('who has left the still alone for long, and come back, is waited for half as long again', () => {
  const tail: Second[] = [{ firstOver: false }, { weak: 0.1 }, { weak: 0.9 }];
  const gone = (leftAloneS: number): string | undefined =>
    stagesOf([...tail, { leftAloneS, longestBreakS: 400, bulbC: 40 }]).at(-1);
  expect([gone(600), gone(601)]).toEqual(['tail', 'cool-down']);
});
