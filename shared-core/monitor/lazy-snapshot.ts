import type { AlarmView, RunEvent, Snapshot } from '../snapshot/index.ts';
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
}

/**
 * A snapshot whose parts are made when they are read: most are never looked at, since readings come
 * a hundred times a second and a window draws ten. A class, because accessors that each snapshot defined for
 * itself would cost more than all else that is done with a reading. They are not seen by spreading or by
 * structured cloning: copy it with `toJSON()` or through JSON.
 */
export class LazySnapshot implements Snapshot {
  readonly timeS: number;
  readonly heat: Snapshot['heat'];
  private readonly source: SnapshotSource;
  private composed: Sentence | null = null;

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
    const { facts } = this.source;
    return {
      stage: facts.stage,
      sinceS: facts.stageSinceS,
      probability: facts.probability,
      condition: facts.condition,
      because: stageBecause(facts),
      wouldChangeIf: stageWouldChangeIf(facts),
    };
  }

  get head(): Snapshot['head'] {
    const { facts, latest } = this.source;
    if (latest === null) return null;
    return {
      temperatureC: latest.temperatureC,
      expandedUncertaintyK: headExpandedUncertaintyK(facts),
      rateKPerMin: facts.head && perMinute(tellableRateKPerS(facts.head)),
      ageS: Math.max(0, this.timeS - latest.timeS),
    };
  }

  get plateau(): Snapshot['plateau'] {
    const { facts } = this.source;
    return {
      pressureKPa: facts.scale.pressureKPa,
      pressureStandardUncertaintyKPa: facts.settings.pressure.standardUncertaintyKPa,
      azeotropeC: facts.scale.azeotropeC,
      limitC: facts.scale.limitC,
      leastStrengthAbv: facts.limitAbv,
      ...scaleFinding(facts),
    };
  }

  get vapour(): Snapshot['vapour'] {
    return vapourView(this.source.facts, this.source.kept.strength);
  }

  get forecast(): Snapshot['forecast'] {
    return forecastInStep(this.source.facts.forecast, this.source.kept.limitAhead);
  }

  get alarms(): Snapshot['alarms'] {
    return this.source.standing.map(viewAlarm);
  }

  get events(): Snapshot['events'] {
    return this.source.recentEvents.slice();
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
    };
  }

  private compose(): Sentence {
    const { facts, kept, latest } = this.source;
    this.composed ??= composeSentence(facts, kept, latest?.temperatureC ?? null);
    return this.composed;
  }
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
