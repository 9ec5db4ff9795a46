import type { Snapshot } from '../snapshot/index.ts';
import type { SecondView } from './second-view.ts';
import type { LatestHead } from './sense/head-seconds.ts';
import type { Sentence } from './words/sentence.ts';

/**
 * A snapshot whose parts are made when they are first read: most are never looked at, since readings come
 * a hundred times a second and a window draws ten, and those that are go to every window. A class, because accessors
 * that each snapshot defined for itself would cost more than all else that is done with a reading. They are not seen by
 * spreading or by structured cloning: copy it with `toJSON()` or through JSON.
 */
export class LazySnapshot implements Snapshot {
  readonly timeS: number;
  private readonly second: SecondView;
  private readonly latest: LatestHead | null;
  private madeHead: Snapshot['head'] = null;

  constructor(second: SecondView, timeS: number, latest: LatestHead | null) {
    this.second = second;
    this.timeS = timeS;
    this.latest = latest;
  }

  get sentence(): string {
    return this.compose().sentence;
  }

  get act(): string | null {
    return this.compose().act;
  }

  get stage(): Snapshot['stage'] {
    return this.second.stage;
  }

  get head(): Snapshot['head'] {
    this.madeHead ??= this.latest && {
      temperatureC: this.latest.temperatureC,
      ...this.second.headDoubt,
      ageS: Math.max(0, this.timeS - this.latest.timeS),
    };
    return this.madeHead;
  }

  get plateau(): Snapshot['plateau'] {
    return this.second.plateau;
  }

  get vapour(): Snapshot['vapour'] {
    return this.second.vapour;
  }

  get forecast(): Snapshot['forecast'] {
    return this.second.forecast;
  }

  get alarms(): Snapshot['alarms'] {
    return this.second.alarms;
  }

  get events(): Snapshot['events'] {
    return this.second.events;
  }

  get heat(): Snapshot['heat'] {
    return this.second.source.facts.heat;
  }

  get channelProblems(): Snapshot['channelProblems'] {
    return this.second.channelProblems;
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
    return this.second.sentenceAt(this.latest?.temperatureC ?? null);
  }
}
