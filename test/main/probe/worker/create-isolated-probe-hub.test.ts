import { describe, expect, test } from 'vitest';
import { createIsolatedProbeHub, type ProbeReading, type ProbeWorker } from '#main';
import type { ProbeLinkChange } from '../../../../main/probe/probe-hub.ts';
import {
  type ProbeWorkerParts,
  serveProbeWorker,
} from '../../../../main/probe/worker/serve-probe-worker.ts';
import { createFakeProbeHub, type FakeProbeHub } from '../../support/fake-probe-hub.ts';
import { createManualTime, type ManualTime } from '../../support/manual-time.ts';
import { serialSource } from '../support/heard-hub.ts';

/** A worker in this process, with a fake hub in it, that can hang or end when told to. */
interface PlayedWorker extends ProbeWorker {
  readonly hub: FakeProbeHub;
  hang(): void;
  end(): void;
  /** Says something the contract does not know. */
  babble(message: unknown): void;
  killed: boolean;
}

function playWorker(time: ManualTime, startsInS: number): PlayedWorker {
  const hub = createFakeProbeHub();
  const early: unknown[] = [];
  let toServices: (message: unknown) => void = () => {};
  let toWorker: (message: unknown) => void = (message) => early.push(message);
  const exits: (() => void)[] = [];
  let alive = true;
  let hanging = false;
  const end = () => {
    if (!alive) return;
    alive = false;
    for (const exit of exits) exit();
  };
  const start = () => {
    serveProbeWorker(parts);
    for (const message of early) toWorker(message);
  };
  const parts: ProbeWorkerParts = {
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
    clock: time.clock,
    scheduler: {
      every: (periodS, act) => time.scheduler.every(periodS, () => !hanging && alive && act()),
      after: time.scheduler.after,
    },
    exit: end,
  };
  if (startsInS === 0) start();
  else time.scheduler.after(startsInS, () => alive && start());
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

function isolated({ startsInS = 0, begun = (_: FakeProbeHub) => {} } = {}) {
  const time = createManualTime();
  const workers: PlayedWorker[] = [];
  const startWorker = () => {
    const worker = playWorker(time, startsInS);
    workers.push(worker);
    begun(worker.hub);
    return worker;
  };
  const hub = createIsolatedProbeHub({ scheduler: time.scheduler, startWorker });
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
    const atS = time.clock.monotonicS();
    worker().hub.send('readings', [{ atS, channel: 'head', value, unit: '°C', quality: 'good' }]);
    await time.pass(0.1);
  };
  return { time, workers, worker, hub, told, readings, say };
}

const source = { kind: 'demo', rig: 'vigreux', timeScale: 1, seed: 1 } as const;

describe('createIsolatedProbeHub', () => {
  test('a probe that is heard beside the lost one in the head does not bring it back', async () => {
    const { hub, say, told, time, worker } = isolated();
    await hub.connect(source);
    await say(78.4);
    worker().hub.send('link', { atS: time.clock.monotonicS(), state: 'lost', reason: 'unplugged' });
    await time.pass(0.1);
    const pot = { channel: 'pot', value: 90, unit: '°C', quality: 'good' } as const;
    worker().hub.send('readings', [{ atS: time.clock.monotonicS(), ...pot }]);
    await time.pass(0.1);
    expect(told).toEqual(['78.4', 'lost unplugged', '90']);
    await say(78.5);
    expect(told.slice(3)).toEqual(['back unplugged', '78.5']);
  });

  test('passes readings on with the moments at which they were heard', async () => {
    const { hub, say, readings, time } = isolated();
    await hub.connect(source);
    const before = time.clock.monotonicS();
    await say(78.4);
    expect(readings).toEqual([
      { atS: before, channel: 'head', value: 78.4, unit: '°C', quality: 'good' },
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
    expect(told).toEqual(['78.4', 'lost reader-stopped', 'back reader-stopped', '78.5']);
  });

  test('a process that hangs is ended after five unanswered pings, and replaced', async () => {
    const { hub, say, workers, worker, time, told } = isolated();
    await hub.connect(source);
    await say(78.4);
    const hung = worker();
    hung.hang();
    // It was heard last in the first second: the fifth ping goes out at 5 s, and a sixth at 6 s is not waited for.
    await time.pass(5.8);
    expect(hung.killed).toBe(false);
    await time.pass(0.2);
    expect(hung.killed).toBe(true);
    await time.pass(2);
    expect(workers.length).toBe(2);
    await say(78.5);
    expect(told.slice(-2)).toEqual(['back reader-stopped', '78.5']);
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

  test('a process that ends is told as lost from the moment up to which it had told what it heard', async () => {
    const { hub, say, worker, time } = isolated();
    const links: ProbeLinkChange[] = [];
    hub.on('link', (change) => links.push(change));
    await hub.connect(source);
    await say(78.4);
    worker().hang();
    const upToS = hub.heardUpToS();
    // Heard while it hangs, and told to nobody.
    await say(78.5);
    await time.pass(6);
    expect(worker().killed || links.length > 0).toBe(true);
    expect(links).toEqual([{ atS: upToS, state: 'lost', reason: 'reader-stopped' }]);
  });

  test('what was told last goes further than what was said of it: the loss begins behind it', async () => {
    const { hub, worker, time } = isolated();
    const links: ProbeLinkChange[] = [];
    hub.on('link', (change) => links.push(change));
    await hub.connect(source);
    const atS = time.clock.monotonicS() + 0.04;
    worker().babble({
      type: 'batch',
      items: [
        {
          kind: 'reading',
          reading: { atS, channel: 'head', value: 1, unit: '°C', quality: 'good' },
        },
      ],
    });
    worker().end();
    expect(links).toEqual([{ atS, state: 'lost', reason: 'reader-stopped' }]);
  });

  test('a loss that the process itself told of is followed by that of the process, which may have heard another probe', async () => {
    const { hub, say, told, worker, time } = isolated();
    await hub.connect(source);
    await say(78.4);
    const atS = time.clock.monotonicS();
    worker().hub.send('link', { atS, state: 'lost', reason: 'unplugged' });
    await time.pass(0.1);
    worker().end();
    await time.pass(1);
    await say(78.5);
    expect(told).toEqual([
      '78.4',
      'lost unplugged',
      'lost reader-stopped',
      'back reader-stopped',
      '78.5',
    ]);
  });

  test('the order of readings and link changes is kept', async () => {
    const { hub, told, worker, time } = isolated();
    await hub.connect(source);
    const atS = time.clock.monotonicS();
    const reading = { atS, channel: 'head', unit: '°C', quality: 'good' } as const;
    const probe = worker().hub;
    probe.send('readings', [{ ...reading, value: 1 }]);
    probe.send('link', { atS, state: 'lost', reason: 'silent' });
    probe.send('link', { atS, state: 'back', reason: 'silent' });
    probe.send('readings', [{ ...reading, value: 2 }]);
    await time.pass(0.1);
    expect(told).toEqual(['1', 'lost silent', 'back silent', '2']);
  });

  test('what the process had to give up of a flood is told with its moments, before what is left of it', async () => {
    const { hub, told, worker, time } = isolated();
    await hub.connect(source);
    hub.on('givenUp', ({ readings, fromS, toS }) => told.push(`${readings}: ${fromS} to ${toS}`));
    const flood = Array.from({ length: 20_001 }, (_, index): ProbeReading => {
      return { atS: index, channel: 'pot', value: index, unit: '°C', quality: 'good' };
    });
    worker().hub.send('readings', flood);
    await time.pass(0.1);
    // One more than there is room for, and a tenth of it besides.
    expect(told.slice(0, 2)).toEqual(['2001: 0 to 2000', '2001']);
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

  test('a wish outlives the process that did not live to meet it', async () => {
    const { hub, worker, time, say, told } = isolated();
    worker().hang();
    const connecting = hub.connect(source);
    worker().end();
    await time.pass(1);
    expect(await connecting).toMatchObject({ ok: true, value: { source } });
    await say(78.4);
    expect(told).toEqual(['78.4']);
  });

  test('a wish that three processes did not live to meet is a problem, not a wait for ever', async () => {
    const { hub, workers, time } = isolated({ startsInS: 1000 });
    const connecting = hub.connect(source);
    const stop = time.scheduler.every(0.01, () => workers.at(-1)?.end());
    await time.pass(10);
    stop();
    expect(await connecting).toEqual({
      ok: false,
      error: { kind: 'internal', message: 'The part that reads the serial port stopped.' },
    });
    expect(hub.status().state).toBe('none');
  });

  test('a process that takes half a minute to start is waited for, and the wish is met', async () => {
    const { hub, workers, worker, time, say, told } = isolated({ startsInS: 25 });
    const connecting = hub.connect(source);
    expect(hub.status()).toMatchObject({
      state: 'starting',
      source,
      advice: 'Starting the serial reader …',
    });
    await time.pass(26);
    expect(await connecting).toMatchObject({ ok: true, value: { source } });
    await say(78.4);
    expect({ told, workers: workers.length, killed: worker().killed }).toEqual({
      told: ['78.4'],
      workers: 1,
      killed: false,
    });
  });

  test('a process that never says a word is ended after its grace, and replaced', async () => {
    const { workers, worker, time } = isolated({ startsInS: 1000 });
    const silent = worker();
    await time.pass(29);
    expect(silent.killed).toBe(false);
    await time.pass(4);
    expect({ killed: silent.killed, workers: workers.length }).toEqual({
      killed: true,
      workers: 2,
    });
  });

  test('tells how far the readings go, and nothing of it while no process could tell more', async () => {
    const { hub, worker, time } = isolated();
    await hub.connect(source);
    await time.pass(1);
    const now = time.clock.monotonicS();
    expect(now - hub.heardUpToS()).toBeGreaterThanOrEqual(0);
    expect(now - hub.heardUpToS()).toBeLessThan(0.15);
    worker().end();
    expect(hub.heardUpToS()).toBe(Number.POSITIVE_INFINITY);
  });

  test('a hundred windows that ask for the ports at once are answered by one look', async () => {
    const { hub, worker } = isolated();
    let looks = 0;
    worker().hub.listPorts = async () => {
      looks += 1;
      return [];
    };
    await Promise.all(Array.from({ length: 100 }, () => hub.listPorts()));
    expect(looks).toBe(1);
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

  test('marks reach the rehearsal rig, also the one that was started again, and none before it was connected', async () => {
    const { hub, worker, time } = isolated();
    const rehearsal = { kind: 'demo', rig: 'vigreux', timeScale: 20, seed: 1 } as const;
    await hub.connect(rehearsal);
    hub.followMark({ markId: 1, mark: { type: 'heat-on' } });
    await hub.connect(rehearsal);
    hub.followMark({ markId: 1, mark: { type: 'heat-on' } });
    hub.followMark({ markId: 2, mark: { type: 'receiver-changed', volumeMl: 3 } });
    await time.pass(0.1);
    worker().end();
    await time.pass(1);
    expect(worker().hub.followed).toEqual(['heat-on', 'receiver-changed']);
  });

  test('marks of a run with a real probe stay here', async () => {
    const { hub, worker, time } = isolated();
    await hub.connect(serialSource('/dev/ttyACM0'));
    hub.followMark({ markId: 1, mark: { type: 'heat-on' } });
    await time.pass(0.1);
    expect(worker().hub.followed).toEqual([]);
  });

  test.each([
    ['/dev/pts/4', 'port-not-found', 1],
    ['/dev/ttyACM0', 'port-not-found', 3],
    ['/dev/pts/4', 'port-busy', 3],
  ] as const)(
    'after a new start %s that answers %s is asked for it %i times in two seconds and a half',
    async (path, kind, times) => {
      let isGone = false;
      let asked = 0;
      const begun = (next: FakeProbeHub) => {
        const { connect } = next;
        next.connect = (wanted) => {
          asked += 1;
          return connect(wanted);
        };
        if (isGone) next.refuse({ kind, path });
      };
      const { hub, worker, time } = isolated({ begun });
      await hub.connect(serialSource(path));
      isGone = true;
      asked = 0;
      worker().end();
      // Started again after 0.2 s, and asked once a second then.
      await time.pass(2.5);
      expect(asked).toBe(times);
    },
  );
});
