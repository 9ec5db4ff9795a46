import { expect, test } from 'vitest';
import {
  moleFractionFromStrength,
  strengthFromMoleFraction,
} from '../../../../shared-core/alcoholometry/index.ts';
import { createForecastCheck } from '../../../../shared-core/monitor/conclude/forecast-check.ts';
import {
  createForecaster,
  type Forecaster,
} from '../../../../shared-core/monitor/conclude/forecaster.ts';
import { createTwinFollower } from '../../../../shared-core/monitor/conclude/twin-follower.ts';
import type { RunSettings } from '../../../../shared-core/run/index.ts';
import type { Stage } from '../../../../shared-core/stages/index.ts';
import type { Observation } from '../../../../shared-core/twin/index.ts';
import { mapEstimate } from '../../../../shared-core/uncertainty/index.ts';
import { factsOf } from '../words/facts.ts';
import {
  bathedS,
  type Changes,
  headSeen,
  markable,
  potSeen,
  secondAt,
  settledS,
  twinShown,
} from './forecast-seconds.ts';

const { settings } = factsOf();
const isOpen = (stage: Stage) => stage === 'first-fraction' || stage === 'main-fraction';
/** Nothing is learned of a head that has just been upset. */
const upset = { situation: { calmS: 0 } } as const;
const cold = { head: { bulbC: 20 } } as const;
/** Boiling until the first forecast. */
const boiledS = settledS - bathedS;

/** A forecaster after the seconds up to one. */
function forecast(
  untilS: number,
  changes: Changes = () => ({}),
  { ledger = markable(), by = settings as RunSettings } = {},
): Forecaster {
  const forecaster = createForecaster(by, ledger.marks);
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    const start = timeS < bathedS ? cold : {};
    forecaster.second(secondAt(timeS, { ...start, ...changes(timeS) }));
  }
  return forecaster;
}

/** The end after the seconds up to one, where forecasts of some stages are held against what became of them. */
function heldToAccount(untilS: number, changes: Changes, isKept: (stage: Stage) => boolean) {
  const follower = createTwinFollower(settings, markable().marks, null);
  const check = createForecastCheck();
  let end: unknown = null;
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    const second = secondAt(timeS, { ...(timeS < bathedS ? cold : {}), ...changes(timeS) });
    if (!follower.second(second)) continue;
    const { from, boiledS: afterS, outlook } = follower.lookAhead();
    if (isKept(from.stage)) check.see(from, afterS, outlook);
    const left = check.widened(outlook.limitInS);
    end = left && mapEstimate(left, (seconds) => from.timeS + seconds);
  }
  return { mainFractionEndS: end, isDoubted: check.doubt() !== null };
}

/** What twins that were shown this expect at the first forecast, as a forecast tells it. */
function told(observations: readonly Observation[]) {
  const outlook = twinShown(observations).expects(boiledS);
  const check = createForecastCheck();
  check.see(secondAt(settledS), boiledS, outlook);
  const left = check.widened(outlook.limitInS);
  return {
    madeS: settledS,
    mainFractionEndS: left && mapEstimate(left, (seconds) => settledS + seconds),
    collectedMl: outlook.collectedMl,
    potVolumeMl: outlook.potMl,
  };
}

test('nothing is forecast before vapour has been held; then it is what the twin expects, from the minute it was made', () => {
  const before = forecast(settledS - 1);
  expect([before.view(), before.flowMlPerS(), before.stopStrengthAbv()]).toEqual([
    null,
    null,
    null,
  ]);
  const after = forecast(settledS + 59);
  const shown = [headSeen(boiledS)];
  expect(after.view()).toMatchObject(told(shown));
  expect(after.flowMlPerS()).toBe(twinShown(shown).expects(boiledS).flowMlPerS);
});

test('an instrument that speaks only after vapour came is not heard: both twins hear the head alone', () => {
  const late = forecast(settledS + 59, (timeS) =>
    timeS < bathedS
      ? {}
      : { potC: 99, receiverMl: 40, nothingCollected: true, nothingCollectedByMarks: false },
  );
  expect(late.view()).toEqual(forecast(settledS + 59).view());
});

test('an instrument that spoke before vapour came is heard, and the pot is the drier of the two twins’', () => {
  const byHead = told([headSeen(boiledS)]);
  const cool = told([headSeen(boiledS), potSeen(boiledS, 84)]);
  const hot = told([headSeen(boiledS), potSeen(boiledS, 99)]);
  // A pot that boils hot holds less spirit and is drier; one that boils cool is fuller.
  expect(cool.potVolumeMl.low).toBeGreaterThan(byHead.potVolumeMl.low);
  expect(hot.potVolumeMl.low).toBeLessThan(byHead.potVolumeMl.low);
  const heard = (potC: number) => forecast(settledS + 59, () => ({ potC }));
  expect(heard(84).view()).toMatchObject({ ...cool, potVolumeMl: byHead.potVolumeMl });
  expect(heard(99).view()).toMatchObject(hot);
  expect(heard(99).flowMlPerS()).toBe(
    twinShown([headSeen(boiledS), potSeen(boiledS, 99)]).expects(boiledS).flowMlPerS,
  );
});

test('a balance that was heard once goes on being heard, silent or not; the pot is that of the head too', () => {
  // A receiver that has not a millilitre tells only that nothing comes over.
  const early = (timeS: number) => ({
    ...upset,
    receiverMl: timeS < 500 ? 0 : null,
    nothingCollected: timeS > 1000 && timeS <= 1030,
  });
  const { expects } = twinShown([]);
  expect(forecast(settledS + 59, early).view()).toMatchObject({
    collectedMl: expects(boiledS - 30).collectedMl,
    potVolumeMl: expects(boiledS).potMl,
  });
});

test('what people booked of an idle receiver is heard by both twins, what a balance says by one', () => {
  const idle = (of: 'nothingCollected' | 'nothingCollectedByMarks') =>
    forecast(settledS + 59, (timeS) => ({ ...upset, [of]: timeS > 1000 && timeS <= 1030 })).view();
  const { expects } = twinShown([]);
  expect([idle('nothingCollectedByMarks'), idle('nothingCollected')]).toMatchObject(
    [boiledS - 30, boiledS].map((seconds) => ({
      collectedMl: expects(seconds).collectedMl,
      potVolumeMl: expects(seconds).potMl,
    })),
  );
});

test('a reading of the receiver is asked for where none was booked or weighed in the last five minutes', () => {
  const ledger = markable();
  const booked = (timeS: number) => {
    if (timeS === 1210) ledger.mark(timeS, { type: 'volume-read', volumeMl: 5 });
    return {};
  };
  const weighed = (timeS: number) => ({ receiverMl: timeS < 1200 ? 0 : 5 });
  const asks = (untilS: number, ...run: [Changes?, Parameters<typeof forecast>[2]?]) =>
    forecast(untilS, ...run).view()?.wouldHelp ?? null;
  expect(asks(1439)).toMatch('Read the volume');
  expect([asks(1439, booked, { ledger }), asks(1439, weighed)]).toEqual([null, null]);
});

test('forecasts of the fractions are held against what became of them, those of other stages are not', () => {
  // A head that holds far above where it began to makes every forecast too early.
  const inFractions = () => ({ head: { vapourC: 82 } });
  const fromTail = (timeS: number) => ({
    ...inFractions(),
    stage: timeS >= bathedS && timeS < 1260 ? 'tail' : ('first-fraction' as Stage),
  });
  for (const run of [inFractions, fromTail]) {
    const expected = heldToAccount(1619, run, isOpen);
    const { mainFractionEndS, doubt } = forecast(1619, run).view() ?? {};
    expect({ mainFractionEndS, isDoubted: doubt !== null }).toEqual(expected);
  }
  expect(heldToAccount(1619, inFractions, isOpen).isDoubted).toBe(true);
  expect(heldToAccount(1619, fromTail, isOpen)).not.toEqual(
    heldToAccount(1619, fromTail, () => true),
  );
});

test('where purity is weighed against recovery the stop is the twin’s by the head, once four minutes have told of it', () => {
  const by: RunSettings = {
    ...settings,
    stop: { kind: 'purity-against-recovery', leastMeanStrengthAbv: 70 },
  };
  const follower = createTwinFollower(by, markable().marks, moleFractionFromStrength(70));
  for (let timeS = 1; timeS < 1320; timeS += 1) {
    const second = secondAt(timeS, timeS < bathedS ? cold : {});
    if (follower.second(second)) follower.lookAhead();
  }
  const stop = follower.outlook()?.stopMoleFraction ?? null;
  expect(stop).toBeGreaterThan(0);
  expect([
    forecast(1259, undefined, { by }).stopStrengthAbv(),
    forecast(1319, undefined, { by }).stopStrengthAbv(),
    // No instrument moves it.
    forecast(1319, () => ({ potC: 99 }), { by }).stopStrengthAbv(),
    forecast(1319).stopStrengthAbv(),
  ]).toEqual([
    null,
    strengthFromMoleFraction(stop as number),
    strengthFromMoleFraction(stop as number),
    null,
  ]);
});

test('no instrument makes the stop wait: in every second it is that of the head alone, however much a probe gives to learn', () => {
  const by: RunSettings = {
    ...settings,
    stop: { kind: 'purity-against-recovery', leastMeanStrengthAbv: 70 },
  };
  const course = (changes: Changes) => {
    const forecaster = createForecaster(by, markable().marks);
    return Array.from({ length: 1500 }, (_, index) => {
      const start = index + 1 < bathedS ? cold : {};
      forecaster.second(secondAt(index + 1, { ...start, ...changes(index + 1) }));
      return { stop: forecaster.stopStrengthAbv(), madeS: forecaster.view()?.madeS ?? null };
    });
  };
  const byHead = course(() => ({}));
  // From boiling as it should to the end of what a probe can show: nothing the twin believes in explains both.
  const jumping = course((timeS) => ({ potC: timeS < 1230 ? 92 : 150 }));
  expect(jumping.map(({ stop }) => stop)).toEqual(byHead.map(({ stop }) => stop));
  // What is told waits for both.
  expect(jumping.map(({ madeS }) => madeS)).not.toEqual(byHead.map(({ madeS }) => madeS));
});
