import type { ForecastView } from '../../stages/index.ts';
import { coverageFactor90, type Estimate } from '../../uncertainty/index.ts';
import { worded } from '../../wording/index.ts';
import { unlikelySds } from '../certainty.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { lastsAfterS } from '../patience.ts';

/** When the limit is expected (run time, 90 % interval), by what since when, and when this was worked out. */
export interface LimitAhead {
  readonly by: 'rate' | 'forecast';
  readonly bySinceS: number;
  readonly madeS: number;
  readonly expectedS: Estimate;
}

/**
 * One rule which source speaks. From afar the forecast does: a straight line promises far too much there. Within
 * three reaction times of a significant rise the line does, since the twin, which looks once a minute, comes late:
 * on simulated runs it is off by 25 s there, the forecast by 75 s. It speaks on until the limit moves away again.
 */
const nearReactions = 3;
const farReactions = 2 * nearReactions;
/** A line is drawn anew so often [s]; each second would make the time shown tremble. */
const redrawnEveryS = 15;
/** A head bends: share of the time to go, and least error [s]; by simulation, 88 % of limits fall within. */
const bendShare = 0.25;
const leastSdS = 30;

/** When the limit is expected as told at this second; `before` is what was told the second before. */
export function followLimitAhead(
  before: LimitAhead | null,
  facts: MonitorFacts,
  isLeaving: boolean,
): LimitAhead | null {
  const forecast = facts.forecast?.mainFractionEndS ?? null;
  const isOpen = facts.stage === 'first-fraction' || facts.stage === 'main-fraction';
  if (!isOpen) return null;
  const line = before?.by === 'rate' ? before : null;
  if (isLeaving && isNear(facts, line !== null)) {
    const isFresh = line !== null && facts.timeS - line.madeS < redrawnEveryS;
    return isFresh ? line : byRate(facts, line?.bySinceS ?? facts.timeS);
  }
  if (line !== null && isLeaving && facts.timeS - line.madeS < lastsAfterS) return line;
  if (forecast === null || facts.forecast === null) return null;
  // A twin that holds the limit for passed, while the head does not, has no time to tell.
  if (forecast.high - Math.max(facts.timeS, facts.forecast.madeS + leastSdS) <= 0) return null;
  if (before?.by === 'forecast' && before.expectedS === forecast) return before;
  const bySinceS = before?.by === 'forecast' ? before.bySinceS : facts.timeS;
  return {
    by: 'forecast',
    bySinceS,
    madeS: facts.forecast.madeS,
    expectedS: forecast,
  };
}

function isNear({ head, outlook, situation, settings }: MonitorFacts, was: boolean): boolean {
  if (head === null || situation.recededSinceS !== null) return false;
  if (outlook.heatOffDue) return true;
  if (outlook.etaS === null) return false;
  const significant = head.rateKPerS > (was ? 1 : unlikelySds) * head.rateSdKPerS;
  const reactions = was ? farReactions : nearReactions;
  return significant && outlook.etaS < reactions * settings.reactionTimeS;
}

/** Where a straight line meets the limit, with what rate, level and scale leave open; the line is the vapour's, not the bulb's. */
export function byRate({ head, outlook, bias, timeS }: MonitorFacts, bySinceS: number): LimitAhead {
  const etaS = outlook.etaS ?? 0;
  const rate = Math.max(head?.rateKPerS ?? 0, 1e-4);
  const levelS = Math.hypot(bias.sdK, head?.vapourSdK ?? 0) / rate;
  const rateS = (etaS * (head?.rateSdKPerS ?? 0)) / rate;
  const sdS = Math.hypot(Math.min(levelS, 120), rateS, bendShare * etaS, leastSdS);
  return {
    by: 'rate',
    bySinceS,
    madeS: timeS,
    expectedS: {
      value: timeS + etaS,
      low: timeS + Math.max(0, etaS - coverageFactor90 * sdS),
      high: timeS + etaS + coverageFactor90 * sdS,
    },
  };
}

/** The limit as told in the sentence: `in about 4 to 9 min` by the forecast, `within 3 min` once the rise is read. */
export function aheadWords({ by, expectedS }: LimitAhead, timeS: number): string {
  const low = Math.max(1, Math.floor((expectedS.low - timeS) / 60));
  const high = Math.ceil((expectedS.high - timeS) / 60);
  return by === 'rate'
    ? worded('within {minutes} min', { minutes: Math.max(1, high) })
    : worded('in about {low} to {high} min', { low, high: Math.max(low + 1, high) });
}

/** The forecast as shown: where the rate speaks, what the twin says of the same limit gives way to it. */
export function forecastInStep(
  forecast: ForecastView | null,
  ahead: LimitAhead | null,
): ForecastView | null {
  if (forecast === null || ahead === null || ahead.by === 'forecast') return forecast;
  const { expectedS } = ahead;
  const twin = forecast.mainFractionEndS;
  const agrees = twin !== null && twin.low <= expectedS.high && expectedS.low <= twin.high;
  return {
    ...forecast,
    mainFractionEndS: expectedS,
    mainFractionEndIfEasedS: null,
    distillateMlAtEnd: agrees ? forecast.distillateMlAtEnd : null,
    // What the head itself shows by now needs no reading of the receiver, and no model.
    wouldHelp: null,
    doubt: null,
  };
}
