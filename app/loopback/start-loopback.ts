import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { ClassViewDoor } from '#main';
import { fail, type Result, succeed } from '#shared-core';
import type { WindowFiles } from '../files/index.ts';
import type { ServiceHandler } from '../service-handler.ts';
import { acceptSockets } from './accept-sockets.ts';
import { createAccess } from './access.ts';
import { answerDoor, doorPath } from './answer-door.ts';
import { answerPage } from './answer-page.ts';
import type { Door } from './door-file.ts';
import { isOwnHost, isOwnOrigin } from './own-address.ts';
import { windowLimits } from './window-limits.ts';

export interface LoopbackDeps {
  readonly services: ServiceHandler;
  readonly classView?: ClassViewDoor;
  /** The built window. */
  readonly windowFiles: WindowFiles;
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
    } else {
      void answerPage(request, response, {
        windowFiles: deps.windowFiles,
        isOwnHost: (host) => isOwnHost(host, port),
      });
    }
  });
  const viewerUrl = urlWith(access.viewerToken);
  const sockets = acceptSockets(server, {
    ...(deps.classView && { classView: deps.classView }),
    services: deps.services,
    accessOf: () => access,
    viewerUrl,
    limits: windowLimits,
    isOwn: ({ host, origin }) => isOwnHost(host, port) && isOwnOrigin(origin, port),
  });

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
