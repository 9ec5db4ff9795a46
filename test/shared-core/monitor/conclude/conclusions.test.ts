import { expect, test } from 'vitest';
import { createAlarmBank } from '../../../../shared-core/monitor/alarm-bank.ts';
import { createConclusions } from '../../../../shared-core/monitor/conclude/conclusions.ts';
import { createForecaster } from '../../../../shared-core/monitor/conclude/forecaster.ts';
import { createChannelSenses } from '../../../../shared-core/monitor/sense/channel-senses.ts';
import { createHeadTracker } from '../../../../shared-core/monitor/sense/head-tracker.ts';
import type { HeadNow } from '../../../../shared-core/monitor/situation/head-course.ts';
import { createLimitScale } from '../../../../shared-core/monitor/situation/limit-scale.ts';
import {
  statedPressureSdK,
  statedScaleSdK,
} from '../../../../shared-core/monitor/situation/scale-belief.ts';
import type { RunSettings } from '../../../../shared-core/run/index.ts';
import { factsOf } from '../words/facts.ts';
import { bathedS, markable, secondAt } from './forecast-seconds.ts';

type Parts = NonNullable<Parameters<typeof factsOf>[1]>;
type Now = Omit<Partial<HeadNow>, 'head' | 'situation' | 'outlook'> &
  Omit<Parts, 'head'> & { readonly head?: Parts['head'] | null };

const { settings: usual, scale } = factsOf();
const dry = { bathedS: null, heldS: null, levelC: null, lowestLevelC: null, lowestLaterC: null };
const weak: Now = { outlook: { passedOfLate: 0.97 } };
const gone: Now = {
  head: { vapourC: 78, bulbC: 30 },
  situation: { recededSinceS: 1300, leftAloneS: 500 },
};

function nowOf({ head, situation, outlook, ...rest }: Now = {}): HeadNow {
  const facts = factsOf(
    {},
    { head: { ...head }, situation: { ...situation }, outlook: { ...outlook } },
  );
  return {
    head: head === null ? null : facts.head,
    situation: facts.situation,
    outlook: facts.outlook,
    belief: facts.bias,
    fault: null,
    lastTrustedC: 78.1,
    surging: false,
    ...rest,
  };
}

/** A bench with what is concluded on it. */
function bench(settings: RunSettings = usual, forecasts = false) {
  const { marks, mark } = markable();
  const limitScale = createLimitScale(settings);
  const channels = createChannelSenses();
  const tracker = createHeadTracker(settings);
  const conclusions = createConclusions({ settings, marks, tracker, limitScale, forecasts });
  const see = (timeS: number, now: Now = {}) => conclusions.second(timeS, nowOf(now), channels);
  return { conclusions, channels, limitScale, mark, see };
}

/** A bench whose run has come so far, at 1000 s. */
function benchIn(stage: 'main-fraction' | 'tail' | 'cool-down', settings = usual) {
  const made = bench(settings);
  for (const timeS of [997, 998]) made.see(timeS);
  if (stage !== 'main-fraction') made.see(999, weak);
  if (stage === 'cool-down') made.see(1000, gone);
  expect(made.see(1000, stage === 'tail' ? weak : stage === 'cool-down' ? gone : {}).stage).toBe(
    stage,
  );
  return made;
}

test('a fault is told since the second in which it came, and so is its end', () => {
  const { see } = bench();
  const sinceS = (timeS: number, fault: HeadNow['fault']) => see(timeS, { fault }).faultSinceS;
  expect([
    sinceS(1, null),
    sinceS(2, 'silent'),
    sinceS(3, 'silent'),
    sinceS(4, 'lost'),
    sinceS(5, null),
    sinceS(6, null),
  ]).toEqual([0, 2, 2, 4, 5, 5]);
});

test('dropouts of the probe are counted', () => {
  const { see } = bench();
  expect(
    ([null, 'silent', null, 'lost'] as const).map(
      (fault, index) => see(index + 1, { fault }).dropouts.count,
    ),
  ).toEqual([0, 1, 1, 2]);
});

test('what is seen of the head and of the channels is told as it is', () => {
  const { see, channels, limitScale } = bench();
  channels.see({ channel: 'pot', value: 92, unit: '°C', atS: 1 });
  channels.see({ channel: 'condenser-outlet', value: 18, unit: '°C', atS: 1 });
  const now = nowOf();
  expect(see(1)).toMatchObject({
    timeS: 1,
    settings: limitScale.settings(),
    scale: limitScale.scale(),
    limitAbv: usual.leastStrengthAbv,
    head: now.head,
    situation: now.situation,
    outlook: now.outlook,
    bias: now.belief,
    lastTrustedC: 78.1,
    potC: 92,
    condenserC: 18,
    stage: 'first-fraction',
    stageSinceS: 1,
    probability: now.head?.wet,
    overLimitPatienceS: usual.reactionTimeS,
    forecast: null,
  });
});

test('of all that is out of the ordinary the one that matters most is told', () => {
  const below = { lowestLevelC: scale.azeotropeC - 3, lowestLaterC: scale.azeotropeC - 3 };
  const recededSinceS = 990;
  const condition = (now: Now, made = benchIn('main-fraction')) => made.see(1001, now).condition;
  const idle = () => {
    const made = benchIn('main-fraction');
    made.mark(700, { type: 'volume-read', volumeMl: 3 });
    made.mark(900, { type: 'volume-read', volumeMl: 3 });
    return made;
  };
  expect([
    condition({}),
    condition({ fault: 'silent', surging: true }, idle()),
    condition({ situation: below, surging: true }, idle()),
    condition({ fault: 'hotter-than-pot' }),
    condition({ surging: true, situation: { recededSinceS } }, idle()),
    condition({ situation: { recededSinceS } }, idle()),
    condition({}, idle()),
  ]).toEqual([
    null,
    'probe-suspect',
    'probe-suspect',
    null,
    'surging',
    'vapour-receded',
    'total-reflux',
  ]);
});

test('before vapour has come only the probe can be out of the ordinary, and once the run is over only by a fault', () => {
  const below = { lowestLevelC: scale.azeotropeC - 3, lowestLaterC: scale.azeotropeC - 3 };
  const over = (now: Now) =>
    benchIn('cool-down').see(1001, {
      ...gone,
      ...now,
      situation: { ...gone.situation, ...now.situation },
    });
  const early = (now: Now) => bench().see(1, { ...now, situation: { ...dry, ...now.situation } });
  expect([
    early({ surging: true }).condition,
    early({ situation: below }).condition,
    early({ fault: 'frozen' }).condition,
    over({ surging: true }).condition,
    over({ situation: below }).condition,
    over({ situation: below }).doubt,
    over({ fault: 'frozen' }).condition,
  ]).toEqual([
    null,
    'probe-suspect',
    'probe-suspect',
    null,
    null,
    'below-boiling',
    'probe-suspect',
  ]);
});

test('somebody is asked after so long without a person at the still, while it is heated', () => {
  const settings: RunSettings = { ...usual, attentionCheckS: 900 };
  const dueS = (made: ReturnType<typeof bench>, now: Now = {}) => made.see(1001, now).attentionDueS;
  const seen = benchIn('main-fraction', settings);
  seen.conclusions.seePerson(600);
  const off = benchIn('main-fraction', settings);
  off.mark(1000, { type: 'heat-off' });
  expect([
    dueS(benchIn('main-fraction', settings)),
    dueS(seen),
    dueS(benchIn('cool-down', settings), gone),
    dueS(off),
    dueS(benchIn('main-fraction')),
  ]).toEqual([900, 1500, null, null, null]);
});

test('a mark changes what it says of the heat at once, and nothing else', () => {
  const made = benchIn('main-fraction', { ...usual, attentionCheckS: 900 });
  const facts = made.see(1001);
  expect([facts.heat, facts.heatChangedS, facts.attentionDueS]).toEqual(['unknown', null, 900]);
  made.mark(1001.4, { type: 'heat-off' });
  expect(made.conclusions.withMarks(facts, 1001.4)).toEqual({
    ...facts,
    timeS: 1001.4,
    heat: 'off',
    heatChangedS: 1001.4,
    attentionDueS: null,
  });
});

test('it is quiet where no hand was at the heat for a minute and no tail makes the head restless', () => {
  const touched = benchIn('main-fraction');
  touched.mark(1000, { type: 'heat-eased' });
  expect([
    touched.conclusions.isQuiet(1060),
    touched.conclusions.isQuiet(1061),
    benchIn('main-fraction').conclusions.isQuiet(1001),
    benchIn('tail').conclusions.isQuiet(1001),
    benchIn('cool-down').conclusions.isQuiet(1001),
  ]).toEqual([false, true, true, false, false]);
});

test('who was called, and whose vapour has gone in the tail, wants the tail if the heat comes back', () => {
  const recede: Now = { ...weak, situation: { recededSinceS: 1000 } };
  const isAway = (
    made: ReturnType<typeof bench>,
    { isCalled = true, now = recede }: { isCalled?: boolean; now?: Now } = {},
  ) => {
    const bank = createAlarmBank();
    for (let timeS = 0; timeS < 60; timeS += 1) {
      const because = () => ({ because: '', wouldChangeIf: '' });
      bank.condition('plateau-departure', timeS, isCalled, because);
    }
    made.conclusions.noteCalls(bank);
    made.see(1001, now);
    return made.conclusions.isCalledAndAway();
  };
  const off = benchIn('tail');
  off.mark(1000, { type: 'heat-off' });
  expect([
    isAway(benchIn('tail')),
    isAway(off, { now: weak }),
    isAway(benchIn('tail'), { now: weak }),
    isAway(benchIn('tail'), { isCalled: false }),
    isAway(benchIn('main-fraction')),
    bench().conclusions.isCalledAndAway(),
  ]).toEqual([true, true, false, false, false, false]);
});

test('a first fraction that nobody books counts from when the head first held, at a drop or so a second', () => {
  const byVolume: RunSettings = { ...usual, firstFraction: { kind: 'volume', volumeMl: 5 } };
  const done = (heldWetS: number, heldS: number | null = 960) =>
    bench(byVolume).see(1, { situation: { heldS, heldWetS } }).firstFraction;
  const rest = { wanted: 5, unit: 'mL', estimated: true } as const;
  expect([done(299), done(300), done(0), done(300, null)]).toEqual([
    { ...rest, over: false, done: expect.closeTo(299 / 60, 9) },
    { ...rest, over: true, done: expect.closeTo(5, 9) },
    // It has held for this very second.
    { ...rest, over: false, done: expect.closeTo(1 / 60, 9) },
    { ...rest, over: false, done: 0 },
  ]);
});

test('what is booked or weighed of the first fraction counts, and ends it', () => {
  const made = bench({ ...usual, firstFraction: { kind: 'volume', volumeMl: 5 } });
  const isShort: Now = { situation: { heldWetS: 30 } };
  expect(made.see(1, isShort)).toMatchObject({ stage: 'first-fraction' });
  expect(made.see(2, isShort)).toMatchObject({ stage: 'first-fraction' });
  made.mark(2, { type: 'volume-read', volumeMl: 5 });
  expect(made.see(3, isShort)).toMatchObject({
    stage: 'main-fraction',
    firstFraction: { over: true, done: 5, wanted: 5, unit: 'mL', estimated: false },
  });
  const byDrops = bench({ ...usual, firstFraction: { kind: 'drops', count: 40 } });
  byDrops.mark(0, { type: 'drops-counted', count: 41, overS: 60 });
  expect(byDrops.see(1, isShort).firstFraction).toMatchObject({ done: 41, estimated: false });
});

/** A bench after the seconds up to one of a quiet run whose forecasts are made. */
function forecasting(
  untilS: number,
  settings: RunSettings,
  changes: (timeS: number) => Now = () => ({}),
  forecasts = true,
  prepare: (made: ReturnType<typeof bench>, timeS: number) => void = () => undefined,
) {
  const made = bench(settings, forecasts);
  const step = (timeS: number) => {
    prepare(made, timeS);
    const { head, situation } = secondAt(timeS, timeS < bathedS ? { head: { bulbC: 20 } } : {});
    return made.see(timeS, { head, situation, ...changes(timeS) });
  };
  let facts = step(1);
  for (let timeS = 2; timeS <= untilS; timeS += 1) facts = step(timeS);
  return { ...made, facts };
}

test('a forecast is made where one is wanted, from the seconds that have a head which can be trusted', () => {
  const madeS = (...run: [((timeS: number) => Now)?, boolean?]) =>
    forecasting(1199, usual, ...run).facts.forecast?.madeS ?? null;
  const first = madeS();
  expect([first, madeS(undefined, false)]).toEqual([1140, null]);
  expect([madeS(() => ({ fault: 'silent' })), madeS(() => ({ head: null }))]).toEqual([null, null]);
  // What another channel says against the head is no ground to leave it.
  expect(madeS(() => ({ fault: 'hotter-than-pot' }))).toBe(first);
});

/** What a forecaster tells that is shown the same quiet run by hand, and the flow it believes in. */
function byHand(untilS: number, changes: (timeS: number) => Parameters<typeof secondAt>[1]) {
  const forecaster = createForecaster(usual, markable().marks);
  const stated = {
    statedSdK: statedScaleSdK(usual, scale),
    pressureSdK: statedPressureSdK(usual, scale),
  };
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    const start = timeS < bathedS ? { head: { bulbC: 20 } } : {};
    forecaster.second(secondAt(timeS, { ...start, ...stated, ...changes(timeS) }));
  }
  return { view: forecaster.view(), flowMlPerS: forecaster.flowMlPerS() ?? Number.NaN };
}

test('the forecaster is told what the pot, the balance and the marks say', () => {
  const settings: RunSettings = { ...usual, firstFraction: { kind: 'minutes', minutes: 60 } };
  const stage = 'first-fraction';
  const forecast = (prepare: (made: ReturnType<typeof bench>, timeS: number) => void) =>
    forecasting(1199, settings, undefined, true, prepare).facts.forecast;
  const receiver = (timeS: number) => 80 + 0.01 * Math.max(0, timeS - 900);
  expect([
    forecast(({ channels }, timeS) => {
      channels.see({ channel: 'pot', value: 99, unit: '°C', atS: timeS });
    }),
    forecast(({ channels }, timeS) => {
      const value = receiver(timeS);
      channels.see({ channel: 'receiver', value, unit: 'mL', atS: timeS });
    }),
    // Nothing was in the receiver, twice: all runs back.
    forecast(({ mark }, timeS) => {
      if (timeS === 100 || timeS === 400) mark(timeS, { type: 'volume-read', volumeMl: 0 });
    }),
  ]).toMatchObject(
    [
      { potC: 99 },
      (timeS: number) => ({ receiverMl: receiver(timeS) - 80 }),
      (timeS: number) =>
        timeS < 960 ? {} : { nothingCollected: true, nothingCollectedByMarks: true },
    ].map((around) => {
      const told = byHand(1199, (timeS) => ({
        ...(timeS < bathedS ? {} : { stage }),
        ...(typeof around === 'function' ? around(timeS) : around),
      })).view;
      const { mainFractionEndS, collectedMl, potVolumeMl } = told ?? {};
      return { mainFractionEndS, collectedMl, potVolumeMl };
    }),
  );
});

test('a first fraction that nobody books flows as the forecast believes', () => {
  const settings: RunSettings = { ...usual, firstFraction: { kind: 'volume', volumeMl: 30 } };
  const { flowMlPerS } = byHand(1199, (timeS) =>
    timeS < bathedS ? {} : { stage: 'first-fraction' },
  );
  expect(forecasting(1199, settings).facts.firstFraction).toEqual({
    over: false,
    done: (1199 - 960) * flowMlPerS,
    wanted: 30,
    unit: 'mL',
    estimated: true,
  });
});

test('where purity is weighed against recovery the limit follows the forecast until the call is due or the tail is there', () => {
  const settings: RunSettings = {
    ...usual,
    stop: { kind: 'purity-against-recovery', leastMeanStrengthAbv: 70 },
  };
  /** In the fourth minute of the head it stands where the twin must learn for some seconds, until it can look ahead. */
  const limitAbv = (changes: (timeS: number) => Now = () => ({}), by = settings) =>
    forecasting(1319, by, (timeS) => ({
      ...(timeS === 1260 && { head: { vapourC: 80 } }),
      ...changes(timeS),
    })).limitScale.limitAbv();
  expect(limitAbv()).toBeLessThan(70);
  expect([
    limitAbv(() => ({ outlook: { heatOffDue: true } })),
    limitAbv((timeS) => (timeS > 1260 ? weak : {})),
    limitAbv(undefined, usual),
  ]).toEqual([80, 80, 80]);
});

test('heat that is marked off has the run end sooner once the vapour is gone', () => {
  const stageWith = (isMarked: boolean) => {
    const made = benchIn('main-fraction');
    if (isMarked) made.mark(1000, { type: 'heat-off' });
    return made.see(1300, { ...gone, situation: { ...gone.situation, leftAloneS: 300 } }).stage;
  };
  expect([stageWith(true), stageWith(false)]).toEqual(['cool-down', 'main-fraction']);
});
