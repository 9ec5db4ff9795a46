import { existsSync } from 'node:fs';
import process from 'node:process';
import {
  fail,
  type PortInfo,
  type ProbeSource,
  type ProbeStatus,
  type Result,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import { type DemoRig, startDemoRig } from './demo-rig.ts';
import { createProbeLink, type ProbeLink } from './link/probe-link.ts';
import { createListeners } from './listeners.ts';
import type { OpenByteLine } from './port/byte-line.ts';
import { listSerialPorts } from './port/list-serial-ports.ts';
import { openSerialLine } from './port/open-serial-line.ts';
import type { ProbeHub } from './probe-hub.ts';
import { noProbeStatus } from './probe-status.ts';

export interface ProbeHubOptions {
  readonly clock: Clock;
  /** Replaced in tests that play a failing operating system. */
  readonly openLine?: OpenByteLine;
  readonly listPorts?: () => Promise<readonly PortInfo[]>;
}

/** Status at most ten times a second, and silence noticed within a tenth of one. */
const tickMs = 100;
const portsEveryTicks = 20;

interface Connection {
  readonly source: ProbeSource;
  readonly link: ProbeLink;
  readonly rig: DemoRig | null;
}

/** Probes in this process: opens what is asked for, and ticks until closed. */
export function createProbeHub(options: ProbeHubOptions): ProbeHub {
  const { clock, openLine = openSerialLine, listPorts = listOrNone } = options;
  const listeners = createListeners();
  let connection: Connection | null = null;
  let toldStatus = '';
  let toldPorts = '[]';
  let ticks = 0;

  function status(): ProbeStatus {
    if (connection === null) return noProbeStatus;
    const view = connection.link.view();
    const advice = [connection.rig?.notice, view.advice].filter(Boolean).join(' ') || null;
    return { source: connection.source, ...view, advice };
  }

  function tellStatus(): void {
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

  const timer = setInterval(() => {
    connection?.link.tick();
    tellStatus();
    if (ticks % portsEveryTicks === 0 && listeners.count('ports') > 0) void tellPorts();
    ticks += 1;
  }, tickMs);

  async function disconnect(): Promise<void> {
    const ended = connection;
    connection = null;
    await ended?.link.close();
    ended?.rig?.stop();
    tellStatus();
  }

  async function connect(source: ProbeSource): Promise<Result<ProbeStatus, ServiceProblem>> {
    await disconnect();
    const rig = source.kind === 'demo' ? startDemoRig(source, clock) : null;
    if (rig !== null && !rig.ok) return rig;
    const serial = source.kind === 'demo' ? rig?.value.source : source;
    if (serial === undefined) return fail({ kind: 'no-probe' });
    const link = createProbeLink(
      serial,
      {
        clock,
        openLine: rig?.value.openLine ?? openLine,
        listPorts,
        pathExists: (path) => process.platform === 'win32' || existsSync(path),
      },
      {
        readings: (readings) => listeners.tell('readings', readings),
        link: (change) => listeners.tell('link', change),
      },
    );
    connection = { source, link, rig: rig?.value ?? null };
    const opened = await link.open();
    tellStatus();
    if (opened.ok) return succeed(status());
    await disconnect();
    return opened;
  }

  return {
    status,
    listPorts,
    connect,
    disconnect,
    on: listeners.on,
    followHeat: (mark) => connection?.rig?.heat(mark),
    suspend: async () => connection?.link.suspend(),
    resume: async () => connection?.link.resume(),
    async close() {
      clearInterval(timer);
      await disconnect();
      listeners.clear();
    },
  };
}

async function listOrNone(): Promise<readonly PortInfo[]> {
  const listed = await listSerialPorts();
  return listed.ok ? listed.value : [];
}
