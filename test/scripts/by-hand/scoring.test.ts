import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import type { ByHandRun } from '../../../scripts/by-hand/by-hand-run.ts';
import { byHandTruth } from '../../../scripts/by-hand/by-hand-truth.ts';
import { judgeCall } from '../../../scripts/by-hand/judge-call.ts';
import { knownVapourCall } from '../../../scripts/by-hand/known-vapour.ts';
import { loadRuns, saveRuns } from '../../../scripts/by-hand/saved-runs.ts';
import { scoreByHand } from '../../../scripts/by-hand/score-by-hand.ts';
import { thresholdCall } from '../../../scripts/by-hand/threshold-rules.ts';
import type { Watched } from '../../../scripts/by-hand/watch-run.ts';

const endS = 4000;
const heatOffS = 3600;
const seconds = Array.from({ length: endS + 1 }, (_, timeS) => timeS);

/**
 * Vapour arrives at 1000 s and is gone at 3700 s; 90 % vol up to 3000 s, 70 after; 0.01 mL/s. From 1500 s on it is away for
 * 100 s; `weakSpell` is one more of 70 % vol.
 */
function madeRun(weakSpell: readonly [number, number] = [0, 0]): ByHandRun {
  const isThere = (timeS: number) =>
    timeS >= 1000 && timeS < 3700 && (timeS < 1500 || timeS >= 1600);
  const isStrong = (timeS: number) =>
    timeS < 3000 && (timeS < weakSpell[0] || timeS >= weakSpell[1]);
  const total = (counts: (timeS: number) => boolean): number[] => {
    let ml = 0;
    return seconds.map((timeS) => {
      if (counts(timeS)) ml += 0.01;
      return ml;
    });
  };
  const vapourC = seconds.map((timeS) => (isStrong(timeS) ? 78.5 : 85));
  const channel = { unit: '°C', timeS: seconds, values: seconds.map(() => 20), bad: [] } as const;
  return {
    name: 'made',
    tags: ['steady', 'ferment', 'pressure right', 'bulb right'],
    settings: { ...defaultRunSettings, leastStrengthAbv: 80 },
    channels: [],
    words: '',
    report: {
      head: { ...channel, values: vapourC.map((value, timeS) => (isThere(timeS) ? value : 30)) },
      side: {
        pot: channel,
        'condenser-outlet': channel,
        room: channel,
        receiver: channel,
        'air-pressure': channel,
      },
      others: [],
    },
    course: {
      bathed: seconds.map((timeS) => (isThere(timeS) ? 1 : 0)),
      bulbC: vapourC,
      vapourC,
      abv: seconds.map((timeS) => (isStrong(timeS) ? 90 : 70)),
      distilledMl: total(isThere),
      aboveLimitMl: total((timeS) => isThere(timeS) && isStrong(timeS)),
      potC: seconds,
      potMl: seconds.map((timeS) => 350 - 0.01 * timeS),
      flow: seconds.map((timeS) => (isThere(timeS) ? 1 : 0)),
      heated: seconds.map((timeS) => (timeS < heatOffS ? 1 : 0)),
      acts: [],
      heatOffS,
      chargedMl: 350,
      chargedEthanolMl: 30,
      azeotropeC: 78.2,
      ethanolGainShare: 0,
    },
  };
}

function watchedWith(change: Partial<Watched['verdicts']>, conditions: Watched['conditions'] = []) {
  const nothing = {
    stages: [],
    alarms: [],
    forecasts: [],
    estimates: [],
    events: [],
    problems: [],
  };
  const verdict = { mainFraction: true, because: '' };
  return { verdicts: { ...nothing, verdict, ...change }, conditions };
}

function alarmAt(alarm: 'plateau-departure' | 'surging' | 'near-dryness', raisedS: number) {
  const rest = { clearedS: null, acknowledgedS: null, because: '', priority: 'high' as const };
  return { alarm, raisedS, ...rest };
}

describe('the truth of a run heated by hand', () => {
  test('begins the main fraction two minutes of vapour after the head holds and ends it where the vapour stays weak', () => {
    const { stages, ...truth } = byHandTruth(madeRun());
    expect({ ...truth, flat: null }).toEqual({
      arrivalS: 1000,
      main: 'yes',
      mainFromS: 1120,
      limitS: 3000,
      flat: null,
    });
    expect([500, 1050, 1550, 2999, 3000, 3650, 3700].map((timeS) => stages[timeS])).toEqual([
      'warm-up',
      'first-fraction',
      'main-fraction',
      'main-fraction',
      'tail',
      'tail',
      'cool-down',
    ]);
  });

  test('takes no weak spell in the middle for the limit, and tells where nothing ends for ten minutes', () => {
    const { limitS, flat } = byHandTruth(madeRun([2000, 2200]));
    expect(limitS).toBe(3000);
    expect([1390, 1450, 2100, 2300, 2500].map((timeS) => flat[timeS])).toEqual([
      true,
      false,
      false,
      true,
      false,
    ]);
  });

  test('knows no main fraction where hardly any strong vapour came', () => {
    expect(byHandTruth(madeRun([1150, 3000])).main).toBe('no');
    expect(byHandTruth(madeRun([1400, 3000])).main).toBe('marginal');
  });
});

describe('the judgement of a heat-off call', () => {
  test('is good near the limit, false before 85 % of the volume, late past a minute and 2 % vol, missed without', () => {
    const run = madeRun();
    const truth = byHandTruth(run);
    const calls = [2000, 2990, 3050, 3061, null, heatOffS + 10];
    expect(calls.map((calledS) => judgeCall(run, truth, calledS))).toEqual([
      'false',
      'good',
      'good',
      'late',
      'missed',
      'missed',
    ]);
  });

  test('tells an early call in a truly weak spell from a false one, and judges none without a main fraction', () => {
    const spell = madeRun([2000, 2200]);
    expect(judgeCall(spell, byHandTruth(spell), 2010)).toBe('false');
    expect(judgeCall(spell, byHandTruth(spell), 2020)).toBe('spell');
    const none = madeRun([1150, 3000]);
    expect(judgeCall(none, byHandTruth(none), 1500)).toBe('none');
  });

  test('a threshold calls when it was exceeded for 20 s', () => {
    const rule = { name: '', thresholdC: () => 80 };
    expect(thresholdCall(madeRun(), rule)).toBe(3020);
  });

  test('who knows the vapour itself calls when it has been weak for so long, vapour away not counted', () => {
    const waits = (weakForS: number) => ({ name: '', weakForS });
    expect(knownVapourCall(madeRun(), 1100, waits(40))).toBe(3039);
    expect(knownVapourCall(madeRun([1490, 1620]), 1100, waits(20))).toBe(1609);
    expect(knownVapourCall(madeRun([1490, 1620]), 1100, waits(40))).toBe(3039);
    expect(knownVapourCall(madeRun(), null, waits(40))).toBeNull();
  });
});

describe('the score of a run heated by hand', () => {
  test('counts covered intervals and told minutes only while vapour is there', () => {
    const run = madeRun();
    const told = (timeS: number, low: number, high: number) => ({
      timeS,
      headVapourAbv: { value: low, low, high },
    });
    const estimates = [
      told(500, 0, 100),
      told(1200, 88, 92),
      told(1260, 91, 92),
      { timeS: 1320, headVapourAbv: null },
    ];
    const score = scoreByHand(run, byHandTruth(run), watchedWith({ estimates }));
    expect([score.told, score.covered]).toEqual([
      { of: 3, count: 2 },
      { of: 2, count: 1 },
    ]);
  });

  test('finds wrong recessions, repeated stages and events, endings on the flat, cool-down in distilling', () => {
    const run = madeRun();
    const span = (stage: 'main-fraction' | 'tail' | 'cool-down', fromS: number) => ({
      stage,
      fromS,
      toS: null,
      because: '',
    });
    const event = (name: 'vapour-receded' | 'plateau-ending', timeS: number) => ({
      event: name,
      timeS,
      because: '',
    });
    const watched = watchedWith(
      {
        stages: [
          span('main-fraction', 1100),
          span('tail', 2000),
          span('main-fraction', 2100),
          span('cool-down', 3500),
        ],
        events: [
          event('vapour-receded', 1510),
          event('vapour-receded', 2000),
          event('plateau-ending', 2100),
          event('plateau-ending', 2950),
        ],
        alarms: [alarmAt('surging', 1200), alarmAt('near-dryness', 3000)],
      },
      seconds.map((timeS) => (timeS >= 1550 && timeS < 1650 ? 'vapour-receded' : null)),
    );
    const score = scoreByHand(run, byHandTruth(run), watched);
    expect({
      stageFlaps: score.stageFlaps,
      eventFlaps: score.eventFlaps,
      endingsOnFlat: score.endingsOnFlat,
      recededWrongly: score.recededWrongly,
      surging: score.surging,
      coolDown: score.coolDownWhileDistilling,
      dry: score.dryCalledWith,
      call: score.call,
    }).toEqual({
      stageFlaps: 1,
      eventFlaps: 2,
      endingsOnFlat: 1,
      // Vapour is back at 1600 s; a bulb may take 15 s to feel it.
      recededWrongly: { of: 100, count: 35 },
      surging: 1,
      coolDown: true,
      dry: 320 / 350,
      call: 'missed',
    });
  });
});

test('runs are kept in a file and come back as they were', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'kept-runs-'));
  try {
    const runs = [madeRun(), madeRun([2000, 2200])];
    const file = path.join(folder, 'runs.jsonl');
    expect(saveRuns(file, runs)).toBe(2);
    expect([...loadRuns(file)]).toEqual(runs);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
