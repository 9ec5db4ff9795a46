import { describe, expect, test } from 'vitest';
import { createRandom, defaultRunSettings } from '#shared-core';
import {
  createHeadTracker,
  type HeadSurroundings,
} from '../../../../shared-core/monitor/sense/head-tracker.ts';
import { isBlind } from '../../../../shared-core/monitor/sense/probe-fault.ts';
import {
  createHeadCourse,
  type HeadNow,
} from '../../../../shared-core/monitor/situation/head-course.ts';
import { createLimitScale } from '../../../../shared-core/monitor/situation/limit-scale.ts';
import {
  believeScale,
  priorScale,
} from '../../../../shared-core/monitor/situation/scale-belief.ts';

/** Vapour reaches a bulb that lags by some seconds, and holds there. */
const arrivesS = 100;
const plateauC = 77.1;
const headC = (timeS: number): number =>
  timeS < arrivesS ? 22 : plateauC - 55 * Math.exp(-(timeS - arrivesS) / 6.5);

/** A course fed a reading a second, with what it asked its tracker for. */
function course(valueC: (timeS: number) => number = headC, noiseSdK = 0.03) {
  const random = createRandom('head course');
  const tracker = createHeadTracker(defaultRunSettings);
  const asked: HeadSurroundings[] = [];
  const limitScale = createLimitScale(defaultRunSettings);
  const head = createHeadCourse(
    defaultRunSettings,
    {
      ...tracker,
      second: (timeS, binned, around) => {
        asked.push(around);
        return tracker.second(timeS, binned, around);
      },
    },
    limitScale,
  );
  let timeS = 0;
  const second = (isQuiet: boolean): HeadNow => {
    timeS += 1;
    const value = valueC(timeS) + noiseSdK * random.normal();
    return head.second(
      timeS,
      { timeS, value, count: 1, spread: 0 },
      { potC: 91.5, isQuiet, isHeatOff: false },
    );
  };
  const until = (endS: number, isQuiet = true): readonly HeadNow[] =>
    Array.from({ length: endS - timeS }, () => second(isQuiet));
  return { asked, limitScale, tracker, until };
}

describe('what the tracker is told of the surroundings', () => {
  test('a plateau to judge by, and that noise may be learned, only once the bathed bulb has been calm for half a minute', () => {
    const { asked, until } = course();
    const seen = until(600);
    const calmFrom = seen.findIndex(({ situation }) => situation.calmS >= 30);
    expect(calmFrom).toBeGreaterThan(arrivesS + 29);
    const before = asked.slice(0, calmFrom + 1);
    expect(before.filter(({ holding, plateauC }) => holding || plateauC !== null)).toEqual([]);
    const after = asked.slice(calmFrom + 1);
    expect(after.every(({ holding }) => holding)).toBe(true);
    expect(after.at(-1)?.plateauC).toBeCloseTo(plateauC, 1);
    expect(after.every(({ potC }) => potC === 91.5)).toBe(true);
  });

  test('no noise is learned where somebody has just touched the heat', () => {
    const { asked, until } = course();
    until(400);
    until(420, false);
    expect(asked.slice(400).map(({ holding }) => holding)).toEqual(Array(20).fill(false));
    expect(asked[400]?.plateauC).toBeCloseTo(plateauC, 1);
  });

  test('no noise is learned and no step is judged while the vapour is away', () => {
    const { asked, until } = course((timeS) =>
      timeS < 500 ? headC(timeS) : plateauC - (timeS - 500) / 20,
    );
    const seen = until(800);
    expect(seen.at(-1)?.situation.recededSinceS).not.toBeNull();
    expect(asked.at(-1)).toMatchObject({ holding: false, plateauC: null });
  });

  test('vapour is guessed at by the azeotrope on this probe, four kelvins above and six either way', () => {
    const { asked, limitScale, until } = course();
    const { belief } = until(1)[0]!;
    const scale = limitScale.scale();
    expect(asked[0]).toMatchObject({
      waterC: scale.waterC,
      vapourGuessC: scale.azeotropeC + belief.meanK + 4,
      vapourGuessSdK: Math.hypot(6, belief.sdK),
    });
  });

  test('what held before is vapour, however cool; what lies far below it is as likely as the belief has it', () => {
    const { asked, until } = course(headC, 0.01);
    until(900);
    const { possible } = asked.at(-1)!;
    expect(possible(plateauC - 0.4)).toBe(1);
    expect(possible(plateauC - 9)).toBeLessThan(0.01);
    expect(asked[0]?.possible(plateauC - 9)).toBeLessThan(asked[0]?.possible(plateauC) ?? 0);
  });
});

describe('the belief of the scale', () => {
  test('is the prior before a level was held, and then goes by the levels and their scatter, every ten seconds', () => {
    const { limitScale, tracker, until } = course();
    const scale = limitScale.scale();
    expect(until(60).at(-1)?.belief).toEqual(priorScale(defaultRunSettings, scale));
    const seen = until(1200);
    const changedS = seen.flatMap(({ belief }, index) =>
      index > 0 && belief !== seen[index - 1]?.belief ? [61 + index] : [],
    );
    expect(changedS.length).toBeGreaterThan(2);
    expect(changedS.filter((timeS) => timeS % 10 !== 0)).toEqual([]);
    const { situation, belief } = seen.at(-1)!;
    expect(belief).toEqual(
      believeScale(defaultRunSettings, scale, {
        lowestC: situation.lowestLevelC!,
        lowestSdK: Math.hypot(0.05, tracker.noise().slowSdK / 2),
        lowestLaterC: situation.lowestLaterC,
      }),
    );
  });

  test('goes by another air pressure in the second after it was entered', () => {
    const { limitScale, until } = course();
    const before = until(33).at(-1)!;
    limitScale.setPressure(94.2);
    const after = until(34)[0]!;
    expect(after.belief).toEqual(priorScale(limitScale.settings(), limitScale.scale()));
    expect(after.belief.sdK).toBeLessThan(before.belief.sdK);
    expect(after.outlook.limitOnProbeC).not.toBe(before.outlook.limitOnProbeC);
  });
});

describe('the head at one second', () => {
  test('keeps the last reading that was trusted where none comes', () => {
    const { until } = course((timeS) => (timeS === 300 ? 140 : headC(timeS)));
    const seen = until(300);
    expect(seen.at(-1)?.lastTrustedC).toBe(seen.at(-2)?.lastTrustedC);
    expect(seen.at(-1)?.lastTrustedC).toBeCloseTo(plateauC, 0);
  });

  test('concludes nothing of the limit while the probe is blind, and goes on from there', () => {
    const limitTest = course((timeS) => (timeS > 600 && timeS <= 640 ? 140 : headC(timeS)));
    const seen = limitTest.until(640);
    const from = seen.findIndex(({ fault }) => isBlind(fault));
    expect(from).toBeGreaterThan(598);
    expect(from).toBeLessThan(610);
    const { strongForS } = seen[from - 1]!.outlook;
    const { passed, passedOfLate, passedWithinReaction } = seen[from - 1]!.outlook;
    for (const { outlook } of seen.slice(from)) {
      expect(outlook).toMatchObject({ passed, passedOfLate, passedWithinReaction, strongForS });
    }
    expect(limitTest.until(700).at(-1)?.outlook.strongForS).toBeGreaterThan(strongForS + 20);
  });

  test('is no surge where no reading comes, and stays one until a reading says otherwise', () => {
    const swings = (timeS: number) =>
      headC(timeS) - (timeS > 500 ? (Math.floor(timeS / 10) % 2) * 1.5 : 0);
    const { until } = course(swings);
    expect(until(500).some(({ surging }) => surging)).toBe(false);
    expect(until(700).at(-1)?.surging).toBe(true);
  });

  test('says now what it said last', () => {
    const random = createRandom('now');
    const tracker = createHeadTracker(defaultRunSettings);
    const head = createHeadCourse(
      defaultRunSettings,
      tracker,
      createLimitScale(defaultRunSettings),
    );
    expect(head.now()).toMatchObject({
      head: null,
      fault: null,
      lastTrustedC: null,
      surging: false,
    });
    for (let timeS = 1; timeS <= 300; timeS += 1) {
      const value = headC(timeS) + 0.03 * random.normal();
      const told = head.second(
        timeS,
        { timeS, value, count: 1, spread: 0 },
        { potC: null, isQuiet: true, isHeatOff: false },
      );
      expect(head.now()).toBe(told);
    }
    expect(head.now().outlook.strongForS).toBeGreaterThan(30);
    head.disarm();
    const told = head.second(301, null, { potC: null, isQuiet: true, isHeatOff: false });
    expect(told.outlook.strongForS).toBeLessThanOrEqual(1);
  });
});
