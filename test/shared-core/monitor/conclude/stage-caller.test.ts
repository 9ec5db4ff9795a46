import { expect, test } from 'vitest';
import {
  createStageCaller,
  type StageSecond,
} from '../../../../shared-core/monitor/conclude/stage-caller.ts';
import { factsOf, headAt } from '../words/facts.ts';

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
  const caller = createStageCaller();
  const stages: string[] = [];
  for (const second of seconds) {
    caller.second(evidence(second));
    if (stages.at(-1) !== caller.stage()) stages.push(caller.stage());
    expect(caller.probability()).toBeGreaterThanOrEqual(0);
    expect(caller.probability()).toBeLessThanOrEqual(1);
  }
  return stages;
}

function evidence(second: Second): StageSecond {
  const { weak = 0, bathed = true, leftAloneS = 0, longestBreakS = 0, bulbC = 78.2 } = second;
  const { firstOver = true, off } = second;
  const { head, situation, outlook } = factsOf(
    {},
    {
      head: { ...headAt(78.2), bulbC },
      situation: {
        bathedS: bathed ? 900 : null,
        absentS: leftAloneS,
        leftAloneS,
        longestBreakS,
        recededSinceS: leftAloneS > 0 ? 1700 : null,
      },
      outlook: { passedOfLate: weak },
    },
  );
  if (head === null) throw new Error('There is a head.');
  return { head, situation, outlook, firstFractionOver: firstOver, isHeatOff: off === true };
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

test('heat taken away ends the run only when nothing came back for long and the bulb has cooled', () => {
  const main: Second[] = [{ firstOver: false }, { weak: 0.1 }];
  const gone = (leftAloneS: number, bulbC: number, off = false): string | undefined =>
    stagesOf([...main, { leftAloneS, bulbC, off }]).at(-1);
  expect([gone(420, 40), gone(421, 40), gone(421, 75)]).toEqual([
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
