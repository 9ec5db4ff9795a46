import { describe, expect, test } from 'vitest';
import { createIsolatedProbeHub, type ProbeReading, type ProbeWorker } from '#main';
import { serveProbeWorker } from '../../../../main/probe/worker/serve-probe-worker.ts';
import { createFakeProbeHub, type FakeProbeHub } from '../../support/fake-probe-hub.ts';
import { createManualTime, type ManualTime } from '../../support/manual-time.ts';

/** A worker in this process, with a fake hub in it, that can hang or end when told to. */
interface PlayedWorker extends ProbeWorker {
  readonly hub: FakeProbeHub;
  hang(): void;
  end(): void;
  /** Says something the contract does not know. */
  babble(message: unknown): void;
  killed: boolean;
}

function playWorker(time: ManualTime): PlayedWorker {
  const hub = createFakeProbeHub();
  let toServices: (message: unknown) => void = () => {};
  let toWorker: (message: unknown) => void = () => {};
  const exits: (() => void)[] = [];
  let alive = true;
  let hanging = false;
  const end = () => {
    if (!alive) return;
    alive = false;
    for (const exit of exits) exit();
  };
  serveProbeWorker({
    port: {
      post: (message) => {
        const copy = structuredClone(message);
        if (alive && !hanging) queueMicrotask(() => toServices(copy));
      },
      on: (listener) => {
        toWorker = listener;
      },
    },
    hub,
    clock: { ...time.clock, monotonicS: () => time.clock.monotonicS() - 500 },
    scheduler: {
      every: (periodS, act) => time.scheduler.every(periodS, () => !hanging && alive && act()),
      after: time.scheduler.after,
    },
    exit: end,
  });
  const worker: PlayedWorker = {
    processId: null,
    hub,
    killed: false,
    post: (message) => {
      if (alive && !hanging) queueMicrotask(() => toWorker(structuredClone(message)));
    },
    on: (listener) => {
      toServices = listener;
    },
    onExit: (listener) => exits.push(listener),
    kill: () => {
      worker.killed = true;
      end();
    },
    hang: () => {
      hanging = true;
    },
    end,
    babble: (message) => toServices(message),
  };
  return worker;
}

function isolated() {
  const time = createManualTime();
  const workers: PlayedWorker[] = [];
  const startWorker = () => {
    const worker = playWorker(time);
    workers.push(worker);
    return worker;
  };
  const hub = createIsolatedProbeHub({ clock: time.clock, scheduler: time.scheduler, startWorker });
  const told: string[] = [];
  const readings: ProbeReading[] = [];
  hub.on('readings', (heard) => readings.push(...heard));
  hub.on('readings', (heard) => told.push(...heard.map(({ value }) => String(value))));
  hub.on('link', ({ state, reason }) => told.push(`${state} ${reason}`));
  const worker = () => {
    const last = workers.at(-1);
    if (last === undefined) throw new Error('No worker was started.');
    return last;
  };
  /** The probe behind the worker that runs now says something. */
  const say = async (value: number) => {
    const atS = time.clock.monotonicS() - 500;
    worker().hub.send('readings', [{ atS, channel: 'head', value, unit: '°C', quality: 'good' }]);
    await time.pass(0.1);
  };
  return { time, workers, worker, hub, told, readings, say };
}

const source = { kind: 'demo', rig: 'vigreux', timeScale: 1, seed: 1 } as const;

describe('createIsolatedProbeHub', () => {
  test('passes readings on, stamped with the clock of this process', async () => {
    const { hub, say, readings, time } = isolated();
    await hub.connect(source);
    const before = time.clock.monotonicS();
    await say(78.4);
    expect(readings).toEqual([
      { atS: expect.closeTo(before, 1), channel: 'head', value: 78.4, unit: '°C', quality: 'good' },
    ]);
  });

  test('a process that ends is told as lost, replaced, connected again and told as back', async () => {
    const { hub, say, told, workers, worker, time } = isolated();
    await hub.connect(source);
    await say(78.4);
    worker().end();
    expect(hub.status()).toMatchObject({ state: 'lost', source });
    await time.pass(1);
    expect(workers.length).toBe(2);
    await say(78.5);
    expect(told).toEqual(['78.4', 'lost silent', 'back silent', '78.5']);
  });

  test('a process that hangs is ended after five unanswered pings, and replaced', async () => {
    const { hub, say, workers, worker, time, told } = isolated();
    await hub.connect(source);
    await say(78.4);
    const hung = worker();
    hung.hang();
    await time.pass(4);
    expect(hung.killed).toBe(false);
    await time.pass(4);
    expect({ killed: hung.killed, workers: workers.length }).toEqual({ killed: true, workers: 2 });
    await say(78.5);
    expect(told.slice(-2)).toEqual(['back silent', '78.5']);
  });

  test('a process that cannot live is started again at growing intervals, not in a frenzy', async () => {
    const { hub, workers, time } = isolated();
    await hub.connect(source);
    const stop = time.scheduler.every(0.01, () => workers.at(-1)?.end());
    await time.pass(30);
    stop();
    expect(workers.length).toBeGreaterThan(5);
    expect(workers.length).toBeLessThan(12);
  });

  test('a loss that the process itself told of is not told again when it ends', async () => {
    const { hub, say, told, worker, time } = isolated();
    await hub.connect(source);
    await say(78.4);
    const atS = time.clock.monotonicS() - 500;
    worker().hub.send('link', { atS, state: 'lost', reason: 'unplugged' });
    await time.pass(0.1);
    worker().end();
    await time.pass(1);
    await say(78.5);
    expect(told).toEqual(['78.4', 'lost unplugged', 'back unplugged', '78.5']);
  });

  test('the order of readings and link changes is kept', async () => {
    const { hub, told, worker, time } = isolated();
    await hub.connect(source);
    const atS = time.clock.monotonicS() - 500;
    const reading = { atS, channel: 'head', unit: '°C', quality: 'good' } as const;
    const probe = worker().hub;
    probe.send('readings', [{ ...reading, value: 1 }]);
    probe.send('link', { atS, state: 'lost', reason: 'silent' });
    probe.send('link', { atS, state: 'back', reason: 'silent' });
    probe.send('readings', [{ ...reading, value: 2 }]);
    await time.pass(0.1);
    expect(told).toEqual(['1', 'lost silent', 'back silent', '2']);
  });

  test('messages that are not of the contract are passed over', async () => {
    const { hub, say, told, worker } = isolated();
    await hub.connect(source);
    for (const message of [null, 7, 'x', {}, { type: 'batch' }, { type: 'batch', nowS: NaN }]) {
      worker().babble(message);
    }
    await say(78.4);
    expect(told).toEqual(['78.4']);
  });

  test('a question that the process did not live to answer is a problem, not a wait for ever', async () => {
    const { hub, worker } = isolated();
    worker().hang();
    const connecting = hub.connect(source);
    worker().end();
    expect(await connecting).toEqual({
      ok: false,
      error: { kind: 'internal', message: 'The part that reads the serial port stopped.' },
    });
  });

  test('a process is asked to close before it is ended, and ended if it does not', async () => {
    const { hub, worker, time } = isolated();
    await hub.close();
    expect({ killed: worker().killed, closed: worker().hub.calls }).toEqual({
      killed: false,
      closed: ['close'],
    });
    const stubborn = isolated();
    stubborn.worker().hang();
    const closing = stubborn.hub.close();
    await stubborn.time.pass(3);
    await closing;
    expect(stubborn.worker().killed).toBe(true);
    await time.pass(10);
    expect(worker().killed).toBe(false);
  });

  test('heat marks reach the rehearsal rig, also the one that was started again', async () => {
    const { hub, worker, time } = isolated();
    await hub.connect(source);
    hub.followHeat('heat-on');
    await time.pass(0.1);
    worker().end();
    await time.pass(1);
    expect(worker().hub.heatMarks).toEqual(['heat-on']);
  });
});
