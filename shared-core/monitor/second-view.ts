import type { AlarmView, ChannelProblem, RunEvent, Snapshot } from '../snapshot/index.ts';
import type { StandingAlarm } from './alarm-bank.ts';
import { alarmCatalogue } from './call/index.ts';
import { even } from './certainty.ts';
import { headExpandedUncertaintyK } from './head-uncertainty.ts';
import type { MonitorFacts } from './monitor-facts.ts';
import type { HeadState } from './situation/vapour-filter.ts';
import { forecastInStep } from './words/limit-ahead.ts';
import { scaleFinding } from './words/scale-finding.ts';
import { composeSentence, type Sentence } from './words/sentence.ts';
import type { Kept } from './words/sentence-keeper.ts';
import { stageBecause, stageWouldChangeIf } from './words/stage-words.ts';
import { vapourView } from './words/vapour-words.ts';

/** What the snapshots of one second are made from: all of it immutable, so a late look sees the same as an early one. */
export interface SecondSource {
  readonly facts: MonitorFacts;
  readonly standing: readonly StandingAlarm[];
  readonly recentEvents: readonly RunEvent[];
  readonly kept: Kept;
  readonly channelProblems: readonly ChannelProblem[];
}

/** How sure the head is of itself, and which way it goes. */
type HeadDoubt = Pick<NonNullable<Snapshot['head']>, 'expandedUncertaintyK' | 'rateKPerMin'>;

/**
 * What all snapshots of one second say, made when it is first read: ten are shown in a second, and only the reading differs. A class
 * for the reason that {@link LazySnapshot} is one.
 */
export class SecondView {
  readonly source: SecondSource;
  private madeStage: Snapshot['stage'] | null = null;
  private madeHeadDoubt: HeadDoubt | null = null;
  private madePlateau: Snapshot['plateau'] | null = null;
  private madeVapour: Snapshot['vapour'] | undefined;
  private madeForecast: Snapshot['forecast'] | undefined;
  private madeAlarms: Snapshot['alarms'] | null = null;
  private madeEvents: Snapshot['events'] | null = null;
  private madeChannelProblems: Snapshot['channelProblems'] | null = null;
  private madeSentence: { readonly shownC: number | null; readonly sentence: Sentence } | null =
    null;

  constructor(source: SecondSource) {
    this.source = source;
  }

  /** The sentence at the top, beside the reading that is shown; most snapshots of a second come between two readings. */
  sentenceAt(shownC: number | null): Sentence {
    if (this.madeSentence === null || !Object.is(this.madeSentence.shownC, shownC)) {
      const { facts, kept } = this.source;
      this.madeSentence = { shownC, sentence: composeSentence(facts, kept, shownC) };
    }
    return this.madeSentence.sentence;
  }

  get stage(): Snapshot['stage'] {
    this.madeStage ??= stageView(this.source.facts);
    return this.madeStage;
  }

  get headDoubt(): HeadDoubt {
    this.madeHeadDoubt ??= headDoubt(this.source);
    return this.madeHeadDoubt;
  }

  get plateau(): Snapshot['plateau'] {
    this.madePlateau ??= plateauView(this.source.facts);
    return this.madePlateau;
  }

  get vapour(): Snapshot['vapour'] {
    const { facts, kept } = this.source;
    if (this.madeVapour === undefined) this.madeVapour = vapourView(facts, kept.strength);
    return this.madeVapour;
  }

  get forecast(): Snapshot['forecast'] {
    const { facts, kept } = this.source;
    if (this.madeForecast === undefined)
      this.madeForecast = forecastInStep(facts.forecast, kept.limitAhead);
    return this.madeForecast;
  }

  get alarms(): Snapshot['alarms'] {
    this.madeAlarms ??= this.source.standing.map(viewAlarm);
    return this.madeAlarms;
  }

  get events(): Snapshot['events'] {
    this.madeEvents ??= this.source.recentEvents.slice();
    return this.madeEvents;
  }

  get channelProblems(): Snapshot['channelProblems'] {
    this.madeChannelProblems ??= this.source.channelProblems.slice();
    return this.madeChannelProblems;
  }
}

function stageView(facts: MonitorFacts): Snapshot['stage'] {
  return {
    stage: facts.stage,
    sinceS: facts.stageSinceS,
    probability: facts.probability,
    condition: facts.condition,
    because: stageBecause(facts),
    wouldChangeIf: stageWouldChangeIf(facts),
  };
}

function headDoubt({ facts, kept }: SecondSource): HeadDoubt {
  const isLeaving = kept.topic === 'leaving' || facts.situation.departedS !== null;
  return {
    expandedUncertaintyK: headExpandedUncertaintyK(facts),
    rateKPerMin: facts.head && perMinute(tellableRateKPerS(facts.head, isLeaving)),
  };
}

function plateauView(facts: MonitorFacts): Snapshot['plateau'] {
  return {
    pressureKPa: facts.scale.pressureKPa,
    pressureStandardUncertaintyKPa: facts.settings.pressure.standardUncertaintyKPa,
    azeotropeC: facts.scale.azeotropeC,
    limitC: facts.scale.limitC,
    leastStrengthAbv: facts.limitAbv,
    ...scaleFinding(facts),
  };
}

/** A head whose rate is known to this, and no better, cannot be called steady [K/s]; chosen here. */
const steadyWithinKPerS = 1 / 60;
/** A dry bulb that moves less may stand or not [K/s]: at its beginning noise alone makes it seem to move by some tenths a minute. */
const tellableDryKPerS = 1.5 / 60;

/**
 * On a plateau the rate wanders by less than its own doubt (k = 2, some 0.25 K/min): told, it would have the head rise and fall
 * by turns where it stands. Where the doubt is large, nothing is known of it: not even that the head stands. Without vapour the
 * bulb goes its own way, and its own rate belongs beside its temperature: that of the vapour which came last stands still.
 * A head that is held, or said, to leave its plateau does not stand: that test looks minutes further back than the rate does.
 */
function tellableRateKPerS(head: HeadState, isLeaving: boolean): number | null {
  const { rateKPerS, rateSdKPerS, bulbRateKPerS, wet } = head;
  if (wet < even) return Math.abs(bulbRateKPerS) > tellableDryKPerS ? bulbRateKPerS : null;
  const doubtKPerS = 2 * rateSdKPerS;
  if (Math.abs(rateKPerS) > doubtKPerS) return rateKPerS;
  return doubtKPerS < steadyWithinKPerS && !isLeaving ? 0 : null;
}

function perMinute(perS: number | null): number | null {
  return perS && 60 * perS;
}

function viewAlarm({ alarm, track, reason }: StandingAlarm): AlarmView {
  const { priority, act, consequence } = alarmCatalogue[alarm];
  return {
    alarm,
    state: track.state,
    priority,
    raisedS: track.raisedS ?? 0,
    act: track.active ? (reason.act ?? act) : null,
    because: reason.because,
    consequence,
    wouldChangeIf: reason.wouldChangeIf,
    shelvedUntilS: track.shelvedUntilS,
  };
}
