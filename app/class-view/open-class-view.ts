import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { wire } from '#shared-core';
import { securityHeaders, type WindowFiles } from '../files/index.ts';
import { acceptSockets } from '../loopback/accept-sockets.ts';
import { answerPage } from '../loopback/answer-page.ts';
import type { ServiceHandler } from '../service-handler.ts';
import { createAttempts } from './attempts.ts';
import { classLimits } from './class-limits.ts';
import { asTyped } from './lesson-code.ts';
import { createOnlookerServices } from './onlooker-services.ts';
import { createPace } from './pace.ts';

export interface ClassListener {
  readonly address: string;
  onlookers(): number;
  close(): Promise<void>;
}

export interface ClassListenerDeps {
  readonly services: ServiceHandler;
  readonly windowFiles: WindowFiles;
  /** Of this computer in the local network. */
  readonly host: string;
  /** Looked for first; the system chooses where it is taken. */
  readonly usualPort: number;
  readonly code: string;
  readonly nowMs: () => number;
}

/** Listens in the local network; null where the system does not allow it. */
export async function openClassView(deps: ClassListenerDeps): Promise<ClassListener | null> {
  const { host, code, nowMs, windowFiles } = deps;
  const server = createServer();
  server.maxConnections = classLimits.connections;
  server.headersTimeout = 5000;
  server.requestTimeout = 5000;
  limitConnectionsOfOne(server);
  const port = (await listen(server, host, deps.usualPort)) ?? (await listen(server, host, 0));
  if (port === null) return null;

  const ownName = `${host}:${port}`;
  const attempts = createAttempts(nowMs);
  const mayAsk = createPace(nowMs, classLimits.pages);
  const services = createOnlookerServices(deps.services);
  const isCode = (typed: string, caller: string) => {
    if (!attempts.mayTry(caller)) return false;
    if (asTyped(typed) === code) return true;
    attempts.wrong(caller);
    return false;
  };

  server.on('request', (request, response) => {
    if (!mayAsk()) return refuse(response, 503, 'Too many at once: try again in a moment.');
    const typed = /^\/([a-z0-9]{6})$/i.exec(request.url ?? '')?.[1];
    if (typed === undefined || request.headers.host !== ownName) {
      void answerPage(request, response, { windowFiles, isOwnHost: (name) => name === ownName });
    } else if (isCode(typed, callerOf(request))) {
      response.writeHead(303, { ...securityHeaders(null), Location: `/#token=${code}` }).end();
    } else {
      refuse(response, 403, 'This is not the code of a lesson under way. Read it again.');
    }
  });
  const sockets = acceptSockets(server, {
    services,
    limits: classLimits,
    viewerUrl: '',
    isOwn: (headers) => headers.host === ownName && headers.origin === `http://${ownName}`,
    accessOf: (request) => ({
      viewerToken: code,
      // A lesson's code lets any number in.
      heardFrom: () => undefined,
      admit: (token) =>
        isCode(token, callerOf(request)) ? { mayCommand: false, secret: code } : null,
    }),
  });

  return {
    address: `http://${ownName}/${code}`,
    onlookers: () => sockets.clients.size,
    async close() {
      services.close();
      // Not a lost connection: the screens are told that this is over, and don't come back.
      for (const socket of sockets.clients) socket.close(wire.refusedCode, 'lesson over');
      const cutOff = setTimeout(() => server.closeAllConnections(), 500);
      sockets.close();
      await new Promise((resolve) => {
        server.close(resolve);
        server.closeIdleConnections();
        setTimeout(() => {
          for (const socket of sockets.clients) socket.terminate();
        }, 500).unref();
      });
      clearTimeout(cutOff);
    },
  };
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, {
    ...securityHeaders(null),
    'Content-Type': 'text/plain; charset=utf-8',
    Connection: 'close',
  });
  response.end(`${sentence}\n`);
}

function callerOf({ socket }: IncomingMessage): string {
  return socket.remoteAddress ?? '';
}

function limitConnectionsOfOne(server: Server): void {
  const open = new Map<string, number>();
  server.on('connection', (socket) => {
    const caller = socket.remoteAddress ?? '';
    const count = (open.get(caller) ?? 0) + 1;
    open.set(caller, count);
    socket.once('close', () => {
      const left = (open.get(caller) ?? 1) - 1;
      if (left > 0) open.set(caller, left);
      else open.delete(caller);
    });
    if (count > classLimits.connectionsOfOne) socket.destroy();
  });
}

function listen(server: Server, host: string, port: number): Promise<number | null> {
  return new Promise((resolve) => {
    const failed = () => resolve(null);
    server.once('error', failed);
    server.listen(port, host, () => {
      server.off('error', failed);
      resolve((server.address() as AddressInfo).port);
    });
  });
}
