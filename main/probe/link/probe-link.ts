import type { PortInfo, ProbeStatus, Result, SerialSource, ServiceProblem } from '#shared-core';
import type { Clock } from '../../clock/index.ts';
import type { ByteLine, OpenByteLine } from '../port/byte-line.ts';
import { portAdvice } from '../port/port-advice.ts';
import {
  deviceName,
  identityAt,
  isSameDevice,
  type UsbIdentity,
  whereIsDevice,
} from '../port/same-device.ts';
import type { ProbeLinkChange, ProbeReading } from '../probe-hub.ts';
import { createTalk } from '../talk/create-talk.ts';
import { createHearing } from './hearing.ts';
import { keptWhereSame } from './kept-where-same.ts';
import { createLinkLoss } from './link-loss.ts';
import { createReadingStamper } from './stamp-readings.ts';

export interface ProbeLinkDependencies {
  readonly clock: Clock;
  readonly openLine: OpenByteLine;
  /** Empty where ports cannot be listed. */
  readonly listPorts: () => Promise<readonly PortInfo[]>;
  readonly pathExists: (path: string) => boolean;
  /** Null for ports that keep their names; see `lineTicket`. */
  readonly ticketOf: (path: string) => string | null;
}

export interface ProbeLinkListeners {
  readonly readings: (readings: readonly ProbeReading[]) => void;
  readonly link: (change: ProbeLinkChange) => void;
}

/** What a status needs to know of one link. */
export type ProbeLinkView = Pick<
  ProbeStatus,
  | 'state'
  | 'path'
  | 'device'
  | 'lastLine'
  | 'recentLines'
  | 'identity'
  | 'channels'
  | 'origins'
  | 'latest'
  | 'readingsPerS'
  | 'rejectedLines'
  | 'droppedBytes'
  | 'problem'
  | 'advice'
>;

/** One probe on one port, from the first opening until it is closed, across any number of unpluggings. */
export interface ProbeLink {
  open(): Promise<Result<null, ServiceProblem>>;
  /** Called about ten times a second: watches for silence and looks for a lost probe. */
  tick(): void;
  /** The computer slept since `sinceS`: nothing could be heard, and silence is not the probe's. */
  stoodStill(sinceS: number): void;
  suspend(): Promise<void>;
  resume(): void;
  close(): Promise<void>;
  /** Once no opening or closing is under way; never where a driver hangs in one. */
  atRest(): Promise<unknown>;
  /** The device it was found to be, once open. */
  identity(): UsbIdentity | null;
  /** The same object until something else is to be seen. */
  view(): ProbeLinkView;
}

type Phase = 'closed' | 'opening' | 'open' | 'waiting' | 'asleep';

const retryEveryS = 0.5;
/** A port that stays silent this long is closed and opened again: some drivers hang until then. */
const reopenWhenSilentS = 20;

export function createProbeLink(
  source: SerialSource,
  dependencies: ProbeLinkDependencies,
  on: ProbeLinkListeners,
): ProbeLink {
  const { clock, openLine, listPorts, pathExists, ticketOf } = dependencies;
  const hearing = createHearing(source.language !== 'modbus-rtu');
  const loss = createLinkLoss(on.link);
  const stamper = createReadingStamper();
  let phase: Phase = 'closed';
  let line: ByteLine | null = null;
  let path = source.path;
  let identity: UsbIdentity | null = null;
  let problem: ServiceProblem | null = null;
  let nextTryS = 0;
  let openedS = 0;
  let ticket: string | null = null;
  /** The ticket of a line that has ended for good. */
  let usedTicket: string | null = null;
  let shown: ProbeLinkView | null = null;
  /** Counts openings, so that a late answer of an earlier one is recognised and closed. */
  let opening = 0;

  const talk = createTalk(source, {
    send: (bytes) => void line?.write(bytes),
    outcomes(outcomes, atS) {
      hearing.outcomes(outcomes, atS);
      const readings = stamper.stamp(outcomes, atS);
      if (readings.length === 0) return;
      loss.heard(atS);
      on.readings(readings);
    },
  });

  /** Openings and closings under way: a port that is not let go yet would refuse the next who opens it. */
  let underWay: Promise<unknown> = Promise.resolve();

  function finish<T>(begun: Promise<T>): Promise<T> {
    underWay = Promise.allSettled([underWay, begun]).then(() => null);
    return begun;
  }

  const openOnce = () => finish(tryOpening());

  async function tryOpening(): Promise<Result<null, ServiceProblem>> {
    opening += 1;
    const thisOpening = opening;
    phase = 'opening';
    try {
      return await openAs(thisOpening);
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      const failed = { kind: 'port-failed', path, message } as const;
      if (thisOpening === opening) {
        problem = failed;
        wait();
      }
      return { ok: false, error: failed };
    }
  }

  async function openAs(thisOpening: number): Promise<Result<null, ServiceProblem>> {
    const ports = await listPorts();
    if (thisOpening !== opening) return { ok: false, error: { kind: 'superseded' } };
    const target = whereIsDevice(path, identity, ports);
    if (usedTicket !== null && ticketOf(target) === usedTicket) {
      wait();
      return { ok: false, error: { kind: 'port-not-found', path: target } };
    }
    const opened = await openLine(
      { path: target, baudRate: source.baudRate, parity: source.parity ?? 'none' },
      {
        bytes: (chunk) => {
          if (thisOpening === opening) receive(chunk);
        },
        closed: (reason) => {
          if (thisOpening === opening) lostPlug(reason);
        },
      },
    );
    if (thisOpening !== opening) {
      if (opened.ok) await opened.value.close();
      return { ok: false, error: { kind: 'superseded' } };
    }
    if (!opened.ok) {
      problem = opened.error;
      wait();
      return opened;
    }
    const found = identityAt(target, ports);
    if (identity !== null && found !== null && !isSameDevice(identity, found)) loss.otherProbe();
    identity = found ?? identity;
    path = target;
    ticket = ticketOf(target);
    line = opened.value;
    problem = null;
    phase = 'open';
    openedS = clock.monotonicS();
    talk.opened(openedS);
    hearing.opened(openedS);
    return { ok: true, value: null };
  }

  function receive(chunk: Uint8Array): void {
    const atS = clock.monotonicS();
    hearing.bytes(chunk, atS);
    talk.receive(chunk, atS);
  }

  function wait(): void {
    phase = 'waiting';
    line = null;
    nextTryS = clock.monotonicS() + retryEveryS;
  }

  function lostPlug(reason: ServiceProblem | null): void {
    problem = reason ?? { kind: 'port-not-found', path };
    usedTicket = ticket;
    wait();
    loss.lost('unplugged', clock.monotonicS());
  }

  /** Closes the line and counts it as ended, whatever the closing says. */
  async function drop(): Promise<void> {
    opening += 1;
    const ending = line;
    line = null;
    try {
      if (ending !== null) await finish(ending.close());
    } catch {
      // What does not close is left behind; the port is opened anew or not at all.
    }
  }

  function watch(nowS: number): void {
    const state = hearing.state(nowS);
    if (state === 'silent' && !pathExists(path)) {
      void drop();
      lostPlug(null);
      return;
    }
    if (state === 'silent' || state === 'unreadable') loss.lost(state, nowS);
    if (state === 'silent' && nowS - openedS > reopenWhenSilentS) {
      void drop().then(() => {
        if (phase === 'open') wait();
      });
      openedS = nowS;
    }
  }

  /** A port that is open again but not yet heard has not come back. */
  function stateAt(nowS: number): ProbeStatus['state'] {
    const state = phase === 'open' ? hearing.state(nowS) : 'connecting';
    return state === 'connecting' && loss.isLost() ? 'lost' : state;
  }

  return {
    open: openOnce,
    tick() {
      const nowS = clock.monotonicS();
      if (phase === 'waiting' && nowS >= nextTryS) void openOnce();
      if (phase !== 'open') return;
      talk.tick(nowS);
      watch(nowS);
    },
    stoodStill(sinceS) {
      if (phase === 'open') loss.lost('computer-asleep', sinceS);
    },
    async suspend() {
      if (phase === 'closed') return;
      phase = 'asleep';
      loss.lost('computer-asleep', clock.monotonicS());
      await drop();
    },
    resume() {
      if (phase === 'asleep') wait();
    },
    async close() {
      phase = 'closed';
      await drop();
    },
    atRest: () => underWay,
    identity: () => identity,
    view() {
      const nowS = clock.monotonicS();
      const isOpen = phase === 'open';
      shown = keptWhereSame(shown, {
        state: stateAt(nowS),
        path,
        device: deviceName(path, identity),
        lastLine: hearing.recentLines().at(-1) ?? null,
        recentLines: hearing.recentLines(),
        identity: talk.identity(),
        channels: stamper.channels(),
        latest: stamper.latest(),
        readingsPerS: isOpen ? hearing.readingsPerS(nowS) : 0,
        rejectedLines: hearing.rejectedLines(),
        droppedBytes: talk.droppedBytes(),
        problem,
        advice: isOpen ? hearing.advice(nowS) : problem && portAdvice(problem),
      });
      return shown;
    },
  };
}
