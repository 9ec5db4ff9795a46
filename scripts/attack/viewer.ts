import { once } from 'node:events';
import { WebSocket } from 'ws';
import type { AttackedPlace } from './attacked-services.ts';

export function openSocket({ port }: AttackedPlace): Promise<WebSocket> {
  const own = `127.0.0.1:${port}`;
  const socket = new WebSocket(`ws://${own}/service`, { origin: `http://${own}` });
  return new Promise((resolve, reject) => {
    socket.once('open', () => {
      socket.on('error', () => {});
      resolve(socket);
    });
    socket.once('error', reject);
  });
}

export async function openViewer(place: AttackedPlace): Promise<WebSocket> {
  const socket = await openSocket(place);
  const token = place.viewerUrl.split('#token=')[1] ?? '';
  const welcome = once(socket, 'message');
  socket.send(JSON.stringify({ token }));
  await welcome;
  return socket;
}

export const isAnswer = (message: string) => message.startsWith('{"type":"answer"');

/** The answer to what is asked now; events come between. A socket that is closed instead fails. */
export function answerTo(socket: WebSocket, request: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const closed = () => reject(new Error('The socket was closed.'));
    const take = (data: unknown) => {
      if (!isAnswer(String(data))) return;
      socket.off('message', take);
      socket.off('close', closed);
      resolve(String(data));
    };
    socket.on('message', take);
    socket.once('close', closed);
    socket.send(request);
  });
}
