import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Duplex } from 'node:stream';
import { WebSocketServer } from 'ws';
import { fail, type Result, succeed } from '#shared-core';
import type { ServiceHandler } from '../service-handler.ts';
import { createAccess } from './access.ts';
import { answerDoor, doorPath } from './answer-door.ts';
import { answerPage } from './answer-page.ts';
import type { Door } from './door-file.ts';
import { isOwnHost, isOwnOrigin } from './own-address.ts';
import { attachSocketWindow, type SocketWindow, type SocketWindowDeps } from './socket-window.ts';
import { windowLimits } from './window-limits.ts';

export interface LoopbackDeps {
  readonly services: ServiceHandler;
  /** The built window. */
  readonly windowFolder: string;
  /** 0 lets the system choose. */
  readonly port: number;
  readonly randomToken: () => string;
}

export interface Loopback {
  readonly port: number;
  readonly viewerUrl: string;
  /** A fresh address for the commanding window; the one given before stops working. */
  issueUrl(): string;
  /** What the door file holds: it opens windows for as long as this runs. */
  readonly door: Door;
  close(): Promise<void>;
}

export type LoopbackProblem =
  | { readonly kind: 'port-taken'; readonly port: number }
  | { readonly kind: 'cannot-listen'; readonly port: number; readonly message: string };

/** Serves the window and its socket to this computer only. */
export async function startLoopback(
  deps: LoopbackDeps,
): Promise<Result<Loopback, LoopbackProblem>> {
  const access = createAccess(deps.randomToken);
  const server = createServer();
  server.maxConnections = windowLimits.connections;
  const listening = await listen(server, deps.port);
  if (!listening.ok) return listening;
  const port = listening.value;

  const address = `http://127.0.0.1:${port}`;
  const urlWith = (token: string) => `${address}/#token=${token}`;
  const issueUrl = () => urlWith(access.issueLaunchToken());
  server.on('request', (request, response) => {
    if (request.method === 'POST' && request.url === doorPath) {
      void answerDoor(request, response, { port, isDoorKey: access.isDoorKey, issueUrl });
    } else void answerPage(request, response, { windowFolder: deps.windowFolder, port });
  });
  const viewerUrl = urlWith(access.viewerToken);
  const sockets = acceptSockets(server, port, { services: deps.services, access, viewerUrl });

  return succeed({
    port,
    viewerUrl,
    issueUrl,
    door: { address: `${address}${doorPath}`, key: access.doorKey },
    async close() {
      for (const socket of sockets.clients) socket.close(1001, 'stopping');
      // A window that does not answer the goodbye must not keep the program alive.
      const cutOff = setTimeout(() => {
        for (const socket of sockets.clients) socket.terminate();
      }, 500);
      sockets.close();
      await new Promise((resolve) => {
        server.close(resolve);
        server.closeIdleConnections();
      });
      clearTimeout(cutOff);
    },
  });
}

function acceptSockets(
  server: Server,
  port: number,
  deps: Omit<SocketWindowDeps, 'admitted'>,
): WebSocketServer {
  const sockets = new WebSocketServer({ noServer: true, maxPayload: windowLimits.messageBytes });
  const strangers = new Set<Duplex>();
  let commanding: SocketWindow | null = null;
  const admitted = (window: SocketWindow) => {
    if (!window.mayCommand) return;
    commanding?.demote();
    commanding = window;
  };
  server.on('upgrade', (request, socket, head) => {
    socket.on('error', () => socket.destroy());
    const welcome =
      request.url === '/service' &&
      isOwnHost(request.headers.host, port) &&
      isOwnOrigin(request.headers.origin, port);
    if (!welcome) return refuse(socket, '403 Forbidden');
    const hasRoom =
      strangers.size < windowLimits.strangers && sockets.clients.size < windowLimits.windows;
    if (!hasRoom) return refuse(socket, '503 Service Unavailable');
    strangers.add(socket);
    const known = limitHello(socket);
    socket.once('close', () => strangers.delete(socket));
    sockets.handleUpgrade(request, socket, head, (accepted) =>
      attachSocketWindow(accepted, {
        ...deps,
        admitted(window) {
          strangers.delete(socket);
          known();
          admitted(window);
        },
      }),
    );
  });
  return sockets;
}

/** A caller that keeps its end open is not waited for. */
function refuse(socket: Duplex, status: string): void {
  const answer = `HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`;
  socket.end(answer, () => socket.destroy());
}

/** Cuts off who sends more than a hello before saying who it is; the returned function lifts the limit. */
function limitHello(socket: Duplex): () => void {
  let bytes = 0;
  const count = (chunk: Uint8Array) => {
    bytes += chunk.length;
    if (bytes > windowLimits.helloBytes) socket.destroy();
  };
  socket.on('data', count);
  return () => socket.off('data', count);
}

function listen(server: Server, port: number): Promise<Result<number, LoopbackProblem>> {
  return new Promise((resolve) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      resolve(
        error.code === 'EADDRINUSE'
          ? fail({ kind: 'port-taken', port })
          : fail({ kind: 'cannot-listen', port, message: error.message }),
      );
    });
    server.listen(port, '127.0.0.1', () =>
      resolve(succeed((server.address() as AddressInfo).port)),
    );
  });
}
