import type { WebSocket } from 'ws';
import type { z } from 'zod';
import type { Asker, ClassViewDoor } from '#main';
import { type EventName, events, requests, type ServiceProblem, wire } from '#shared-core';
import type { ServiceHandler } from '../service-handler.ts';
import type { Access, Admission } from './access.ts';
import { parseHello, parseRequest } from './parse-message.ts';
import { createRequestQueue } from './request-queue.ts';
import { windowLimits } from './window-limits.ts';

/** Close codes of RFC 6455: 1003 the data is of a kind we cannot accept, 1008 policy. */
const closeCodes = { unreadable: 1003, policy: 1008 } as const;

const acts: ReadonlySet<string> = new Set(
  Object.entries(requests).flatMap(([name, { commands }]) => (commands ? [name] : [])),
);

export interface SocketWindow {
  readonly mayCommand: boolean;
  /** Another window took over: this one goes on watching. */
  demote(): void;
}

export interface SocketWindowDeps {
  readonly services: ServiceHandler;
  readonly access: Pick<Access, 'admit' | 'heardFrom' | 'viewerToken'>;
  /** Where a second, viewing window opens; told to a window that commands. */
  readonly viewerUrl: string;
  /** The class's own screens, opened from a window that commands. */
  readonly classView?: ClassViewDoor;
  /** Called once the window has shown a good token. */
  readonly admitted: (window: SocketWindow) => void;
}

/** Speaks the wire format with one window: hello, welcome, then requests one way and events the other. */
export function attachSocketWindow(socket: WebSocket, deps: SocketWindowDeps): void {
  const { services, access } = deps;
  let admission: Admission | null = null;
  let unsubscribe: readonly (() => void)[] = [];
  const helloTimer = setTimeout(
    () => socket.close(closeCodes.policy, 'no hello'),
    windowLimits.helloWithinMs,
  );

  /** Settles once the message has left, or never will. */
  function send(message: z.infer<typeof wire.message>): Promise<void> {
    if (socket.readyState !== socket.OPEN) return Promise.resolve();
    if (socket.bufferedAmount > windowLimits.waitingBytes) {
      socket.terminate();
      return Promise.resolve();
    }
    return new Promise((resolve) => socket.send(JSON.stringify(message), () => resolve()));
  }

  function welcome(accepted: Admission): void {
    clearTimeout(helloTimer);
    admission = accepted;
    void send({ type: 'welcome', ...accepted });
    unsubscribe = (Object.keys(events) as EventName[]).map((name) =>
      services.on(name, (body) => void send({ type: 'event', name, body })),
    );
    deps.admitted({
      mayCommand: accepted.mayCommand,
      demote() {
        admission = { mayCommand: false, secret: access.viewerToken };
        void send({ type: 'welcome', ...admission });
      },
    });
  }

  async function answer(
    { id, name, body }: z.infer<typeof wire.request>,
    characters: number,
    asker: Asker,
  ): Promise<void> {
    if (characters > windowLimits.requestCharacters && name !== 'imports/add') {
      const error = { kind: 'request-invalid', message: 'it is too long' } as const;
      await send({ type: 'answer', id, result: { ok: false, error } });
      return;
    }
    const result = await services
      .handle(name, body, asker)
      .catch((error: unknown) => ({ ok: false as const, error: internalProblem(error) }));
    await send({ type: 'answer', id, result });
  }

  const queue = createRequestQueue({
    limits: windowLimits,
    nowMs: () => performance.now(),
    pause: () => socket.pause(),
    resume: () => socket.resume(),
  });

  function take(text: string): void {
    const request = parseRequest(text);
    if (request === null) {
      socket.close(closeCodes.unreadable, 'not a request');
      return;
    }
    queue.add({
      lane: acts.has(request.name) ? 'acts' : 'reads',
      characters: text.length,
      // Asked when its turn comes: the window may have been demoted meanwhile.
      work: async () => {
        if (admission !== null) await answer(request, text.length, askerOf(admission, deps));
      },
    });
  }

  socket.on('message', (data, isBinary) => {
    if (isBinary) {
      socket.close(closeCodes.unreadable, 'text only');
      return;
    }
    const text = data.toString();
    if (admission !== null) {
      access.heardFrom(admission.secret);
      take(text);
      return;
    }
    const accepted = access.admit(parseHello(text)?.token ?? '');
    if (accepted === null) socket.close(wire.refusedCode, 'token refused');
    else welcome(accepted);
  });
  // A socket error is always followed by `close`, which does the tidying.
  socket.on('error', () => {});
  socket.on('close', () => {
    clearTimeout(helloTimer);
    queue.close();
    for (const stop of unsubscribe) stop();
  });
}

function askerOf({ mayCommand }: Admission, { viewerUrl, classView }: SocketWindowDeps): Asker {
  if (!mayCommand) return { mayCommand };
  const offer = { by: 'address', address: viewerUrl } as const;
  return { mayCommand, secondScreen: { offer, ...(classView && { classView }) } };
}

function internalProblem(error: unknown): ServiceProblem {
  return { kind: 'internal', message: error instanceof Error ? error.message : String(error) };
}
