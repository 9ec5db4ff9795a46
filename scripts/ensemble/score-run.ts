import type { Alarm, Stage, Verdicts } from '#shared-core';
import { analyseRun, retiredAlarms } from '../../shared-core/monitor/index.ts';
import { coverageFactor95, mapEstimate } from '../../shared-core/uncertainty/index.ts';
import { placeInInterval } from '../measuring/place-in-interval.ts';
import { placeOfTimeLeft } from '../measuring/place-of-time-left.ts';
import type { ScoredRun, TrueSecond } from './scored-run.ts';
import type { Truth } from './truth.ts';

/** How a heat-off call of any rule compares with the truth. */
export interface CallScore {
  readonly calledS: number | null;
  /** Calls while the limit was more than three reaction times and more than 2 % vol away. */
  readonly falseCalls: number;
  /** No call until the limit was more than 120 s past and the vapour more than 2 % vol weaker. */
  readonly missed: boolean;
  /** The same by time alone, however near the vapour is to the limit. */
  readonly earlyCalls: number;
  readonly late: boolean;
  /** Seconds before the limit; negative when late. */
  readonly leadS: number | null;
  /** Distillate below the limit before the call, as a share of the main fraction's volume. */
  readonly weakShare: number | null;
  /** Ethanol of the main fraction that would still have come when the person has reacted; and at the call. */
  readonly lostShare: number | null;
  readonly lostShareAtCall: number | null;
}

const lateToleranceS = 120;
const farAbv = 2;

/** A heat-off call and when it was taken back. */
export interface Call {
  readonly raisedS: number;
  readonly clearedS: number | null;
}

/** Scores the heat-off calls of a rule. */
export function scoreCalls(run: ScoredRun, truth: Truth, calls: readonly Call[]): CallScore {
  const { reactionTimeS } = run.settings;
  const none = { leadS: null, weakShare: null, lostShare: null, lostShareAtCall: null };
  const heated = calls.filter(({ raisedS }) => raisedS < run.heatOffS);
  if (truth.limitS === null || truth.mainFromS === null) {
    const calledS = heated[0]?.raisedS ?? null;
    return { ...none, calledS, falseCalls: 0, missed: false, earlyCalls: 0, late: false };
  }
  const { limitS, mainFromS } = truth;
  const early = heated.filter(({ raisedS }) => raisedS < limitS - 3 * reactionTimeS);
  const strengthAt = (timeS: number): number => run.samples[timeS]?.headVapourStrengthAbv ?? 0;
  const { leastStrengthAbv } = run.settings;
  const falseCalls = early.filter(
    ({ raisedS }) => strengthAt(raisedS) > leastStrengthAbv + farAbv,
  ).length;
  // The call that stands at the limit, or the first one after it.
  const call = heated.find(({ clearedS }) => clearedS === null || clearedS > limitS);
  const calledS = call?.raisedS ?? null;
  const late = calledS === null || calledS > limitS + lateToleranceS;
  const missed = late && (calledS === null || strengthAt(calledS) < leastStrengthAbv - farAbv);
  const counts = { calledS, falseCalls, missed, earlyCalls: early.length, late };
  if (calledS === null) return { ...none, ...counts };
  const at = (timeS: number): TrueSecond =>
    run.samples[Math.min(run.samples.length - 1, Math.round(timeS))] as TrueSecond;
  const mainMl = at(limitS).aboveLimitMl - at(mainFromS).aboveLimitMl;
  const mainMol = at(limitS).aboveLimitEthanolMol - at(mainFromS).aboveLimitEthanolMol;
  const lostAfter = (timeS: number): number =>
    Math.max(
      0,
      at(limitS).aboveLimitEthanolMol - at(Math.min(timeS, limitS)).aboveLimitEthanolMol,
    ) / mainMol;
  return {
    ...counts,
    leadS: limitS - calledS,
    weakShare:
      Math.max(0, at(calledS).belowLimitMl - at(Math.min(limitS, calledS)).belowLimitMl) / mainMl,
    lostShare: lostAfter(calledS + reactionTimeS),
    lostShareAtCall: lostAfter(calledS),
  };
}

/** One forecast compared with the truth. */
export interface MinuteScore {
  readonly covered: boolean;
  /** |forecast − truth| as a share of the boiling time that remained. */
  readonly relativeError: number;
  readonly signedError: number;
  /** Where the truth fell in what was told, by the logarithm of what was left, 0 … 1. */
  readonly place: number;
  readonly withVolumes: boolean;
}

/** The forecast at a share of the plateau, which nobody knows while it lasts. */
export interface ForecastScore extends MinuteScore {
  readonly plateauShare: number;
}

/** One estimate of the strength at the head compared with the truth. */
export interface StrengthScore {
  readonly covered: boolean;
  /** Where the truth fell in what was told, 0 … 1. */
  readonly place: number;
}

export interface RunScore {
  readonly call: CallScore;
  readonly plateauHours: number;
  readonly stageAgreement: number;
  readonly wentBackward: boolean;
  readonly forecasts: readonly ForecastScore[];
  /** Of every minute of the plateau, up to a minute before its end. */
  readonly minutes: readonly MinuteScore[];
  readonly alarmsPerHour: number;
  readonly falseProbeFaults: number;
  readonly mainAgrees: boolean;
  /** Of the head's strength, once a minute. */
  readonly strengths: readonly StrengthScore[];
  /** Prompts to take the heat off before it was taken off, `plateau-departure` and `over-limit` together. */
  readonly heatOffPrompts: number;
  readonly verdicts: Verdicts;
}

const aboutProbe: readonly Alarm[] = retiredAlarms['probe-fault'].became;

const order: readonly Stage[] = ['warm-up', 'first-fraction', 'main-fraction', 'tail', 'cool-down'];

export function scoreRun(run: ScoredRun, truth: Truth): RunScore {
  const verdicts = analyseRun(run.settings, run.inputs, run.endS);
  const calls = verdicts.alarms.filter(({ alarm }) => alarm === 'plateau-departure');
  const over = verdicts.alarms.filter(({ alarm }) => alarm === 'over-limit');
  const heatOff = [...calls, ...over].sort((a, b) => a.raisedS - b.raisedS);
  let agree = 0;
  for (let timeS = 0; timeS <= run.endS; timeS += 1) {
    if (calledStage(verdicts, timeS) === truth.stages[timeS]) agree += 1;
  }
  const indices = verdicts.stages.map(({ stage }) => order.indexOf(stage));
  const plateauS = truth.mainFromS === null ? 0 : (truth.limitS ?? run.heatOffS) - truth.mainFromS;
  const normalHours = (truth.limitS ?? run.heatOffS) / 3600;
  const normal = verdicts.alarms.filter(
    ({ raisedS }) => raisedS < (truth.limitS ?? run.heatOffS) + 60,
  );
  return {
    call: scoreCalls(run, truth, heatOff),
    plateauHours: plateauS / 3600,
    stageAgreement: agree / (run.endS + 1),
    wentBackward: indices.some((index, at) => at > 0 && index <= (indices[at - 1] ?? -1)),
    ...scoreForecasts(run, truth, verdicts),
    alarmsPerHour: normal.length / normalHours,
    falseProbeFaults: verdicts.alarms.filter(({ alarm }) => aboutProbe.includes(alarm)).length,
    mainAgrees: verdicts.verdict.mainFraction === (truth.mainFromS !== null),
    strengths: scoreStrengths(run, verdicts),
    heatOffPrompts: heatOff.filter(({ raisedS }) => raisedS < run.heatOffS).length,
    verdicts,
  };
}

export function calledStage(verdicts: Verdicts, timeS: number): Stage {
  let called: Stage = 'warm-up';
  for (const { stage, fromS } of verdicts.stages) if (fromS <= timeS) called = stage;
  return called;
}

function scoreStrengths({ samples }: ScoredRun, { estimates }: Verdicts): StrengthScore[] {
  return estimates.flatMap(({ timeS, headVapourAbv: told }) => {
    const abv = samples[Math.round(timeS)]?.headVapourStrengthAbv;
    if (told === null || abv === undefined) return [];
    const covered = told.low <= abv && abv <= told.high;
    return [{ covered, place: placeInInterval(abv, told, coverageFactor95) }];
  });
}

const lastMinuteS = 60;

function scoreForecasts(
  run: ScoredRun,
  { mainFromS, limitS }: Truth,
  { forecasts }: Verdicts,
): Pick<RunScore, 'forecasts' | 'minutes'> {
  if (mainFromS === null || limitS === null || limitS - mainFromS < 600) {
    return { forecasts: [], minutes: [] };
  }
  const minutes = forecasts
    .filter(({ madeS }) => madeS >= mainFromS && madeS < limitS - lastMinuteS)
    .flatMap((made) => scoreForecast(run, limitS, made));
  const atShares = [0.25, 0.5, 0.75].flatMap((plateauShare) => {
    const atS = mainFromS + plateauShare * (limitS - mainFromS);
    const last = forecasts.findLast(({ madeS }) => madeS <= atS);
    if (last === undefined) return [];
    return scoreForecast(run, limitS, last).map((score) => ({ ...score, plateauShare }));
  });
  return { forecasts: atShares, minutes };
}

/** None where no end was told. */
function scoreForecast(
  run: ScoredRun,
  limitS: number,
  { madeS, mainFractionEndS }: Verdicts['forecasts'][number],
): MinuteScore[] {
  if (mainFractionEndS === null) return [];
  // What nobody can foresee, heat taken away later, is not held against the forecast.
  const leftS = boilingSeconds(run, madeS, limitS);
  const toldS = mapEstimate(mainFractionEndS, (endS) => endS - madeS);
  const signedError = (toldS.value - leftS) / leftS;
  return [
    {
      covered: toldS.low <= leftS && leftS <= toldS.high,
      relativeError: Math.abs(signedError),
      signedError,
      place: placeOfTimeLeft(leftS, toldS),
      withVolumes: run.readsVolumes,
    },
  ];
}

/** Seconds with vapour at the bulb. */
function boilingSeconds({ samples }: ScoredRun, fromS: number, toS: number): number {
  let seconds = 0;
  for (let timeS = fromS; timeS < toS; timeS += 1) {
    if ((samples[timeS]?.bathedFraction ?? 0) >= 0.9) seconds += 1;
  }
  return seconds;
}
