import { alarmCatalogue, type StandingAlarm } from '../alarms/index.ts';
import type { AlarmView, RunEvent, Snapshot } from '../snapshot/index.ts';
import { headExpandedUncertaintyK } from './head-uncertainty.ts';
import type { MonitorFacts } from './monitor-facts.ts';
import { forecastInStep } from './words/limit-ahead.ts';
import { composeSentence, type Sentence } from './words/sentence.ts';
import type { Kept } from './words/sentence-keeper.ts';
import { stageBecause, stageWouldChangeIf } from './words/stage-words.ts';
import { vapourView } from './words/vapour-words.ts';

/** Newest reading, calibrated: shown at once, whatever the second's tick makes of it later. */
export interface LatestHead {
  readonly timeS: number;
  readonly temperatureC: number;
}

/**
 * A snapshot whose texts are made when they are read: most are never looked at, since readings come
 * a hundred times a second and a window draws ten. All inputs are immutable, so a late look sees the
 * same as an early one.
 */
export function lazySnapshot(
  facts: MonitorFacts,
  timeS: number,
  latest: LatestHead | null,
  standing: readonly StandingAlarm[],
  recentEvents: readonly RunEvent[],
  kept: Kept,
): Snapshot {
  let sentence: Sentence | null = null;
  const composed = (): Sentence => {
    sentence ??= composeSentence(facts, kept);
    return sentence;
  };
  return {
    timeS,
    get sentence() {
      return composed().sentence;
    },
    get act() {
      return composed().act;
    },
    get stage() {
      return {
        stage: facts.stage,
        sinceS: facts.stageSinceS,
        probability: facts.probability,
        condition: facts.condition,
        because: stageBecause(facts),
        wouldChangeIf: stageWouldChangeIf(facts),
      };
    },
    get head() {
      if (latest === null) return null;
      return {
        temperatureC: latest.temperatureC,
        expandedUncertaintyK: headExpandedUncertaintyK(facts),
        rateKPerMin: facts.head === null ? null : 60 * facts.head.rateKPerS,
        ageS: Math.max(0, timeS - latest.timeS),
      };
    },
    get plateau() {
      return {
        pressureKPa: facts.scale.pressureKPa,
        pressureStandardUncertaintyKPa: facts.pressureSdKPa,
        azeotropeC: facts.scale.azeotropeC,
        limitC: facts.scale.limitC,
        leastStrengthAbv: facts.limitAbv,
        probeReadsHighK: facts.bias.meanK,
      };
    },
    get vapour() {
      return vapourView(facts, kept.strength);
    },
    get forecast() {
      return forecastInStep(facts.forecast, kept.limitAhead);
    },
    get alarms() {
      return standing.map(viewAlarm);
    },
    get events() {
      return recentEvents.slice();
    },
    heat: facts.heat,
  };
}

function viewAlarm({ alarm, track, reason }: StandingAlarm): AlarmView {
  const { priority, act, consequence } = alarmCatalogue[alarm];
  return {
    alarm,
    state: track.state,
    priority,
    raisedS: track.raisedS ?? 0,
    act: reason.act ?? act,
    because: reason.because,
    consequence,
    wouldChangeIf: reason.wouldChangeIf,
    shelvedUntilS: track.shelvedUntilS,
  };
}
