import { expect, test } from 'vitest';
import type { ProbeReading } from '#main';
import { fail } from '#shared-core';
import { serveProbeWorker } from '../../../../main/probe/worker/serve-probe-worker.ts';
import { createFakeProbeHub } from '../../support/fake-probe-hub.ts';
import { createManualTime } from '../../support/manual-time.ts';
import { plainPort } from '../../support/plain-port.ts';

type Message = { readonly type: string } & Readonly<Record<string, unknown>>;

/** The serial process with its wire in the test's hand. */
function served() {
  const time = createManualTime();
  const hub = createFakeProbeHub();
  const posted: Message[] = [];
  let exits = 0;
  let tell: (message: unknown) => void = () => {};
  const startS = time.clock.monotonicS();
  serveProbeWorker({
    port: {
      post: (message) => posted.push(message as Message),
      on: (listener) => {
        tell = listener;
      },
    },
    hub,
    clock: time.clock,
    scheduler: time.scheduler,
    exit: () => {
      exits += 1;
    },
  });
  const reading = (afterS: number, channel = 'head'): ProbeReading => ({
    atS: startS + afterS,
    channel,
    value: 20,
    unit: '°C',
    quality: 'good',
  });
  const of = (type: string) => posted.filter((message) => message.type === type);
  return {
    time,
    hub,
    tell: (message: unknown) => tell(message),
    /** Asks, and lets the answer come without any time passing. */
    async ask(message: object): Promise<Message | undefined> {
      const before = posted.length;
      tell(message);
      await time.pass(0);
      return posted.slice(before).at(-1);
    },
    posted,
    of,
    exits: () => exits,
    hear: (...momentsS: readonly number[]) =>
      hub.send(
        'readings',
        momentsS.map((afterS) => reading(afterS)),
      ),
    upToS: () => of('heard').map(({ upToS }) => Math.round(1000 * (Number(upToS) - startS)) / 1000),
    startS,
  };
}

test('its first word comes before anybody asks', () => {
  const { posted, startS } = served();
  expect(posted).toEqual([{ type: 'heard', upToS: startS }]);
});

test('what is heard goes out in batches, fifty a second at most, readings and losses in their order', async () => {
  const { hear, hub, of, time, startS } = served();
  hear(0.001, 0.002);
  const lost = { atS: startS + 0.003, state: 'lost', reason: 'silent' } as const;
  hub.send('link', lost);
  hear(0.004);
  expect(of('batch')).toEqual([]);
  await time.pass(0.021);
  const items = of('batch').flatMap((batch) => batch.items as { readonly kind: string }[]);
  expect([of('batch').length, items.map(({ kind }) => kind)]).toEqual([
    1,
    ['reading', 'reading', 'link', 'reading'],
  ]);
  expect(items[2]).toEqual({ kind: 'link', change: lost });
});

test('how far was heard is told every twentieth of a second, as of the turn before, and stands still while something waits', async () => {
  const { hear, time, upToS, tell } = served();
  await time.pass(0.2);
  expect(upToS()).toEqual([0, 0.06, 0.12, 0.18].map((atS) => expect.closeTo(atS, 6)));
  // Eight batches are on their way: the ninth waits until one is taken.
  for (let batch = 1; batch <= 9; batch += 1) {
    hear(0.2 + batch / 50);
    await time.pass(0.02);
  }
  await time.pass(0.5);
  const stood = upToS().at(-1) ?? Number.NaN;
  expect(stood).toBeLessThanOrEqual(0.38);
  tell({ type: 'taken' });
  await time.pass(0.1);
  expect(upToS().at(-1)).toBeGreaterThan(0.8);
});

test('while the services say nothing, no more than six hundred such words wait for them', async () => {
  const { time, of, tell } = served();
  await time.pass(60);
  expect(of('heard')).toHaveLength(600);
  tell({ type: 'ping', count: 1 });
  await time.pass(0.5);
  expect(of('heard').length).toBeGreaterThan(600);
});

test('of the status the newest is told, with what was given up, and none while batches are not taken', async () => {
  const { hub, hear, time, of } = served();
  const status = hub.status();
  hub.send('status', { ...status, lastLine: '20.1' });
  hub.send('status', { ...status, lastLine: '20.2' });
  await time.pass(0.02);
  expect(of('status')).toEqual([
    {
      type: 'status',
      status: { ...status, lastLine: '20.2', droppedReadings: 0, thinnedHeadReadings: 0 },
    },
  ]);
  await time.pass(1);
  expect(of('status')).toHaveLength(1);
  for (let batch = 1; batch <= 8; batch += 1) {
    hear(1 + batch / 50);
    await time.pass(0.02);
  }
  hub.send('status', { ...status, lastLine: '20.3' });
  await time.pass(1);
  expect(of('status')).toHaveLength(1);
});

test('each question is answered under its own number', async () => {
  const { ask, hub } = served();
  const source = { kind: 'demo', rig: 'vigreux', timeScale: 1, seed: 1 };
  expect(await ask({ type: 'connect', id: 1, source })).toMatchObject({
    type: 'connected',
    id: 1,
    result: { ok: true, value: { source: { kind: 'demo' } } },
  });
  hub.refuse({ kind: 'port-busy', path: '/dev/ttyACM0' });
  expect(await ask({ type: 'connect', id: 2, source })).toEqual({
    type: 'connected',
    id: 2,
    result: fail({ kind: 'port-busy', path: '/dev/ttyACM0' }),
  });
  expect(await ask({ type: 'find', id: 3, path: '/dev/ttyACM0' })).toMatchObject({
    type: 'found',
    id: 3,
    result: { ok: true, value: { because: 'Nothing was heard.' } },
  });
  expect(await ask({ type: 'list-ports', id: 4 })).toEqual({ type: 'listed', id: 4, ports: [] });
  expect(await ask({ type: 'resume', id: 5 })).toEqual({ type: 'done', id: 5 });
  expect(await ask({ type: 'ping', count: 7 })).toEqual({ type: 'pong', count: 7 });
  expect(await ask({ type: 'disconnect', id: 6 })).toEqual({ type: 'done', id: 6 });
  expect(hub.status().source).toBeNull();
  await ask({ type: 'mark', markId: 1, mark: { type: 'heat-on' } });
  await ask({ type: 'mark', markId: 2, mark: { type: 'none-such' } });
  expect([hub.followed, hub.calls]).toEqual([['heat-on'], ['resume']]);
});

test('what was heard goes out before the computer may sleep, and before nothing is connected any more', async () => {
  const { ask, hear, posted, hub } = served();
  for (const type of ['suspend', 'disconnect']) {
    posted.length = 0;
    hear(0.001);
    await ask({ type, id: 1 });
    expect(posted.map((message) => message.type)).toEqual(['batch', 'done']);
  }
  expect(hub.calls).toEqual(['suspend']);
});

test('ports that come and go are told at once', async () => {
  const { hub, of } = served();
  hub.send('ports', [plainPort]);
  expect(of('ports')).toEqual([{ type: 'ports', ports: [plainPort] }]);
});

test('asked to close it lets go of its probe, says nothing more and ends', async () => {
  const { tell, time, hub, posted, exits } = served();
  tell('nonsense');
  await time.pass(1);
  expect(exits()).toBe(0);
  tell({ type: 'close' });
  await time.pass(0);
  const said = posted.length;
  await time.pass(1);
  expect([hub.calls, exits(), posted.length]).toEqual([['close'], 1, said]);
});
