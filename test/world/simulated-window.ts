import type { Session } from '#main';
import type { EventBody, Snapshot } from '#shared-core';
import { startLiveFeed } from '../../renderer/feed/index.ts';
import { createBenchStore, createRunViewStore, type RunView } from '../../renderer/stores/index.ts';
import { createSimulatedConnection } from './simulated-connection.ts';
import type { WorldTime } from './world-time.ts';

export interface WindowParts {
  readonly time: WorldTime;
  readonly mayCommand: boolean;
  /** Seconds until an event arrives here. */
  readonly delayS: () => number;
  /** A planted defect may keep something from this window. */
  readonly asTold?: (session: Session) => Session;
}

/** A window with the feed and the stores of a real one, as far as the world judges it. */
export interface SimulatedWindow {
  /** Since when nothing has kept it from being up to date [s of the world]; null without a connection. */
  connectedSinceS(): number | null;
  view(): RunView | null;
  /** What this window says of the record. */
  recording(): EventBody<'recording'> | null;
  open(session: Session): void;
  /** The page goes, with all it knew. */
  close(): void;
  isOpen(): boolean;
  /** The services went, the page is still there. */
  breakOff(): void;
  join(session: Session): void;
}

/** A frame of a window that is painted [s]. */
const frameS = 0.02;

export function createSimulatedWindow(parts: WindowParts): SimulatedWindow {
  const { time, asTold = (session) => session } = parts;
  let page: ReturnType<typeof openPage> | null = null;
  let sinceS: number | null = null;

  function openPage() {
    const connection = createSimulatedConnection(parts);
    const bench = createBenchStore();
    const live = createRunViewStore();
    const end = startLiveFeed({
      service: connection,
      bench,
      live,
      breathe: async () => {},
      beforeNextPaint: (act) => void time.bench.after(frameS, act),
    });
    return { connection, bench, live, end };
  }

  function join(session: Session): void {
    if (page === null || sinceS !== null) return;
    page.connection.join(asTold(session));
    sinceS = time.nowS();
  }

  function breakOff(): void {
    page?.connection.breakOff();
    sinceS = null;
  }

  return {
    connectedSinceS: () => sinceS,
    view: () => page?.live.getState().view ?? null,
    recording: () => page?.bench.getState().recording ?? null,
    isOpen: () => page !== null,
    open(session) {
      page ??= openPage();
      join(session);
    },
    close() {
      breakOff();
      page?.end();
      page = null;
    },
    breakOff,
    join,
  };
}

/** What of a snapshot is judged at each step. */
export interface Shown {
  readonly ageS: number | null;
  readonly calls: boolean;
}

const heatOffAlarms: readonly string[] = ['plateau-departure', 'over-limit'];

export const lookAt = (snapshot: Snapshot): Shown => ({
  ageS: snapshot.head?.ageS ?? null,
  calls: snapshot.alarms.some(({ alarm }) => heatOffAlarms.includes(alarm)),
});
