import {
  type EventBody,
  type EventName,
  events,
  fail,
  type RequestName,
  type Result,
  requests,
  type ServiceProblem,
  succeed,
  wire,
} from '#shared-core';
import type { ConnectedService, Connection } from './connected-service.ts';
import { createListeners } from './listeners.ts';
import { waitBeforeRetryMs } from './wait-before-retry.ts';

/** The few things of a WebSocket that are used, so that tests can stand in for it. */
export interface Socket {
  /** As browsers count it: 1 is open. One that closes says so before it tells by `onclose`. */
  readonly readyState: number;
  send(text: string): void;
  close(): void;
  onopen: (() => void) | null;
  onclose: ((closing: { readonly code: number }) => void) | null;
  onmessage: ((message: { readonly data: unknown }) => void) | null;
}

export interface SocketSurroundings {
  readonly openSocket: () => Socket;
  /** What opens the door: the address's token at first, later the secret of the last welcome. */
  readonly token: () => string;
  readonly keepSecret: (secret: string) => void;
  readonly after: (waitMs: number, task: () => void) => void;
  /** 0 … 1, spreads the attempts of several windows. */
  readonly random: () => number;
}

const openState = 1;

interface Pending {
  readonly name: RequestName;
  readonly settle: (result: Result<unknown, ServiceProblem>) => void;
}

/**
 * The service behind a websocket. It keeps trying to get the socket back; what was asked meanwhile
 * is answered with `disconnected`, because a mark sent minutes late would carry the wrong time, and what was on its way with `unanswered`.
 */
export function createSocketService(around: SocketSurroundings): ConnectedService {
  const eventListeners = createListeners<Record<EventName, unknown>>();
  const connectionListeners = createListeners<{ connection: Connection }>();
  const pending = new Map<number, Pending>();
  let outbox: string[] = [];
  let connection: Connection = 'connecting';
  let socket: Socket | null = null;
  let nextId = 0;
  let attempt = 0;

  const become = (next: Connection) => {
    connection = next;
    connectionListeners.emit('connection', next);
  };

  const connect = () => {
    const opened = around.openSocket();
    socket = opened;
    opened.onopen = () => {
      opened.send(JSON.stringify({ token: around.token() }));
    };
    opened.onmessage = ({ data }) => receive(data);
    opened.onclose = ({ code }) => {
      // What was never sent changed nothing; of what was, only the answer would tell.
      const kind = connection === 'open' ? 'unanswered' : 'disconnected';
      outbox = [];
      for (const { settle } of pending.values()) settle(fail({ kind }));
      pending.clear();
      if (code === wire.refusedCode) return become('refused');
      become('lost');
      around.after(waitBeforeRetryMs(attempt, around.random()), connect);
      attempt += 1;
    };
  };

  const welcome = (secret: string) => {
    attempt = 0;
    around.keepSecret(secret);
    for (const text of outbox) socket?.send(text);
    outbox = [];
    become('open');
  };

  const receive = (data: unknown) => {
    const message = parseMessage(data);
    if (message === null) return;
    if (message.type === 'welcome') return welcome(message.secret);
    if (message.type === 'event') {
      const name = Object.hasOwn(events, message.name) ? (message.name as EventName) : null;
      const body = name && events[name].safeParse(message.body);
      if (name && body?.success) eventListeners.emit(name, body.data);
      return;
    }
    const asked = pending.get(message.id);
    if (!asked) return;
    pending.delete(message.id);
    if (!message.result.ok) return asked.settle(fail(message.result.error));
    const answer = requests[asked.name].answer.safeParse(message.result.value);
    asked.settle(
      answer.success
        ? succeed(answer.data)
        : fail({ kind: 'internal', message: `answer to ${asked.name} not understood` }),
    );
  };

  connect();
  return {
    connection: () => connection,
    onConnection: (listener) => connectionListeners.on('connection', listener),
    on: (name, listener) =>
      eventListeners.on(name, (body) => listener(body as EventBody<typeof name>)),
    request: (name, body) =>
      new Promise((resolve) => {
        const isGone = connection === 'open' && socket?.readyState !== openState;
        if (isGone || connection === 'lost' || connection === 'refused')
          return resolve(fail({ kind: 'disconnected' }));
        const id = nextId++;
        // The answer was parsed with the schema of this very name before it is settled.
        pending.set(id, { name, settle: resolve as Pending['settle'] });
        const text = JSON.stringify({ id, name, body });
        if (connection === 'open') socket?.send(text);
        else outbox.push(text);
      }),
  };
}

function parseMessage(data: unknown) {
  if (typeof data !== 'string') return null;
  try {
    const message = wire.message.safeParse(JSON.parse(data));
    return message.success ? message.data : null;
  } catch {
    return null;
  }
}
