import type { Session } from '#main';
import type { EventBody, Snapshot } from '#shared-core';

/**
 * What a window is sent holds every part ready; the monitor's own snapshot makes a part each time it is read. Here a part is made
 * once, however many windows look at it, so that the world's time goes into what the program does.
 */
class ToldSnapshot implements Snapshot {
  readonly timeS: number;
  readonly heat: Snapshot['heat'];
  private readonly made = new Map<keyof Snapshot, unknown>();
  private readonly from: Snapshot;

  constructor(from: Snapshot) {
    this.from = from;
    this.timeS = from.timeS;
    this.heat = from.heat;
  }

  get sentence() {
    return this.part('sentence');
  }
  get act() {
    return this.part('act');
  }
  get stage() {
    return this.part('stage');
  }
  get head() {
    return this.part('head');
  }
  get plateau() {
    return this.part('plateau');
  }
  get vapour() {
    return this.part('vapour');
  }
  get forecast() {
    return this.part('forecast');
  }
  get alarms() {
    return this.part('alarms');
  }
  get events() {
    return this.part('events');
  }

  private part<K extends keyof Snapshot>(name: K): Snapshot[K] {
    if (!this.made.has(name)) this.made.set(name, this.from[name]);
    return this.made.get(name) as Snapshot[K];
  }
}

/** The same session, with snapshots as windows are sent them. */
export function tellOnce(session: Session): Session {
  const told = new WeakMap<Snapshot, Snapshot>();
  const onceOf = (snapshot: Snapshot): Snapshot => {
    const known = told.get(snapshot) ?? new ToldSnapshot(snapshot);
    told.set(snapshot, known);
    return known;
  };
  const on: Session['on'] = (name, listener) => {
    if (name !== 'snapshot') return session.on(name, listener);
    const tell = listener as (body: EventBody<'snapshot'>) => void;
    return session.on('snapshot', ({ runId, snapshot }) =>
      tell({ runId, snapshot: onceOf(snapshot) }),
    );
  };
  return { ...session, on };
}
