import {
  assertNever,
  type PortInfo,
  type ProbeSource,
  type ProbeStatus,
  type RequestAnswer,
  type Result,
  type ServiceProblem,
  worded,
} from '#shared-core';
import type { Scheduler } from '../../clock/index.ts';
import { createLinkLoss } from '../link/link-loss.ts';
import { createListeners } from '../listeners.ts';
import { isPseudoTerminalName } from '../port/line-ticket.ts';
import type { NumberedMark, ProbeHub, ProbeReading } from '../probe-hub.ts';
import { noProbeStatus } from '../probe-status.ts';
import type { BatchItem, FromWorker } from './messages.ts';
import { createWorkerKeeper } from './worker-keeper.ts';
import type { ProbeWorker } from './worker-port.ts';

export interface IsolatedProbeHubOptions {
  readonly scheduler: Scheduler;
  readonly startWorker: () => ProbeWorker;
}

const retryConnectS = 1;
/** A wish outlives the process that was to meet it; when this many could not, the person is told. */
const mostProcessesTried = 3;
const startingAdvice = worded('Starting the serial reader …');
const restartingAdvice = worded(
  'The part that reads the serial port stopped and is being started again.',
);

/**
 * A hub whose serial work happens in a process of its own. That process may hang, crash or flood:
 * here it becomes a lost link, a new process and a new connection, and nothing else stops.
 */
export function createIsolatedProbeHub(options: IsolatedProbeHubOptions): ProbeHub {
  const { scheduler, startWorker } = options;
  const listeners = createListeners();
  const loss = createLinkLoss((change) => listeners.tell('link', change));
  let status: ProbeStatus = noProbeStatus;
  /** Null until a process has said how far it told; a process that is gone tells nothing more. */
  let heardUpToS: number | null = null;
  /** When the newest thing that was told happened: a batch goes further than what was said of it before. */
  let toldUpToS = Number.NEGATIVE_INFINITY;
  let listing: Promise<readonly PortInfo[]> | null = null;
  /** What should be connected, whatever happens to the process. */
  let wanted: ProbeSource | null = null;
  /** What a person has just asked for; kept until it is connected, refused or replaced by another wish. */
  let wish: ProbeSource | null = null;
  /** What was marked since the rehearsal rig was connected: one that is started again is told all of it. */
  let marks: NumberedMark[] = [];
  let cancelRetry = () => {};

  const keeper = createWorkerKeeper({ scheduler, startWorker, heard, restarted, lost });

  function heard(message: FromWorker): void {
    switch (message.type) {
      case 'batch':
        keeper.post({ type: 'taken' });
        takeBatch(message.items);
        return;
      case 'heard':
        heardUpToS = message.upToS;
        return;
      case 'status':
        tellStatus(message.status);
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
      if (readings.length === 0) return;
      // Of several probes others may be heard while that in the head is lost.
      const head = readings.find(({ channel }) => channel === 'head');
      if (head !== undefined) loss.heard(head.atS);
      toldUpToS = readings.reduce((latestS, { atS }) => Math.max(latestS, atS), toldUpToS);
      listeners.tell('readings', readings);
      readings = [];
    };
    for (const item of items) {
      if (item.kind === 'reading') {
        readings.push(item.reading);
        continue;
      }
      flush();
      if (item.kind === 'given-up') {
        const { readings: count, fromS, toS } = item;
        listeners.tell('givenUp', { readings: count, fromS, toS });
        continue;
      }
      const { state, reason, atS } = item.change;
      if (state === 'lost') {
        loss.lost(reason, atS);
        continue;
      }
      if (reason === 'probe-changed') loss.otherProbe();
      loss.heard(atS);
    }
    flush();
  }

  function tellStatus(next: ProbeStatus): void {
    status = next;
    listeners.tell('status', status);
  }

  function lost(): void {
    const upToS = Math.max(toldUpToS, heardUpToS ?? toldUpToS);
    heardUpToS = null;
    if (wanted === null) return;
    loss.readerStopped(upToS);
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
      for (const mark of marks) keeper.post({ type: 'mark', ...mark });
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
    wish = source;
    marks = [];
    if (!keeper.isReady()) tellStatus(startingStatus(source));
    for (let tries = 1; ; tries += 1) {
      const connected = await keeper.ask({ type: 'connect', source }, 'connected');
      if (connected?.result.ok) return took(source, connected.result.value);
      const isOver = connected !== null || wish !== source || tries >= mostProcessesTried;
      if (!isOver) continue;
      if (wish === source) wish = null;
      if (status.state === 'starting') tellStatus(noProbeStatus);
      return connected?.result ?? stopped;
    }
  }

  function took(source: ProbeSource, next: ProbeStatus): Result<ProbeStatus, ServiceProblem> {
    if (wish !== source) return { ok: false, error: { kind: 'superseded' } };
    wish = null;
    wanted = source;
    status = next;
    return { ok: true, value: status };
  }

  return {
    status: () => status,
    heardUpToS: () => heardUpToS ?? Number.POSITIVE_INFINITY,
    connect,
    // However many ask at once, one answer serves them all.
    listPorts(): Promise<readonly PortInfo[]> {
      listing ??= keeper
        .ask({ type: 'list-ports' }, 'listed')
        .then((listed) => listed?.ports ?? [])
        .finally(() => {
          listing = null;
        });
      return listing;
    },
    async find(path): Promise<Result<RequestAnswer<'probe/find'>, ServiceProblem>> {
      const found = await keeper.ask({ type: 'find', path }, 'found');
      return found?.result ?? stopped;
    },
    async disconnect() {
      cancelRetry();
      wanted = null;
      wish = null;
      await keeper.ask({ type: 'disconnect' }, 'done');
      tellStatus(noProbeStatus);
    },
    on: listeners.on,
    followMark(mark) {
      if (wanted?.kind !== 'demo') return;
      const numbered = { markId: mark.markId, mark: mark.mark };
      marks.push(numbered);
      keeper.post({ type: 'mark', ...numbered });
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
      wish = null;
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

function startingStatus(source: ProbeSource): ProbeStatus {
  return { ...noProbeStatus, source, state: 'starting', advice: startingAdvice };
}

const stopped = {
  ok: false,
  error: { kind: 'internal', message: worded('The part that reads the serial port stopped.') },
} as const;
