import {
  assertNever,
  type MarkType,
  type PortInfo,
  type ProbeFinding,
  type ProbeSource,
  type ProbeStatus,
  type Result,
  type ServiceProblem,
} from '#shared-core';
import type { Clock, Scheduler } from '../../clock/index.ts';
import { createLinkLoss } from '../link/link-loss.ts';
import { createListeners } from '../listeners.ts';
import { isPseudoTerminalName } from '../port/line-ticket.ts';
import type { ProbeHub, ProbeReading } from '../probe-hub.ts';
import { noProbeStatus } from '../probe-status.ts';
import type { BatchItem, FromWorker } from './messages.ts';
import { createWorkerClock, type WorkerClock } from './worker-clock.ts';
import { createWorkerKeeper } from './worker-keeper.ts';
import type { ProbeWorker } from './worker-port.ts';

export interface IsolatedProbeHubOptions {
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  readonly startWorker: () => ProbeWorker;
}

type HeatMark = Extract<MarkType, 'heat-on' | 'heat-eased' | 'heat-off'>;

const retryConnectS = 1;
const restartingAdvice = 'The part that reads the serial port stopped and is being started again.';

/**
 * A hub whose serial work happens in a process of its own. That process may hang, crash or flood:
 * here it becomes a lost link, a new process and a new connection, and nothing else stops.
 */
export function createIsolatedProbeHub(options: IsolatedProbeHubOptions): ProbeHub {
  const { clock, scheduler, startWorker } = options;
  const listeners = createListeners();
  const loss = createLinkLoss((change) => listeners.tell('link', change));
  let workerClock: WorkerClock = createWorkerClock();
  let status: ProbeStatus = noProbeStatus;
  /** What should be connected, whatever happens to the process. */
  let wanted: ProbeSource | null = null;
  let lastHeat: HeatMark | null = null;
  let cancelRetry = () => {};

  const keeper = createWorkerKeeper({ scheduler, startWorker, heard, restarted, lost });

  function heard(message: FromWorker): void {
    switch (message.type) {
      case 'batch':
        keeper.post({ type: 'taken' });
        workerClock.compare(message.nowS, clock.monotonicS());
        takeBatch(message.items);
        return;
      case 'status':
        workerClock.compare(message.nowS, clock.monotonicS());
        tellStatus(inOurTime(message.status));
        return;
      case 'ports':
        listeners.tell('ports', message.ports);
        return;
      case 'pong':
      case 'connected':
      case 'found':
      case 'listed':
      case 'done':
        return;
      default:
        assertNever(message);
    }
  }

  function takeBatch(items: readonly BatchItem[]): void {
    let readings: ProbeReading[] = [];
    const flush = () => {
      const [first] = readings;
      if (first === undefined) return;
      loss.heard(first.atS);
      listeners.tell('readings', readings);
      readings = [];
    };
    for (const item of items) {
      if (item.kind === 'reading') {
        readings.push({ ...item.reading, atS: workerClock.toOurs(item.reading.atS) });
        continue;
      }
      flush();
      const atS = workerClock.toOurs(item.change.atS);
      if (item.change.state === 'lost') loss.lost(item.change.reason, atS);
      else if (item.change.reason === 'probe-changed') loss.otherProbe();
    }
    flush();
  }

  function tellStatus(next: ProbeStatus): void {
    status = next;
    listeners.tell('status', status);
  }

  function inOurTime(theirs: ProbeStatus): ProbeStatus {
    const latest = theirs.latest.map((reading) => ({
      ...reading,
      timeS: Math.max(0, workerClock.toOurs(reading.timeS)),
    }));
    return { ...theirs, latest };
  }

  function lost(): void {
    workerClock = createWorkerClock();
    if (wanted === null) return;
    loss.lost('silent', clock.monotonicS());
    tellStatus({ ...status, source: wanted, state: 'lost', advice: restartingAdvice });
  }

  function restarted(): void {
    if (wanted !== null) void reconnect(wanted);
  }

  async function reconnect(source: ProbeSource): Promise<void> {
    const connected = await keeper.ask({ type: 'connect', source }, 'connected');
    if (wanted !== source) return;
    if (connected === null) return;
    if (connected.result.ok) {
      if (lastHeat !== null) keeper.post({ type: 'heat', mark: lastHeat });
      return;
    }
    if (endedForGood(source, connected.result.error)) return;
    cancelRetry = scheduler.after(retryConnectS, () => {
      if (wanted === source) void reconnect(source);
    });
  }

  async function connect(source: ProbeSource): Promise<Result<ProbeStatus, ServiceProblem>> {
    cancelRetry();
    wanted = null;
    lastHeat = null;
    const connected = await keeper.ask({ type: 'connect', source }, 'connected');
    if (connected === null) return stopped;
    if (!connected.result.ok) return connected.result;
    wanted = source;
    status = inOurTime(connected.result.value);
    return { ok: true, value: status };
  }

  return {
    status: () => status,
    connect,
    async listPorts(): Promise<readonly PortInfo[]> {
      const listed = await keeper.ask({ type: 'list-ports' }, 'listed');
      return listed?.ports ?? [];
    },
    async find(path): Promise<Result<ProbeFinding, ServiceProblem>> {
      const found = await keeper.ask({ type: 'find', path }, 'found');
      return found?.result ?? stopped;
    },
    async disconnect() {
      cancelRetry();
      wanted = null;
      await keeper.ask({ type: 'disconnect' }, 'done');
      tellStatus(noProbeStatus);
    },
    on: listeners.on,
    followHeat(mark) {
      lastHeat = mark;
      keeper.post({ type: 'heat', mark });
    },
    async suspend() {
      await keeper.ask({ type: 'suspend' }, 'done');
    },
    async resume() {
      await keeper.ask({ type: 'resume' }, 'done');
    },
    async close() {
      cancelRetry();
      wanted = null;
      await keeper.close();
      listeners.clear();
    },
  };
}

/** A pseudo-terminal that is gone will not come back; its number may become somebody else's terminal. */
function endedForGood(source: ProbeSource, error: ServiceProblem): boolean {
  const isGone = error.kind === 'port-not-found';
  return isGone && source.kind === 'serial' && isPseudoTerminalName(source.path);
}

const stopped = {
  ok: false,
  error: { kind: 'internal', message: 'The part that reads the serial port stopped.' },
} as const;
