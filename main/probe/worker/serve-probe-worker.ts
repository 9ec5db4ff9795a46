import { assertNever, type ProbeStatus } from '#shared-core';
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
    if (items !== null) post({ type: 'batch', nowS: clock.monotonicS(), items: [...items] });
  }

  const stop = scheduler.every(batchEveryS, () => {
    postBatch();
    // While the services do not take batches, only the newest status is kept.
    if (newStatus === null || outbox.isBlocked()) return;
    post({ type: 'status', nowS: clock.monotonicS(), status: withDropped(newStatus) });
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
        post({ type: 'connected', id: message.id, result: await hub.connect(message.source) });
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
        post({ type: 'found', id: message.id, result: await hub.find(message.path) });
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
      case 'heat':
        hub.followHeat(message.mark);
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
    const message = toWorkerSchema.safeParse(heard);
    if (message.success) void obey(message.data);
  });
}
