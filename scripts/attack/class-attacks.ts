import { once } from 'node:events';
import { get } from 'node:http';
import { setTimeout as pause } from 'node:timers/promises';
import { WebSocket } from 'ws';
import type { AttackedPlace } from './attacked-services.ts';

/** As many as a class has. */
const screens = 30;
const watchedMs = 5000;
const nonsensePerS = 100;
const unfinishedBytes = 900 * 1024;
const mostTries = 20;
const tryAgainMs = 250;

/** What our own window asks for when it opens on a screen of the class. */
const askedAtStart = ['app/describe', 'probe/status', 'run/status', 'ports/list', 'rigs/list'];

/** Thirty screens come in at the same moment by the lesson's address and watch. */
export async function classComesIn(place: AttackedPlace): Promise<string> {
  const come = await Promise.all(
    Array.from({ length: screens }, (_, index) => comeIn(place, index)),
  );
  const inside = come.filter((socket) => socket !== null);
  const told = inside.map(() => 0);
  for (const [index, socket] of inside.entries()) {
    socket.on('message', () => {
      told[index] = (told[index] ?? 0) + 1;
    });
    for (const [id, name] of askedAtStart.entries()) ask(socket, id, name);
  }
  await pause(watchedMs);
  leave(inside);
  const well = told.filter((messages) => messages > askedAtStart.length);
  return `${inside.length} let in, ${well.length} told of the run`;
}

/** The same screens, taken over: each asks as fast as it can for what it may not have, and never ends a long message. */
export async function classRunsWild(place: AttackedPlace): Promise<string> {
  const come = await Promise.all(
    Array.from({ length: screens }, (_, index) => comeIn(place, index)),
  );
  const inside = come.filter((socket) => socket !== null);
  for (let at = 0; at < (nonsensePerS * watchedMs) / 1000; at += 1) {
    for (const socket of inside) ask(socket, at, at % 2 === 0 ? 'runs/list' : 'packs/make');
    await pause(1000 / nonsensePerS);
  }
  for (const socket of inside) socket.send('x'.repeat(unfinishedBytes), { fin: false });
  await pause(2000);
  const left = inside.filter(({ readyState }) => readyState === WebSocket.OPEN);
  leave(inside);
  return `${inside.length} let in, ${left.length} left`;
}

/** By the address on the board, each screen from an address of its own; where there is no room just now, it tries again as our window does. */
async function comeIn({ classAddress }: AttackedPlace, index: number): Promise<WebSocket | null> {
  const { origin, host } = new URL(classAddress);
  const localAddress = `127.0.0.${2 + index}`;
  const token = await codeFrom(classAddress, localAddress);
  for (let tries = 0; tries < mostTries; tries += 1) {
    const socket = new WebSocket(`ws://${host}/service`, { origin, localAddress });
    const isOpen = await new Promise<boolean>((resolve) => {
      socket.once('open', () => resolve(true));
      socket.on('error', () => resolve(false));
    });
    if (isOpen) {
      const welcome = once(socket, 'message');
      socket.send(JSON.stringify({ token }));
      await welcome;
      return socket;
    }
    await pause(tryAgainMs);
  }
  return null;
}

function codeFrom(address: string, localAddress: string): Promise<string> {
  return new Promise((resolve, reject) => {
    get(address, { localAddress, agent: false }, (response) => {
      response.resume();
      resolve(response.headers.location?.split('#token=')[1] ?? '');
    }).on('error', reject);
  });
}

function ask(socket: WebSocket, id: number, name: string): void {
  socket.send(JSON.stringify({ id, name, body: {} }));
}

function leave(sockets: readonly WebSocket[]): void {
  for (const socket of sockets) socket.terminate();
}
