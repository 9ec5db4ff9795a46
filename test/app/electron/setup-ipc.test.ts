import { expect, test } from 'vitest';
import { createMonitor, defaultRunSettings } from '#shared-core';
import { createSecondScreenWindow } from '../../../app/electron/second-screen-window.ts';
import { setupIpc } from '../../../app/electron/setup-ipc.ts';
import type { ServiceHandler } from '../../../app/service-handler.ts';
import { plainSnapshot } from '../../support/plain-snapshot.ts';

type Handler = (event: unknown, message: unknown) => Promise<unknown>;

function bench() {
  const asked: unknown[] = [];
  const sent: unknown[] = [];
  const listeners = new Map<string, (body: never) => void>();
  let handler: Handler = async () => undefined;
  let destroyed = false;
  const services: ServiceHandler = {
    async handle(name, body, caller) {
      asked.push({ name, body, caller });
      return { ok: true, value: 'done' };
    },
    on(name, listener) {
      listeners.set(name, listener);
      return () => listeners.delete(name);
    },
  };
  const windowWith = (id: number) => ({
    isDestroyed: () => destroyed,
    focus: () => {},
    webContents: {
      id,
      // Windows get a structured clone of what is sent.
      send: (channel: string, message: unknown) => sent.push([channel, structuredClone(message)]),
    },
  });
  const secondScreen = createSecondScreenWindow(() => windowWith(7));
  setupIpc({
    services,
    ipcMain: {
      handle: (_channel, given) => {
        handler = given as Handler;
      },
    },
    window: windowWith(1),
    secondScreen,
  });
  return {
    asked,
    sent,
    ask: (event: unknown, message: unknown) => handler(event, message),
    emit: (name: string, body: unknown) => listeners.get(name)?.(body as never),
    openSecondScreen: secondScreen.open,
    destroy: () => {
      destroyed = true;
    },
  };
}

const ownFrame = { url: 'app://window/index.html', parent: null };

test('a request of our own page reaches the services and is answered', async () => {
  const { ask, asked } = bench();
  const event = { senderFrame: ownFrame, sender: { id: 1 } };
  expect(await ask(event, { name: 'run/stop', body: {} })).toEqual({ ok: true, value: 'done' });
  expect(asked).toEqual([
    {
      name: 'run/stop',
      body: {},
      caller: {
        mayCommand: true,
        secondScreen: { offer: { by: 'window' }, open: expect.any(Function) },
      },
    },
  ]);
});

test('the second screen is heard once it is open, as a viewer that is offered nothing', async () => {
  const { ask, asked, openSecondScreen } = bench();
  const event = { senderFrame: ownFrame, sender: { id: 7 } };
  await expect(ask(event, { name: 'run/status', body: {} })).rejects.toThrow('unknown sender');
  openSecondScreen();
  await ask(event, { name: 'run/stop', body: {} });
  expect(asked).toEqual([{ name: 'run/stop', body: {}, caller: { mayCommand: false } }]);
});

test.each([
  ['a frame that is gone', { senderFrame: null, sender: { id: 1 } }],
  ['an inner frame', { senderFrame: { ...ownFrame, parent: ownFrame }, sender: { id: 1 } }],
  ['another window', { senderFrame: ownFrame, sender: { id: 2 } }],
  [
    'a foreign page',
    { senderFrame: { ...ownFrame, url: 'https://elsewhere.example/' }, sender: { id: 1 } },
  ],
])('a message from %s never reaches the services', async (_case, event) => {
  const { ask, asked } = bench();
  await expect(ask(event, { name: 'run/stop', body: {} })).rejects.toThrow('unknown sender');
  expect(asked).toEqual([]);
});

test('a message that is no request is answered with a problem', async () => {
  const { ask, asked } = bench();
  const event = { senderFrame: ownFrame, sender: { id: 1 } };
  expect(await ask(event, { name: 5 })).toMatchObject({
    ok: false,
    error: { kind: 'request-invalid' },
  });
  expect(asked).toEqual([]);
});

test('events go to the windows while there are any', () => {
  const { emit, sent, openSecondScreen, destroy } = bench();
  emit('ports', { ports: [] });
  openSecondScreen();
  emit('ports', { ports: [] });
  destroy();
  emit('ports', { ports: [] });
  expect(sent).toEqual(
    Array.from({ length: 3 }, () => ['still-head:event', { name: 'ports', body: { ports: [] } }]),
  );
});

test('a snapshot that makes its parts when they are read reaches the window whole', () => {
  const { emit, sent } = bench();
  const snapshot = createMonitor(defaultRunSettings).advanceTo(5);
  emit('snapshot', { runId: 'r1', snapshot });
  const body = { runId: 'r1', snapshot: plainSnapshot(snapshot) };
  expect(sent).toEqual([['still-head:event', { name: 'snapshot', body }]]);
  expect(sent).toMatchObject([
    [expect.any(String), { body: { snapshot: { stage: { stage: 'warm-up' } } } }],
  ]);
});
