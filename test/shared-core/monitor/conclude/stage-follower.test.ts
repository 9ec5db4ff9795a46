import { expect, test } from 'vitest';
import { createStageFollower } from '../../../../shared-core/monitor/conclude/stage-follower.ts';
import type { HeadNow } from '../../../../shared-core/monitor/situation/head-course.ts';
import { factsOf } from '../words/facts.ts';

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
