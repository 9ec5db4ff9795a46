import type { Stage, Verdicts } from '#shared-core';
import { type ByHandRun, endS } from './by-hand-run.ts';
import type { ByHandTruth } from './by-hand-truth.ts';
import { type CallJudgement, judgeCall } from './judge-call.ts';
import { knownVapourCall, knownVapours } from './known-vapour.ts';
import { thresholdCall, thresholdRules } from './threshold-rules.ts';
import type { Watched } from './watch-run.ts';

/** A count of what was right, or was told, out of all. */
export interface Share {
  readonly of: number;
  readonly count: number;
}

/** What was told of something, and what it truly was. */
export interface ToldTruth {
  readonly truth: number;
  readonly told: { readonly low: number; readonly value: number; readonly high: number };
}

export interface ByHandScore {
  readonly calledS: number | null;
  readonly call: CallJudgement;
  /** The same if the alarm above the limit counts as well. */
  readonly anyCall: CallJudgement;
  readonly rules: readonly CallJudgement[];
  /** And who knew the vapour itself. */
  readonly known: readonly CallJudgement[];
  readonly verdictRight: boolean | null;
  /** Minutes with vapour in which a strength was told; told intervals that hold the truth. */
  readonly told: Share;
  readonly covered: Share;
  /** Strengths told with vapour at the bulb [% vol], 95 % intervals. */
  readonly strengths: readonly ToldTruth[];
  readonly stages: Share;
  readonly hours: number;
  readonly surging: number;
  readonly alarms: number;
  readonly stageFlaps: number;
  readonly eventFlaps: number;
  /** Seconds in which vapour was said to have left, and those in which it had not. */
  readonly recededWrongly: Share;
  readonly flatHours: number;
  readonly endingsOnFlat: number;
  readonly forecasts: Share;
  /** Boiling time left to the limit [s], 90 % ranges. */
  readonly timesLeft: readonly ToldTruth[];
  /** Largest share of the charge that was left when the pot was called nearly dry. */
  readonly dryCalledWith: number | null;
  readonly coolDownWhileDistilling: boolean;
}

const stageOrder: readonly Stage[] = [
  'warm-up',
  'first-fraction',
  'main-fraction',
  'tail',
  'cool-down',
];
const bathedShare = 0.9;
/** A bulb needs a while to feel that vapour is back. */
const feelsAgainS = 15;
const stillDistillingS = 60;
const onceEvents: ReadonlySet<string> = new Set([
  'vapour-arrived',
  'first-fraction-ended',
  'plateau-ending',
]);

export function scoreByHand(run: ByHandRun, truth: ByHandTruth, watched: Watched): ByHandScore {
  const { verdicts } = watched;
  const { heatOffS } = run.course;
  const called = firstAlarm(verdicts, ['plateau-departure']);
  const anyCalled = firstAlarm(verdicts, ['plateau-departure', 'over-limit']);
  const untilS = Math.min(heatOffS, (truth.limitS ?? heatOffS) + 60);
  const before = verdicts.alarms.filter(({ raisedS }) => raisedS < untilS);
  const stages = stageAt(verdicts, endS(run));
  return {
    calledS: called,
    call: judgeCall(run, truth, called),
    anyCall: judgeCall(run, truth, anyCalled),
    rules: thresholdRules.map((rule) => judgeCall(run, truth, thresholdCall(run, rule))),
    known: knownVapours.map((known) =>
      judgeCall(run, truth, knownVapourCall(run, truth.mainFromS, known)),
    ),
    verdictRight:
      truth.main === 'marginal' ? null : verdicts.verdict.mainFraction === (truth.main === 'yes'),
    ...strengths(run, verdicts),
    stages: {
      of: stages.length,
      count: stages.filter((stage, timeS) => stage === truth.stages[timeS]).length,
    },
    hours: untilS / 3600,
    surging: before.filter(({ alarm }) => alarm === 'surging').length,
    alarms: before.length,
    ...flaps(run, verdicts),
    recededWrongly: recededWrongly(run, watched),
    flatHours: truth.flat.filter(Boolean).length / 3600,
    endingsOnFlat: verdicts.events.filter(
      ({ event, timeS }) => event === 'plateau-ending' && truth.flat[Math.round(timeS)] === true,
    ).length,
    ...forecasts(run, truth, verdicts),
    dryCalledWith: dryCalledWith(run, verdicts),
    coolDownWhileDistilling:
      run.course.bathed.filter(
        (share, timeS) => timeS < heatOffS && share >= bathedShare && stages[timeS] === 'cool-down',
      ).length >= stillDistillingS,
  };
}

/** When the first of these alarms was raised. */
export function firstAlarm(verdicts: Verdicts, alarms: readonly string[]): number | null {
  const raised = verdicts.alarms.filter(({ alarm }) => alarms.includes(alarm));
  return raised.length === 0 ? null : Math.min(...raised.map(({ raisedS }) => raisedS));
}

function stageAt({ stages }: Verdicts, endS: number): Stage[] {
  const called: Stage[] = [];
  let next = 0;
  let stage: Stage = 'warm-up';
  for (let timeS = 0; timeS <= endS; timeS += 1) {
    for (let span = stages[next]; span !== undefined && span.fromS <= timeS; ) {
      stage = span.stage;
      next += 1;
      span = stages[next];
    }
    called.push(stage);
  }
  return called;
}

function strengths(
  { course }: ByHandRun,
  { estimates }: Verdicts,
): Pick<ByHandScore, 'told' | 'covered' | 'strengths'> {
  let minutes = 0;
  const strengths: ToldTruth[] = [];
  for (const { timeS, headVapourAbv } of estimates) {
    const second = Math.round(timeS);
    if (second >= course.heatOffS || (course.bathed[second] ?? 0) < bathedShare) continue;
    minutes += 1;
    if (headVapourAbv === null) continue;
    strengths.push({ truth: course.abv[second] as number, told: headVapourAbv });
  }
  return {
    told: { of: minutes, count: strengths.length },
    covered: heldOf(strengths),
    strengths,
  };
}

function heldOf(items: readonly ToldTruth[]): Share {
  const held = items.filter(({ truth, told }) => told.low <= truth && truth <= told.high);
  return { of: items.length, count: held.length };
}

/** Stages entered again, events that come once told again, and vapour said to leave that did not. */
function flaps(
  { course }: ByHandRun,
  { stages, events }: Verdicts,
): { stageFlaps: number; eventFlaps: number } {
  let furthest = -1;
  let stageFlaps = 0;
  for (const { stage } of stages) {
    const place = stageOrder.indexOf(stage);
    if (place <= furthest) stageFlaps += 1;
    furthest = Math.max(furthest, place);
  }
  const seen = new Set<string>();
  let eventFlaps = 0;
  for (const { event, timeS } of events) {
    if (onceEvents.has(event)) {
      if (seen.has(event)) eventFlaps += 1;
      seen.add(event);
    }
    const around = course.bathed.slice(Math.max(0, Math.round(timeS) - 60), Math.round(timeS) + 1);
    if (event === 'vapour-receded' && around.every((share) => share >= bathedShare))
      eventFlaps += 1;
  }
  return { stageFlaps, eventFlaps };
}

function recededWrongly({ course }: ByHandRun, { conditions }: Watched): Share {
  let told = 0;
  let wrong = 0;
  let bathedS = 0;
  for (const [timeS, condition] of conditions.entries()) {
    if (timeS >= course.heatOffS) break;
    bathedS = (course.bathed[timeS] as number) >= bathedShare ? bathedS + 1 : 0;
    if (condition !== 'vapour-receded') continue;
    told += 1;
    if (bathedS > feelsAgainS) wrong += 1;
  }
  return { of: told, count: wrong };
}

/** Forecasts at a quarter, half and three quarters of the main fraction; time without vapour is not held against them. */
function forecasts(
  { course }: ByHandRun,
  { mainFromS, limitS }: ByHandTruth,
  verdicts: Verdicts,
): Pick<ByHandScore, 'forecasts' | 'timesLeft'> {
  const timesLeft: ToldTruth[] = [];
  if (mainFromS === null || limitS === null || limitS - mainFromS < 600) {
    return { forecasts: heldOf(timesLeft), timesLeft };
  }
  for (const share of [0.25, 0.5, 0.75]) {
    const atS = mainFromS + share * (limitS - mainFromS);
    const last = verdicts.forecasts.findLast(({ madeS }) => madeS <= atS);
    const forecast = last?.mainFractionEndS ?? null;
    if (last === undefined || forecast === null) continue;
    let leftS = 0;
    for (let timeS = Math.ceil(last.madeS); timeS < limitS; timeS += 1) {
      if ((course.bathed[timeS] as number) >= bathedShare) leftS += 1;
    }
    const { value, low, high } = forecast;
    const { madeS } = last;
    timesLeft.push({
      truth: leftS,
      told: { value: value - madeS, low: low - madeS, high: high - madeS },
    });
  }
  return { forecasts: heldOf(timesLeft), timesLeft };
}

function dryCalledWith({ course }: ByHandRun, { alarms }: Verdicts): number | null {
  const left = alarms
    .filter(({ alarm }) => alarm === 'near-dryness')
    .map(({ raisedS }) => (course.potMl[Math.round(raisedS)] ?? 0) / course.chargedMl);
  return left.length === 0 ? null : Math.max(...left);
}
