import type { Session } from '#main';
import type { EventName } from '#shared-core';
import type { ConnectedService, Connection } from '../../renderer/service/index.ts';
import type { WorldTime } from './world-time.ts';

/** Who asks through it, and how long what is said is on its way [s]. */
export interface ConnectionParts {
  readonly time: WorldTime;
  readonly mayCommand: boolean;
  readonly delayS: () => number;
}

/** A window's way to the services, as its feed sees it; the world breaks it and joins it again. */
export interface SimulatedConnection extends ConnectedService {
  join(session: Session): void;
  breakOff(): void;
}

export function createSimulatedConnection(parts: ConnectionParts): SimulatedConnection {
  const { time, mayCommand } = parts;
  const listeners = new Map<EventName, Set<(body: never) => void>>();
  const watchers = new Set<(connection: Connection) => void>();
  let session: Session | null = null;
  let stops: (() => void)[] = [];
  let arrivesS = 0;
  /** What is on its way when the socket breaks never comes. */
  let joined = 0;

  function tell(connection: Connection): void {
    for (const watcher of watchers) watcher(connection);
  }

  /** Nothing overtakes what was said before it. */
  function onItsWay(act: () => void): void {
    const nowS = time.nowS();
    arrivesS = Math.max(arrivesS, nowS + parts.delayS());
    if (arrivesS <= nowS) {
      act();
      return;
    }
    const through = joined;
    time.bench.after(arrivesS - nowS, () => {
      if (through === joined) act();
    });
  }

  function leave(): void {
    for (const stop of stops) stop();
    stops = [];
    session = null;
    joined += 1;
  }

  return {
    async request(name, body) {
      const answer = await session?.handle(name, body, { mayCommand });
      // The table of requests says what each name answers.
      return (answer ?? { ok: false, error: { kind: 'disconnected' } }) as never;
    },
    on(name, listener) {
      const ofName = listeners.get(name) ?? new Set();
      listeners.set(name, ofName);
      ofName.add(listener as (body: never) => void);
      return () => ofName.delete(listener as (body: never) => void);
    },
    connection: () => (session === null ? 'lost' : 'open'),
    onConnection(listener) {
      watchers.add(listener);
      return () => watchers.delete(listener);
    },
    join(to) {
      leave();
      session = to;
      stops = (['ports', 'probe', 'recording', 'snapshot', 'inputs'] as const).map((name) =>
        to.on(name, (body) =>
          onItsWay(() => {
            for (const listener of listeners.get(name) ?? []) listener(body as never);
          }),
        ),
      );
      tell('open');
    },
    breakOff() {
      if (session === null) return;
      leave();
      tell('lost');
    },
  };
}
