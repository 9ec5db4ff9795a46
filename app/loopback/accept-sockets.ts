import type { IncomingHttpHeaders, IncomingMessage, Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { WebSocketServer } from 'ws';
import { attachSocketWindow, type SocketWindow, type SocketWindowDeps } from './socket-window.ts';
import { windowLimits } from './window-limits.ts';

export interface AcceptDeps extends Omit<SocketWindowDeps, 'admitted' | 'access'> {
  /** Who may come in by this request. */
  readonly accessOf: (request: IncomingMessage) => SocketWindowDeps['access'];
  /** Windows at once, sockets that have not said who they are, and what a message may hold. */
  readonly limits: {
    readonly windows: number;
    readonly strangers: number;
    readonly messageBytes: number;
  };
  /** Whether a page of this very server is asking. */
  readonly isOwn: (headers: IncomingHttpHeaders) => boolean;
}

/** Lets windows in at `/service`; everybody else is refused and let go of. */
export function acceptSockets(server: Server, deps: AcceptDeps): WebSocketServer {
  const { limits, isOwn } = deps;
  const sockets = new WebSocketServer({ noServer: true, maxPayload: limits.messageBytes });
  const strangers = new Set<Duplex>();
  let commanding: SocketWindow | null = null;
  const admitted = (window: SocketWindow) => {
    if (!window.mayCommand) return;
    commanding?.demote();
    commanding = window;
  };
  server.on('upgrade', (request, socket, head) => {
    socket.on('error', () => socket.destroy());
    const welcome = request.url === '/service' && isOwn(request.headers);
    if (!welcome) return refuse(socket, '403 Forbidden');
    const hasRoom = strangers.size < limits.strangers && sockets.clients.size < limits.windows;
    if (!hasRoom) return refuse(socket, '503 Service Unavailable');
    strangers.add(socket);
    const known = limitHello(socket);
    socket.once('close', () => strangers.delete(socket));
    sockets.handleUpgrade(request, socket, head, (accepted) =>
      attachSocketWindow(accepted, {
        ...deps,
        access: deps.accessOf(request),
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
