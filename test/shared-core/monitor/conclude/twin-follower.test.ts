import { expect, test } from 'vitest';
import {
  createTwinFollower,
  type LookAhead,
} from '../../../../shared-core/monitor/conclude/twin-follower.ts';
import { receiverSdMl } from '../../../../shared-core/twin/index.ts';
import { factsOf } from '../words/facts.ts';
import {
  bathedS,
  type Changes,
  headSeen,
  markable,
  potSeen,
  secondAt,
  seenFromStart,
  settledS,
  twinShown,
} from './forecast-seconds.ts';

const { settings } = factsOf();
/** Nothing is learned of a head that has just been upset. */
const upset = { situation: { calmS: 59 } } as const;
const cold = { head: { bulbC: 20 } } as const;

/** What a follower tells of the seconds up to one, and in which second it told it. */
function follow(untilS: number, changes: Changes = () => ({}), ledger = markable(), fromS = 1) {
  const follower = createTwinFollower(settings, ledger.marks, null);
  const told: { readonly inS: number; readonly ahead: LookAhead }[] = [];
  for (let timeS = fromS; timeS <= untilS; timeS += 1) {
    const second = secondAt(timeS, { ...(timeS < bathedS ? cold : {}), ...changes(timeS) });
    if (follower.second(second)) told.push({ inS: timeS, ahead: follower.lookAhead() });
  }
  return { follower, told, last: told.at(-1)?.ahead };
}

const fromAndBoiled = ({ told }: ReturnType<typeof follow>) =>
  told.map(({ ahead }) => [ahead.from.timeS, ahead.boiledS]);

test('a follower looks ahead from each whole minute once vapour has been held for two', () => {
  const run = follow(settledS + 179, () => upset);
  expect(fromAndBoiled(run)).toEqual([
    [settledS, settledS - bathedS],
    [settledS + 60, settledS + 60 - bathedS],
    [settledS + 120, settledS + 120 - bathedS],
  ]);
  expect(run.follower.outlook()).toBe(run.last?.outlook);
});

test('where it learns much it takes seconds, and looks ahead from the minute all the same', () => {
  const { told, follower } = follow(settledS + 59);
  expect(told).toHaveLength(1);
  const [{ inS, ahead }] = told as [(typeof told)[0]];
  expect(inS).toBeGreaterThan(settledS);
  const boiledS = settledS - bathedS;
  expect({ ...ahead, from: ahead.from.timeS }).toEqual({
    from: settledS,
    boiledS,
    outlook: twinShown([headSeen(boiledS)]).expects(boiledS),
    mistakenFromS: null,
  });
  expect(follower.headBlocks()).toBe(1);
});

test('nothing can be looked ahead from before a minute is due, nor twice', () => {
  const { follower } = follow(settledS - 1);
  expect(follower.outlook()).toBeNull();
  expect(() => follower.lookAhead()).toThrow('No minute is due.');
  let timeS = settledS;
  while (timeS < settledS + 50 && !follower.second(secondAt(timeS, upset))) timeS += 1;
  expect(follower.lookAhead().from.timeS).toBe(settledS);
  expect(() => follower.lookAhead()).toThrow('No minute is due.');
  expect(follower.second(secondAt(timeS + 1, upset))).toBe(false);
});

test('neither in cool-down nor while the probe is not heard does it look ahead or learn', () => {
  for (const silence of [{ suspended: true }, { stage: 'cool-down' }] as const) {
    const run = follow(settledS + 119, (timeS) =>
      timeS < settledS + 60 ? silence : { ...upset, situation: { calmS: 0, wetS: 200 } },
    );
    expect(fromAndBoiled(run)).toEqual([[settledS + 60, 200]]);
    expect(run.follower.headBlocks()).toBe(0);
  }
});

test('it boils while vapour bathes the bulb, but for what runs back whole', () => {
  const boiled = (changes: Changes) =>
    follow(settledS + 59, (timeS) => ({ ...upset, ...changes(timeS) })).last?.boiledS;
  const from = (timeS: number) => timeS > 1000 && timeS <= 1030;
  const wetS = settledS - bathedS;
  expect([
    boiled((timeS) => ({ nothingCollected: from(timeS) })),
    // Vapour that has gone is counted in neither.
    boiled((timeS) =>
      from(timeS) ? { nothingCollected: true, situation: { calmS: 0, recededSinceS: 1000 } } : {},
    ),
    // What has boiled off does not come back.
    boiled((timeS) => (timeS > 1000 ? { nothingCollected: true, situation: { wetS: 90 } } : {})),
  ]).toEqual([wetS - 30, wetS, 90]);
});

test('a head is learned from in the fractions only, where it is held, there and calm', () => {
  const blocks = (changes: ReturnType<Changes>) =>
    follow(settledS + 59, (timeS) => (timeS === settledS ? changes : {})).follower.headBlocks();
  expect([
    blocks({ stage: 'first-fraction' }),
    blocks({ stage: 'main-fraction' }),
    blocks({ stage: 'tail' }),
    blocks({ situation: { recededSinceS: 1070 } }),
    blocks({ situation: { heldWetS: 119 } }),
    blocks({ situation: { calmS: 59 } }),
    blocks({ situation: { calmS: 60 } }),
  ]).toEqual([1, 1, 0, 0, 0, 0, 1]);
});

test('a minute counts once the outlook rests on it, not before', () => {
  const { told, follower } = follow(settledS);
  expect([told.length, follower.headBlocks()]).toEqual([0, 0]);
});

test('a probe in the pot is heard in the minutes of the head', () => {
  const boiledS = settledS - bathedS;
  const { last } = follow(settledS + 59, () => ({ potC: 93 }));
  expect(last?.outlook).toEqual(
    twinShown([headSeen(boiledS), potSeen(boiledS, 93)]).expects(boiledS),
  );
});

test('a balance is heard every four minutes, from a millilitre on', () => {
  const weighed = (timeS: number) => (timeS < 1020 ? 0.99 : 1 + 0.02 * (timeS - 1020));
  const seenS = (untilS: number) =>
    follow(untilS, (timeS) => ({ ...upset, receiverMl: weighed(timeS) })).follower.receiverSeenS();
  expect([seenS(1019), seenS(1020), seenS(1259), seenS(1260)]).toEqual([
    Number.NEGATIVE_INFINITY,
    1020,
    1020,
    1260,
  ]);
  const { last, follower } = follow(settledS + 59, (timeS) => ({
    ...upset,
    receiverMl: weighed(timeS),
  }));
  const volume = { kind: 'volume', boiledS: 1020 - bathedS, value: 1, sd: receiverSdMl } as const;
  expect(last?.outlook).toEqual(twinShown([volume]).expects(settledS - bathedS));
  expect(follower.headBlocks()).toBe(0);
});

test('what a person books is known as well as what flows meanwhile: by the outlook, where there is one', () => {
  const ledger = markable();
  const { last } = follow(
    settledS + 119,
    (timeS) => {
      if (timeS === settledS + 30) ledger.mark(timeS, { type: 'volume-read', volumeMl: 6 });
      return upset;
    },
    ledger,
  );
  const { flowMlPerS } = twinShown([]).expects(settledS - bathedS);
  const sd = Math.hypot(receiverSdMl, 20 * flowMlPerS);
  const boiledS = settledS + 30 - bathedS;
  expect(last?.outlook).toEqual(
    twinShown([{ kind: 'booked', boiledS, value: 6, sd }]).expects(settledS + 60 - bathedS),
  );
});

test('how long heating took is by the marks, else by a first reading that was cold, else unknown', () => {
  const expected = (heatUp: Parameters<typeof twinShown>[1]) =>
    twinShown([], heatUp).expects(settledS - bathedS);
  const marked = (type: 'heat-on' | 'heat-eased') => {
    const ledger = markable();
    ledger.mark(100, { type: 'heat-on' });
    ledger.mark(500, { type });
    // What is done after vapour came is no part of the heat-up.
    ledger.mark(bathedS + 1, { type: 'heat-eased' });
    return follow(settledS + 59, () => upset, ledger).last?.outlook;
  };
  const warm = () => ({ ...upset, head: { bulbC: 45 } });
  expect(marked('heat-on')).toEqual(expected({ tookS: bathedS - 100, eased: false }));
  expect(marked('heat-eased')).toEqual(expected({ tookS: bathedS - 100, eased: true }));
  expect(follow(settledS + 59, () => upset).last?.outlook).toEqual(expected(seenFromStart));
  expect(follow(settledS + 59, () => upset, markable(), 300).last?.outlook).toEqual(
    expected({ tookS: bathedS - 300, eased: null }),
  );
  expect(follow(settledS + 59, warm).last?.outlook).toEqual(expected({ tookS: null, eased: null }));
});

test('the mean that all distillate is to keep is handed to the twin', () => {
  const follower = createTwinFollower(settings, markable().marks, 0.7);
  let isThrough = false;
  for (let timeS = 1; timeS < settledS + 60 && !isThrough; timeS += 1) {
    isThrough = follower.second(secondAt(timeS, { ...upset, ...(timeS < bathedS ? cold : {}) }));
  }
  const { scale } = factsOf();
  const boiledS = settledS - bathedS;
  expect(follower.lookAhead().outlook).toEqual(
    twinShown([]).outlook(boiledS, scale.limitC - scale.azeotropeC, 0.7),
  );
});
