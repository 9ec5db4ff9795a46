import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { WebSocketServer } from 'ws';
import { fail, type Result, succeed } from '#shared-core';
import type { ServiceHandler } from '../service-handler.ts';
import { createAccess } from './access.ts';
import { answerPage } from './answer-page.ts';
import { isOwnHost, isOwnOrigin } from './own-address.ts';
import { attachSocketWindow, type SocketWindow, type SocketWindowDeps } from './socket-window.ts';

/** A day of four channels every second as CSV is about 4 MB; an import must fit in one message. */
const largestMessageBytes = 16 * 1024 * 1024;

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
  const listening = await listen(server, deps.port);
  if (!listening.ok) return listening;
  const port = listening.value;

  server.on('request', (request, response) => {
    void answerPage(request, response, { windowFolder: deps.windowFolder, port });
  });
  const urlWith = (token: string) => `http://127.0.0.1:${port}/#token=${token}`;
  const viewerUrl = urlWith(access.viewerToken);
  const sockets = acceptSockets(server, port, { services: deps.services, access, viewerUrl });

  return succeed({
    port,
    viewerUrl,
    issueUrl: () => urlWith(access.issueLaunchToken()),
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
  const sockets = new WebSocketServer({ noServer: true, maxPayload: largestMessageBytes });
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
    if (!welcome) {
      socket.end('HTTP/1.1 403 Forbidden\r\nConnection: close\r\nContent-Length: 0\r\n\r\n');
      return;
    }
    sockets.handleUpgrade(request, socket, head, (accepted) =>
      attachSocketWindow(accepted, { ...deps, admitted }),
    );
  });
  return sockets;
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
