import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { WebSocket } from 'ws';
import { createWindowFiles } from '../../../app/files/index.ts';
import { isDoorOpen } from '../../../app/loopback/is-door-open.ts';
import { type Loopback, startLoopback } from '../../../app/loopback/start-loopback.ts';
import type { ServiceHandler } from '../../../app/service-handler.ts';

/** Services that answer with what they were asked, and say who may command. */
function echoServices() {
  const listeners = new Map<string, Set<(body: never) => void>>();
  const services: ServiceHandler = {
    async handle(name, body, asker) {
      if (name === 'fall') throw new Error('fell over');
      return { ok: true, value: { name, body, ...asker } };
    },
    on(name, listener) {
      const group = listeners.get(name) ?? new Set();
      listeners.set(name, group.add(listener));
      return () => group.delete(listener);
    },
  };
  const emit = (name: string, body: unknown) =>
    listeners.get(name)?.forEach((listener) => {
      listener(body as never);
    });
  const count = () => [...listeners.values()].reduce((sum, group) => sum + group.size, 0);
  return { services, emit, count };
}

let folder: string;
let echo: ReturnType<typeof echoServices>;
let loopback: Loopback;

beforeEach(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'loopback-'));
  writeFileSync(path.join(folder, 'index.html'), '<p>window</p>');
  echo = echoServices();
  let count = 0;
  const started = await startLoopback({
    services: echo.services,
    windowFiles: createWindowFiles(folder),
    port: 0,
    randomToken: () => `token-${++count}`,
  });
  if (!started.ok) throw new Error(started.error.kind);
  loopback = started.value;
});
afterEach(async () => {
  await loopback.close();
  rmSync(folder, { recursive: true });
});

interface Answer {
  readonly status: number;
  readonly text: string;
  readonly policy: string | undefined;
}

function get(target: string, options: { host?: string; method?: string } = {}): Promise<Answer> {
  const { port } = loopback;
  return new Promise((resolve, reject) => {
    request(
      {
        port,
        host: '127.0.0.1',
        path: target,
        method: options.method ?? 'GET',
        headers: { host: options.host ?? `127.0.0.1:${port}` },
        agent: false,
      },
      (response) => {
        let text = '';
        response.setEncoding('utf8').on('data', (part: string) => {
          text += part;
        });
        response.on('end', () => {
          const policy = response.headers['content-security-policy'];
          resolve({ status: response.statusCode ?? 0, text, policy: policy?.toString() });
        });
      },
    )
      .on('error', reject)
      .end();
  });
}

/** A window's socket: what arrives is queued and taken in order. */
function openSocket(options: { origin?: string; path?: string } = {}) {
  const own = `127.0.0.1:${loopback.port}`;
  const socket = new WebSocket(`ws://${own}${options.path ?? '/service'}`, {
    origin: options.origin ?? `http://${own}`,
  });
  const arrived: unknown[] = [];
  let wake = () => {};
  const note = (item: unknown) => {
    arrived.push(item);
    wake();
  };
  socket.on('message', (data) => note(JSON.parse(data.toString())));
  socket.on('close', (code) => note({ closed: code }));
  socket.on('error', (error) => note({ error: error.message }));
  const opened = new Promise<void>((resolve) => socket.once('open', () => resolve()));
  return {
    socket,
    async next(): Promise<unknown> {
      while (arrived.length === 0) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
      return arrived.shift();
    },
    async send(message: unknown) {
      await opened;
      socket.send(typeof message === 'string' ? message : JSON.stringify(message));
    },
  };
}

const tokenOf = (url: string) => url.split('#token=')[1] ?? '';

test('the page is served with its policy, which allows no connection but its own socket', async () => {
  const { port } = loopback;
  expect(await get('/')).toEqual({
    status: 200,
    text: '<p>window</p>',
    policy: `default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src ws://127.0.0.1:${port}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`,
  });
});

test('foreign hosts, other methods and addresses outside the folder are refused', async () => {
  const { port } = loopback;
  const statuses = await Promise.all([
    get('/', { host: `rebound.example:${port}` }),
    get('/', { method: 'POST' }),
    get('/../package.json'),
    get('/..%2fpackage.json'),
    get('/%00'),
    get('/nothing.js'),
  ]);
  expect(statuses.map(({ status }) => status)).toEqual([421, 405, 403, 403, 400, 404]);
});

test('a window says its token, asks, hears events, and leaves nothing behind', async () => {
  const window = openSocket();
  await window.send({ token: tokenOf(loopback.issueUrl()) });
  expect(await window.next()).toEqual({ type: 'welcome', secret: 'token-4', mayCommand: true });
  await window.send({ id: 7, name: 'app/describe', body: {} });
  expect(await window.next()).toEqual({
    type: 'answer',
    id: 7,
    result: {
      ok: true,
      value: {
        name: 'app/describe',
        body: {},
        mayCommand: true,
        secondScreen: { offer: { by: 'address', address: loopback.viewerUrl } },
      },
    },
  });
  echo.emit('ports', { ports: [] });
  expect(await window.next()).toEqual({ type: 'event', name: 'ports', body: { ports: [] } });
  await window.send({ id: 8, name: 'fall', body: {} });
  expect(await window.next()).toEqual({
    type: 'answer',
    id: 8,
    result: { ok: false, error: { kind: 'internal', message: 'fell over' } },
  });
  window.socket.close();
  expect(await window.next()).toEqual({ closed: 1005 });
  await expect.poll(() => echo.count()).toBe(0);
});

test('a window that was cut off before it spoke comes back by its token, and what it was given is void', async () => {
  const token = tokenOf(loopback.issueUrl());
  const lost = openSocket();
  await lost.send({ token });
  const { secret } = (await lost.next()) as { secret: string };
  const again = openSocket();
  await again.send({ token });
  expect(await again.next()).toMatchObject({ type: 'welcome', mayCommand: true });
  const late = openSocket();
  await late.send({ token: secret });
  expect(await late.next()).toEqual({ closed: 4401 });
});

test('a token is refused once its window has spoken; the secret brings the same window back', async () => {
  const token = tokenOf(loopback.issueUrl());
  const first = openSocket();
  await first.send({ token });
  const { secret } = (await first.next()) as { secret: string };
  await first.send({ id: 0, name: 'run/stop', body: {} });
  expect(await first.next()).toMatchObject({ result: { value: { mayCommand: true } } });
  const thief = openSocket();
  await thief.send({ token });
  expect(await thief.next()).toEqual({ closed: 4401 });
  const reloaded = openSocket();
  await reloaded.send({ token: secret });
  expect(await reloaded.next()).toEqual({ type: 'welcome', secret, mayCommand: true });
  expect(await first.next()).toMatchObject({ type: 'welcome', mayCommand: false });
  await first.send({ id: 1, name: 'run/stop', body: {} });
  expect(await first.next()).toMatchObject({ result: { value: { mayCommand: false } } });
});

/** What the form of the door file gets for this body. */
async function knock(body: string): Promise<{ status: number; location: string | null }> {
  const { status, headers } = await fetch(loopback.door.address, {
    method: 'POST',
    body,
    redirect: 'manual',
  });
  return { status, location: headers.get('location') };
}

test('who has closed the window gets another at the door, again and again, and the run goes on', async () => {
  const { key } = loopback.door;
  for (let time = 0; time < 2; time += 1) {
    const { status, location } = await knock(`key=${key}`);
    expect(status).toBe(303);
    const window = openSocket();
    await window.send({ token: tokenOf(location ?? '') });
    expect(await window.next()).toMatchObject({ type: 'welcome', mayCommand: true });
  }
  expect(await isDoorOpen(loopback.door)).toBe(true);
});

test('the door gives nothing for another key, none, or a long one, and its key opens no socket', async () => {
  const bodies = ['key=other', '', `key=${'a'.repeat(5000)}`];
  const refused = { status: 403, location: null };
  expect(await Promise.all(bodies.map(knock))).toEqual([refused, refused, refused]);
  const window = openSocket();
  await window.send({ token: loopback.door.key });
  expect(await window.next()).toEqual({ closed: 4401 });
  const gone = { address: loopback.door.address.replace(/:\d+/, ':1'), key: loopback.door.key };
  expect(await isDoorOpen(gone)).toBe(false);
});

test('a viewer may not command and is told of no address', async () => {
  const viewer = openSocket();
  await viewer.send({ token: tokenOf(loopback.viewerUrl) });
  expect(await viewer.next()).toMatchObject({ type: 'welcome', mayCommand: false });
  await viewer.send({ id: 1, name: 'run/stop', body: {} });
  expect(await viewer.next()).toEqual({
    type: 'answer',
    id: 1,
    result: { ok: true, value: { name: 'run/stop', body: {}, mayCommand: false } },
  });
});

test.each([
  ['no token', '{}', 4401],
  ['no JSON', 'token', 4401],
  ['a request before the hello', '{"id":1,"name":"run/stop","body":{}}', 4401],
])('a socket that starts with %s is closed', async (_case, message, code) => {
  const window = openSocket();
  await window.send(message);
  expect(await window.next()).toEqual({ closed: code });
});

test('a message that is no request closes the socket', async () => {
  const window = openSocket();
  await window.send({ token: tokenOf(loopback.issueUrl()) });
  await window.next();
  await window.send('what is this');
  expect(await window.next()).toEqual({ closed: 1003 });
});

test('a stranger that sends more than a hello is cut off', async () => {
  const stranger = openSocket();
  await stranger.send(' '.repeat(1100));
  expect(await stranger.next()).toEqual({ closed: 1006 });
});

test('a message of more than 1 MiB closes its socket, and the server lives on', async () => {
  const window = openSocket();
  await window.send({ token: tokenOf(loopback.issueUrl()) });
  await window.next();
  await window.send(' '.repeat(1024 * 1024 + 1));
  expect(await window.next()).toEqual({ closed: 1009 });
  expect((await get('/')).status).toBe(200);
});

test('only a piece of a file may be long; another long request is refused without a look at it', async () => {
  const window = openSocket();
  await window.send({ token: tokenOf(loopback.viewerUrl) });
  await window.next();
  const nested = `${'['.repeat(200_000)}${']'.repeat(200_000)}`;
  await window.send(`{"id":1,"name":"runs/read","body":${nested}}`);
  expect(await window.next()).toEqual({
    type: 'answer',
    id: 1,
    result: { ok: false, error: { kind: 'request-invalid', message: 'it is too long' } },
  });
  await window.send({ id: 2, name: 'imports/add', body: { base64: 'A'.repeat(700_000) } });
  expect(await window.next()).toMatchObject({ id: 2, result: { ok: true } });
});

test('a refused caller that keeps its end open is let go of', async () => {
  const callers = Array.from({ length: 40 }, () => {
    const caller = connect({ port: loopback.port, host: '127.0.0.1', allowHalfOpen: true });
    caller.on('error', () => {});
    caller.resume();
    caller.write(
      `GET /service HTTP/1.1\r\nHost: 127.0.0.1:${loopback.port}\r\nOrigin: http://rebound.example\r\n` +
        'Connection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Version: 13\r\n' +
        'Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n',
    );
    return caller;
  });
  // One that was let go of answers the next byte with a reset.
  await expect
    .poll(
      () => {
        for (const caller of callers) if (!caller.destroyed) caller.write('x');
        return callers.filter((caller) => !caller.destroyed).length;
      },
      { timeout: 20_000 },
    )
    .toBe(0);
});

test('of many strangers only a few are listened to, and a window still comes in after them', async () => {
  const strangers = Array.from({ length: 20 }, () => openSocket());
  const refusals = await Promise.all(strangers.slice(4).map((stranger) => stranger.next()));
  expect(new Set(refusals.map((refusal) => JSON.stringify(refusal)))).toEqual(
    new Set(['{"error":"Unexpected server response: 503"}']),
  );
  for (const { socket } of strangers.slice(0, 4)) socket.terminate();
  await expect
    .poll(async () => {
      const window = openSocket();
      window.socket.once('open', () =>
        window.socket.send(JSON.stringify({ token: tokenOf(loopback.viewerUrl) })),
      );
      return window.next();
    })
    .toMatchObject({ type: 'welcome' });
});

test('a window that asks two hundred times at once is answered at its own pace, every time and in turn', async () => {
  const window = openSocket();
  await window.send({ token: tokenOf(loopback.viewerUrl) });
  await window.next();
  for (let id = 1; id <= 200; id += 1) await window.send({ id, name: 'ports/list', body: {} });
  const ids: number[] = [];
  while (ids.length < 200) ids.push(((await window.next()) as { id: number }).id);
  expect(ids).toEqual(Array.from({ length: 200 }, (_, index) => index + 1));
});

test.each([
  ['a foreign page', { origin: 'http://rebound.example' }],
  ['another port of this computer', { origin: 'http://127.0.0.1:1' }],
  ['a wrong path', { path: '/other' }],
])('a socket from %s is refused before it opens', async (_case, options) => {
  expect(await openSocket(options).next()).toEqual({ error: 'Unexpected server response: 403' });
});

test('a port that is taken is an answer, not a crash', async () => {
  const { services } = echo;
  const { port } = loopback;
  expect(
    await startLoopback({
      services,
      windowFiles: createWindowFiles(folder),
      port,
      randomToken: () => 'token',
    }),
  ).toEqual({ ok: false, error: { kind: 'port-taken', port } });
});
