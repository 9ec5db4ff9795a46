import type { AlarmView, ChannelProblem, RunEvent, Snapshot } from '../snapshot/index.ts';
import type { StandingAlarm } from './alarm-bank.ts';
import { alarmCatalogue } from './call/index.ts';
import { headExpandedUncertaintyK } from './head-uncertainty.ts';
import type { MonitorFacts } from './monitor-facts.ts';
import type { LatestHead } from './sense/head-seconds.ts';
import type { HeadState } from './situation/vapour-filter.ts';
import { forecastInStep } from './words/limit-ahead.ts';
import { scaleFinding } from './words/scale-finding.ts';
import { composeSentence, type Sentence } from './words/sentence.ts';
import type { Kept } from './words/sentence-keeper.ts';
import { stageBecause, stageWouldChangeIf } from './words/stage-words.ts';
import { vapourView } from './words/vapour-words.ts';

/** What a snapshot is made from: all of it immutable, so a late look sees the same as an early one. */
export interface SnapshotSource {
  readonly facts: MonitorFacts;
  readonly timeS: number;
  readonly latest: LatestHead | null;
  readonly standing: readonly StandingAlarm[];
  readonly recentEvents: readonly RunEvent[];
  readonly kept: Kept;
  readonly channelProblems: readonly ChannelProblem[];
}

/**
 * A snapshot whose parts are made when they are first read: most are never looked at, since readings come
 * a hundred times a second and a window draws ten, and those that are go to every window. A class, because accessors
 * that each snapshot defined for itself would cost more than all else that is done with a reading. They are not seen by
 * spreading or by structured cloning: copy it with `toJSON()` or through JSON.
 */
export class LazySnapshot implements Snapshot {
  readonly timeS: number;
  readonly heat: Snapshot['heat'];
  private readonly source: SnapshotSource;
  private composed: Sentence | null = null;
  private madeStage: Snapshot['stage'] | null = null;
  private madeHead: Snapshot['head'] = null;
  private madePlateau: Snapshot['plateau'] | null = null;
  private madeVapour: Snapshot['vapour'] = null;
  private madeForecast: Snapshot['forecast'] = null;
  private madeAlarms: Snapshot['alarms'] | null = null;
  private madeEvents: Snapshot['events'] | null = null;
  private madeChannelProblems: Snapshot['channelProblems'] | null = null;

  constructor(source: SnapshotSource) {
    this.timeS = source.timeS;
    this.heat = source.facts.heat;
    this.source = source;
  }

  get sentence(): string {
    return this.compose().sentence;
  }

  get act(): string | null {
    return this.compose().act;
  }

  get stage(): Snapshot['stage'] {
    this.madeStage ??= stageView(this.source.facts);
    return this.madeStage;
  }

  get head(): Snapshot['head'] {
    this.madeHead ??= headView(this.source);
    return this.madeHead;
  }

  get plateau(): Snapshot['plateau'] {
    this.madePlateau ??= plateauView(this.source.facts);
    return this.madePlateau;
  }

  get vapour(): Snapshot['vapour'] {
    this.madeVapour ??= vapourView(this.source.facts, this.source.kept.strength);
    return this.madeVapour;
  }

  get forecast(): Snapshot['forecast'] {
    const { facts, kept } = this.source;
    this.madeForecast ??= forecastInStep(facts.forecast, kept.limitAhead);
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

  /** All parts as a plain object: what is written to a file or sent to a window. */
  toJSON(): Snapshot {
    return {
      timeS: this.timeS,
      sentence: this.sentence,
      act: this.act,
      stage: this.stage,
      head: this.head,
      plateau: this.plateau,
      vapour: this.vapour,
      forecast: this.forecast,
      alarms: this.alarms,
      events: this.events,
      heat: this.heat,
      channelProblems: this.channelProblems,
    };
  }

  private compose(): Sentence {
    const { facts, kept, latest } = this.source;
    this.composed ??= composeSentence(facts, kept, latest?.temperatureC ?? null);
    return this.composed;
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

function headView({ facts, latest, timeS }: SnapshotSource): Snapshot['head'] {
  if (latest === null) return null;
  return {
    temperatureC: latest.temperatureC,
    expandedUncertaintyK: headExpandedUncertaintyK(facts),
    rateKPerMin: facts.head && perMinute(tellableRateKPerS(facts.head)),
    ageS: Math.max(0, timeS - latest.timeS),
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
 */
function tellableRateKPerS(head: HeadState): number | null {
  const { rateKPerS, rateSdKPerS, bulbRateKPerS, wet } = head;
  if (wet < 0.5) return Math.abs(bulbRateKPerS) > tellableDryKPerS ? bulbRateKPerS : null;
  const doubtKPerS = 2 * rateSdKPerS;
  if (Math.abs(rateKPerS) > doubtKPerS) return rateKPerS;
  return doubtKPerS < steadyWithinKPerS ? 0 : null;
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
    act: reason.act ?? act,
    because: reason.because,
    consequence,
    wouldChangeIf: reason.wouldChangeIf,
    shelvedUntilS: track.shelvedUntilS,
  };
}
