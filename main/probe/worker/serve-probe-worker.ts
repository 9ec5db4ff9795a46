import {
  assertNever,
  fail,
  type ProbeStatus,
  problemToSend,
  type Result,
  type ServiceProblem,
} from '#shared-core';
import type { Clock, Scheduler } from '../../clock/index.ts';
import type { ProbeHub } from '../probe-hub.ts';
import { type FromWorker, type ToWorker, toWorkerSchema } from './messages.ts';
import { createOutbox } from './outbox.ts';
import type { WorkerPort } from './worker-port.ts';

export interface ProbeWorkerParts {
  readonly port: WorkerPort;
  readonly hub: ProbeHub;
  readonly clock: Clock;
  readonly scheduler: Scheduler;
  /** Ends the process once everything is closed. */
  readonly exit: () => void;
}

/** Fifty batches a second at most: five times as fast as anybody looks, and bounded. */
const batchEveryS = 0.02;
/** How often it is told how far the batches go: often beside the seconds in which a monitor thinks. */
const heardEveryS = 0.05;
/** A stopped reader of ours must not fill the memory: half a minute of `heard` may wait for it. */
const mostUntaken = 600;

/** The serial process: does what it is asked with a hub of its own and tells what the hub tells. */
export function serveProbeWorker(parts: ProbeWorkerParts): void {
  const { port, hub, clock, scheduler, exit } = parts;
  const outbox = createOutbox();
  let newStatus: ProbeStatus | null = null;
  const post = (message: FromWorker) => port.post(message);

  hub.on('readings', (readings) =>
    outbox.put(readings.map((reading) => ({ kind: 'reading', reading }))),
  );
  hub.on('link', (change) => outbox.put([{ kind: 'link', change }]));
  hub.on('status', (status) => {
    newStatus = status;
  });
  hub.on('ports', (ports) => post({ type: 'ports', ports: [...ports] }));

  function postBatch(): void {
    const items = outbox.next();
    if (items !== null) post({ type: 'batch', items: [...items] });
  }

  /**
   * Says how far the batches go. The moment of the turn before, not of this one: after a halt of this process its timers come
   * first, and what arrived meanwhile is only read after them.
   */
  function postHeard(): void {
    const upToS = Math.min(lastTurnS, outbox.waitingSinceS() ?? lastTurnS);
    lastTurnS = clock.monotonicS();
    if (upToS - toldUpToS < heardEveryS || untaken >= mostUntaken) return;
    toldUpToS = upToS;
    untaken += 1;
    post({ type: 'heard', upToS });
  }

  let lastTurnS = clock.monotonicS();
  let toldUpToS = Number.NEGATIVE_INFINITY;
  /** Told since the services last said anything; they say something every second while they are well. */
  let untaken = 0;
  // The first word: from now on a missing one means something.
  postHeard();

  const stop = scheduler.every(batchEveryS, () => {
    postBatch();
    postHeard();
    // While the services do not take batches, only the newest status is kept.
    if (newStatus === null || outbox.isBlocked()) return;
    post({ type: 'status', status: withDropped(newStatus) });
    newStatus = null;
  });

  function withDropped(status: ProbeStatus): ProbeStatus {
    return {
      ...status,
      droppedReadings: outbox.dropped(),
      thinnedHeadReadings: outbox.thinned(),
    };
  }

  async function obey(message: ToWorker): Promise<void> {
    switch (message.type) {
      case 'connect':
        post({
          type: 'connected',
          id: message.id,
          result: toSend(await hub.connect(message.source)),
        });
        return;
      case 'disconnect':
        await hub.disconnect();
        postBatch();
        post({ type: 'done', id: message.id });
        return;
      case 'list-ports':
        post({ type: 'listed', id: message.id, ports: [...(await hub.listPorts())] });
        return;
      case 'find':
        post({ type: 'found', id: message.id, result: toSend(await hub.find(message.path)) });
        return;
      case 'suspend':
        await hub.suspend();
        // The computer may stop right after the answer: what was heard before goes out first.
        postBatch();
        post({ type: 'done', id: message.id });
        return;
      case 'resume':
        await hub.resume();
        post({ type: 'done', id: message.id });
        return;
      case 'mark':
        hub.followMark(message);
        return;
      case 'ping':
        post({ type: 'pong', count: message.count });
        return;
      case 'taken':
        outbox.taken();
        return;
      case 'close':
        stop();
        await hub.close();
        exit();
        return;
      default:
        assertNever(message);
    }
  }

  port.on((heard) => {
    untaken = 0;
    const message = toWorkerSchema.safeParse(heard);
    if (message.success) void obey(message.data);
  });
}

/** The words of a problem were made here, and are told where nobody knows what from. */
function toSend<T>(answer: Result<T, ServiceProblem>): Result<T, ServiceProblem> {
  return answer.ok ? answer : fail(problemToSend(answer.error));
}
