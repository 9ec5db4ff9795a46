import { expect, onTestFinished, test } from 'vitest';
import { createProbeHub } from '#main';
import { fail, latin1Bytes, type PortInfo, type ProbeStatus, succeed } from '#shared-core';
import type { ByteLineListeners, OpenByteLine } from '../../../main/probe/port/byte-line.ts';
import { createManualTime } from '../support/manual-time.ts';
import { serialSource } from './support/heard-hub.ts';

const port = (path: string): PortInfo => ({
  path,
  manufacturer: null,
  vendorId: '2341',
  productId: '0043',
  serialNumber: path,
  likelyProbe: true,
});
/** A path that is there: a silent port whose path has gone was unplugged. */
const source = serialSource('/dev/null', { language: 'plain-text' });

/** A hub whose ports, lines and time are the test's. */
function setUp() {
  const time = createManualTime();
  const state = {
    ports: [] as readonly PortInfo[],
    listings: 0,
    /** What the next openings wait for. */
    gate: Promise.resolve(),
    refuse: false,
    open: 0,
    mostOpen: 0,
  };
  const lines: { path: string; listeners: ByteLineListeners }[] = [];
  const openLine: OpenByteLine = async ({ path }, listeners) => {
    await state.gate;
    if (state.refuse) return fail({ kind: 'port-busy', path });
    lines.push({ path, listeners });
    state.open += 1;
    state.mostOpen = Math.max(state.mostOpen, state.open);
    const done = async () => succeed(null);
    return succeed({
      write: done,
      changeSpeed: done,
      close: async () => {
        state.open -= 1;
      },
    });
  };
  const hub = createProbeHub({
    clock: time.clock,
    scheduler: time.scheduler,
    openLine,
    listPorts: async () => {
      state.listings += 1;
      return state.ports;
    },
  });
  onTestFinished(() => hub.close());
  const statuses: ProbeStatus[] = [];
  hub.on('status', (status) => statuses.push(status));
  return {
    time,
    state,
    hub,
    statuses,
    lines,
    say: (text: string) => lines.at(-1)?.listeners.bytes(latin1Bytes(text)),
    /** Lets an answer come that waits for ports and lines. */
    async answered<T>(asked: Promise<T>): Promise<T> {
      for (let turn = 0; turn < 20; turn += 1) await time.pass(0.1);
      return asked;
    },
  };
}

test('a status is told when it changes, at most ten times a second, and not while nothing does', async () => {
  const { hub, statuses, say, time, answered } = setUp();
  expect(hub.status()).toMatchObject({ state: 'none', source: null });
  await answered(hub.connect(source));
  say('\n');
  const before = statuses.length;
  for (let line = 0; line < 50; line += 1) {
    say(`20.${10 + line}\n`);
    await time.pass(0.02);
  }
  expect(statuses.length - before).toBeGreaterThan(5);
  expect(statuses.length - before).toBeLessThanOrEqual(12);
  expect(hub.status()).toMatchObject({ state: 'hearing', lastLine: '20.59', advice: null });
  expect(hub.status()).not.toHaveProperty('wording');
  await hub.disconnect();
  const told = statuses.length;
  expect(statuses.at(-1)).toMatchObject({ state: 'none', source: null });
  await time.pass(5);
  expect(statuses).toHaveLength(told);
});

test('advice goes out with what it is made of, so that every window says it in its own language', async () => {
  const { hub, time, answered } = setUp();
  await answered(hub.connect(source));
  await time.pass(6);
  expect(hub.status()).toMatchObject({
    state: 'silent',
    advice: expect.stringMatching(/^The port is open but nothing arrives/),
    wording: expect.objectContaining({}),
  });
  expect(Object.keys(hub.status().wording ?? {})).toHaveLength(1);
});

test('ports are looked for every two seconds while somebody wants to know, and told when they change', async () => {
  const { hub, time, state } = setUp();
  await time.pass(10);
  expect(state.listings).toBe(0);
  const told: string[] = [];
  const stop = hub.on('ports', (ports) => told.push(ports.map(({ path }) => path).join(' ')));
  await time.pass(10);
  expect([state.listings, told]).toEqual([5, []]);
  state.ports = [port('/dev/ttyACM0')];
  await time.pass(4);
  state.ports = [];
  await time.pass(4);
  expect(told).toEqual(['/dev/ttyACM0', '']);
  stop();
  const { listings } = state;
  await time.pass(10);
  expect(state.listings).toBe(listings);
});

test('where the ports cannot be listed nobody is told, and nothing ends', async () => {
  const time = createManualTime();
  const hub = createProbeHub({
    clock: time.clock,
    scheduler: time.scheduler,
    listPorts: () => Promise.reject(new Error('udev does not answer')),
  });
  onTestFinished(() => hub.close());
  const told: unknown[] = [];
  hub.on('ports', (ports) => told.push(ports));
  await time.pass(5);
  expect(told).toEqual([]);
});

test('five seconds between two ticks are a sleep, told from the tick before it; less is a busy computer', async () => {
  let aheadS = 0;
  const time = createManualTime();
  const clock = { ...time.clock, monotonicS: () => time.clock.monotonicS() + aheadS };
  const startS = clock.monotonicS();
  let listeners: ByteLineListeners | null = null;
  const done = async () => succeed(null);
  const hub = createProbeHub({
    clock,
    scheduler: time.scheduler,
    listPorts: async () => [],
    openLine: async (_, heard) => {
      listeners = heard;
      return succeed({ write: done, changeSpeed: done, close: async () => {} });
    },
  });
  onTestFinished(() => hub.close());
  const links: string[] = [];
  hub.on('link', ({ state, reason, atS }) =>
    links.push(`${state} ${reason} ${Math.round(atS - startS)}`),
  );
  const connecting = hub.connect(source);
  await time.pass(1);
  await connecting;
  const say = () => (listeners as ByteLineListeners | null)?.bytes(latin1Bytes('20.5\n'));
  say();
  say();
  await time.pass(1);
  say();
  aheadS = 4.8;
  await time.pass(0.2);
  say();
  expect(links).toEqual([]);
  aheadS += 5;
  await time.pass(0.2);
  say();
  expect(links).toEqual(['lost computer-asleep 7', 'back computer-asleep 12']);
});

test('a port that another opening still holds is let go before the next wish opens one', async () => {
  const { hub, lines, state, time, answered } = setUp();
  await answered(hub.connect(source));
  lines[0]?.listeners.closed(null);
  state.open = 0;
  let letGo: () => void = () => {};
  state.gate = new Promise((resolve) => {
    letGo = resolve;
  });
  // The link itself looks for its probe again: that opening is under way when the next wish comes.
  await time.pass(1);
  const wish = hub.connect({ ...source, baudRate: 9600 });
  await time.pass(0.5);
  letGo();
  expect(await answered(wish)).toMatchObject({ ok: true });
  expect([state.mostOpen, state.open]).toEqual([1, 1]);
});

test('a driver that hangs in an opening holds the next wish up for two seconds, and no longer', async () => {
  const { hub, state, time } = setUp();
  state.gate = new Promise(() => {});
  void hub.connect(source);
  await time.pass(1);
  let answered = false;
  state.gate = Promise.resolve();
  const wish = hub.connect({ ...source, path: '/dev/ttyACM1' }).then((result) => {
    answered = true;
    return result;
  });
  await time.pass(1.9);
  expect(answered).toBe(false);
  await time.pass(0.2);
  expect(await wish).toMatchObject({ ok: true });
});

test('what could not be opened leaves nothing connected, and says why', async () => {
  const { hub, state, answered } = setUp();
  state.refuse = true;
  expect(await answered(hub.connect(source))).toEqual(
    fail({ kind: 'port-busy', path: '/dev/null' }),
  );
  expect(hub.status()).toMatchObject({ state: 'none', source: null });
});

test('a source that cannot work is refused in words before any port is touched', async () => {
  const { hub, lines, answered } = setUp();
  const own = { ...source, language: 'own-pattern' } as const;
  const refused = async (wanted: Parameters<typeof hub.connect>[0]) => {
    const answer = await answered(hub.connect(wanted));
    return answer.ok || answer.error.kind !== 'request-invalid' ? null : answer.error.message;
  };
  const twice = { kind: 'several', probes: [source, source], timeScale: 1 } as const;
  expect([
    await refused({ ...own, pattern: 'nothing to read in it' }),
    await refused(own),
    await refused({ ...twice, probes: [...twice.probes] }),
    await refused({ kind: 'demo', rig: 'none-such', timeScale: 1, seed: 1 }),
  ]).toEqual([
    'no pattern: nothing to read in it',
    'no pattern: ',
    'each probe needs a port of its own',
    'There is no demo rig named none-such.',
  ]);
  expect(lines).toEqual([]);
});

test('another probe that is connected in place of one that is heard is told as a loss of the head and as another’s return', async () => {
  const { hub, say, time, state, answered } = setUp();
  const told: string[] = [];
  hub.on('link', (change) => told.push(`${change.state} ${change.reason}`));
  const hear = async (path: string, language: 'plain-text' | 'auto' = 'plain-text') => {
    await answered(hub.connect(serialSource(path, { language })));
    say('\n20.5\n');
    await time.pass(1);
    return told.splice(0);
  };
  state.ports = [port('/dev/null'), port('/dev/zero')];
  expect(await hear('/dev/null')).toEqual([]);
  // The same one, listened to otherwise.
  expect(await hear('/dev/null', 'auto')).toEqual(['lost unplugged', 'back unplugged']);
  expect(await hear('/dev/zero')).toEqual(['lost unplugged', 'back probe-changed']);
  await hub.disconnect();
  expect(told.splice(0)).toEqual(['lost unplugged']);
  expect(await hear('/dev/zero')).toEqual(['back unplugged']);
  await hub.close();
  expect(told).toEqual([]);
});
