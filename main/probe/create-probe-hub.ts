import {
  fail,
  type PortInfo,
  type ProbeSource,
  type ProbeStatus,
  type Result,
  type ServiceProblem,
  succeed,
  worded,
  wordingOf,
} from '#shared-core';
import { type Clock, type Scheduler, systemScheduler } from '../clock/index.ts';
import { openPseudoTerminal } from '../pseudo-terminal/index.ts';
import { findProbe } from './find/index.ts';
import { createLinkLoss } from './link/link-loss.ts';
import { createListeners } from './listeners.ts';
import type { OpenByteLine } from './port/byte-line.ts';
import { listSerialPorts } from './port/list-serial-ports.ts';
import { openSerialLine } from './port/open-serial-line.ts';
import { sharePortList } from './port/shared-port-list.ts';
import { createProbeGroup, type ProbeGroup } from './probe-group.ts';
import type { ProbeHub, ProbeReading } from './probe-hub.ts';
import { noProbeStatus } from './probe-status.ts';

export interface ProbeHubOptions {
  readonly clock: Clock;
  readonly scheduler?: Scheduler;
  /** Replaced in tests that play a failing operating system. */
  readonly openLine?: OpenByteLine;
  readonly listPorts?: () => Promise<readonly PortInfo[]>;
  readonly openTerminal?: typeof openPseudoTerminal;
}

/** Status at most ten times a second, and silence noticed within a tenth of one. */
const tickS = 0.1;
const portsEveryTicks = 20;
const givingUpS = 2;
/**
 * Between two ticks this process and what it reads have stood still: the computer slept. A busy computer is late by less, and
 * where only other processes halt, this one ticks on.
 */
const leastSleepS = 5;

interface Connected {
  readonly source: ProbeSource;
  readonly group: ProbeGroup;
}

/** Probes in this process: opens what is asked for, and ticks until closed. */
export function createProbeHub(options: ProbeHubOptions): ProbeHub {
  const { clock, scheduler = systemScheduler, openLine = openSerialLine } = options;
  const { openTerminal = openPseudoTerminal } = options;
  const wait = (seconds: number) =>
    new Promise<void>((resolve) => scheduler.after(seconds, resolve));
  const listPorts = sharePortList(options.listPorts ?? listOrNone, {
    nowMs: () => clock.monotonicS() * 1000,
    wait: (ms) => wait(ms / 1000),
  });
  const listeners = createListeners();
  let connected: Connected | null = null;
  /** Whoever connects another probe in mid-run takes the head from the one before: that is told as a loss and a return too. */
  const headLoss = createLinkLoss((change) => listeners.tell('link', change));
  /** The device that brought the head last; null where none did. */
  let headDevice: string | null = null;
  /** Until it is heard which device that is now. */
  let awaitsHead = true;
  /** What was last looked at, and what of it was last told: not all that is newly made is news. */
  let told: {
    readonly connected: Connected | null;
    readonly view: ReturnType<ProbeGroup['view']> | null;
  } | null = null;
  let toldStatus = '';
  let toldPorts = '[]';
  let ticks = 0;
  let wishes = 0;
  let lastTurn: Promise<unknown> = Promise.resolve();

  function hearHead(readings: readonly ProbeReading[]): void {
    const head = readings.find(({ channel }) => channel === 'head');
    if (head === undefined) return;
    awaitsHead = false;
    const device = connected?.group.view().device ?? null;
    if (headDevice !== null && device !== headDevice) headLoss.otherProbe();
    headDevice = device;
    headLoss.heard(head.atS);
  }

  function status(): ProbeStatus {
    return connected === null ? noProbeStatus : statusOf(connected, connected.group.view());
  }

  function tellStatus(): void {
    const view = connected?.group.view() ?? null;
    const isNews = told === null || told.connected !== connected || told.view !== view;
    // What a simulated receiver holds changes with a mark too, and goes with no view of its own.
    if (!isNews && !connected?.group.rig) return;
    told = { connected, view };
    const now = status();
    const text = JSON.stringify(now);
    if (text === toldStatus) return;
    toldStatus = text;
    listeners.tell('status', now);
  }

  async function tellPorts(): Promise<void> {
    const ports = await listPorts();
    const text = JSON.stringify(ports);
    if (text === toldPorts) return;
    toldPorts = text;
    listeners.tell('ports', ports);
  }

  let lastTickS = clock.monotonicS();
  const stopTicking = scheduler.every(tickS, () => {
    const nowS = clock.monotonicS();
    if (nowS - lastTickS >= leastSleepS) connected?.group.stoodStill(lastTickS);
    lastTickS = nowS;
    connected?.group.tick();
    tellStatus();
    if (ticks % portsEveryTicks === 0 && listeners.count('ports') > 0) tellPorts().catch(() => {});
    ticks += 1;
  });

  async function letGo(): Promise<void> {
    const ended = connected;
    connected = null;
    headLoss.lost('unplugged', clock.monotonicS());
    await ended?.group.close();
    tellStatus();
  }

  /**
   * What is asked for later makes the earlier give up, and begins when that is over: else two would open the same port, and the
   * one that gives up would take the other's probes with it.
   */
  function inTurn<T>(act: (isNewest: () => boolean) => Promise<T>): Promise<T> {
    wishes += 1;
    const wish = wishes;
    const before = connected?.group;
    const letGone = letGo().then(() => before?.atRest());
    const over = Promise.allSettled([letGone, lastTurn]);
    const acted = within(givingUpS, over).then(() => act(() => wish === wishes));
    lastTurn = acted;
    return acted;
  }

  /** A driver may hang in an opening or a closing for ever; the next wish does not. */
  async function within(seconds: number, awaited: Promise<unknown>): Promise<void> {
    let cancel = () => {};
    const late = new Promise<void>((resolve) => {
      cancel = scheduler.after(seconds, resolve);
    });
    await Promise.race([awaited, late]);
    cancel();
  }

  function connect(source: ProbeSource): Promise<Result<ProbeStatus, ServiceProblem>> {
    return inTurn(async (isNewest) => {
      if (!isNewest()) return fail({ kind: 'superseded' });
      const group = createProbeGroup(source, {
        clock,
        scheduler,
        openLine,
        openTerminal,
        listPorts,
        readings(readings) {
          if (awaitsHead) hearHead(readings);
          listeners.tell('readings', readings);
        },
        link({ state, reason, atS }) {
          if (state === 'lost') {
            headLoss.lost(reason, atS);
            awaitsHead = true;
            return;
          }
          if (reason === 'probe-changed') headLoss.otherProbe();
          headLoss.heard(atS);
        },
      });
      if (!group.ok) return group;
      connected = { source, group: group.value };
      awaitsHead = true;
      const opened = await group.value.open();
      tellStatus();
      if (opened.ok) return isNewest() ? succeed(status()) : fail({ kind: 'superseded' });
      if (connected?.group === group.value) await letGo();
      return opened;
    });
  }

  const disconnect = () => inTurn(async () => {});

  return {
    status,
    // Told as it is heard: nothing is ever on its way.
    heardUpToS: () => Number.POSITIVE_INFINITY,
    listPorts,
    connect,
    disconnect,
    find: (path) => findProbe(path, { clock, openLine, wait }),
    on: listeners.on,
    followMark: (mark) => connected?.group.rig?.follow(mark),
    suspend: async () => connected?.group.suspend(),
    resume: async () => connected?.group.resume(),
    async close() {
      stopTicking();
      // Whoever ends the program has not lost the probe.
      listeners.clear();
      await disconnect();
    },
  };
}

function statusOf({ source, group }: Connected, view: ReturnType<ProbeGroup['view']>): ProbeStatus {
  const advice = together(group.rig?.notice ?? null, view.advice);
  const wording = advice === null ? {} : wordingOf([advice]);
  return {
    source,
    ...view,
    ...(group.rig && { rehearsedReceiverMl: group.rig.receiverMl() }),
    advice,
    ...(Object.keys(wording).length > 0 && { wording }),
  };
}

async function listOrNone(): Promise<readonly PortInfo[]> {
  const listed = await listSerialPorts();
  return listed.ok ? listed.value : [];
}

function together(notice: string | null, advice: string | null): string | null {
  if (!notice || !advice) return notice || advice || null;
  return worded('{notice} {advice}', { notice, advice });
}
