import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, lowSpaceBytes, nodeFileLayer, type Session } from '#main';
import { defaultRunSettings, fail, type RequestAnswer, succeed } from '#shared-core';
import { diskAtRest } from '../support/manual-time.ts';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';

async function setUp(faults: Partial<FileLayer>) {
  const bench = await setUpSession({ faults });
  const { time, probeHub } = bench;
  const sendSecond = async () => {
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
  };
  return { ...bench, sendSecond };
}

async function start(session: Session): Promise<string> {
  return (await ask(session, 'run/start', { settings: defaultRunSettings })).runId;
}

test('warns of a filling disk while everything is still being recorded', async () => {
  let free = lowSpaceBytes * 2;
  const { session, time, sendSecond } = await setUp({ freeBytes: async () => succeed(free) });
  const told: unknown[] = [];
  session.on('recording', ({ problem }) => told.push(problem));
  await start(session);
  await time.pass(11);
  expect(session.recordingStatus().problem).toBeNull();
  free = lowSpaceBytes - 1;
  await time.pass(10);
  await sendSecond();
  expect(session.recordingStatus()).toMatchObject({
    state: 'recording',
    problem: { kind: 'disk-full' },
  });
  expect(told).toContainEqual(expect.objectContaining({ kind: 'disk-full' }));
  free = lowSpaceBytes * 2;
  await time.pass(10);
  expect(session.recordingStatus().problem).toBeNull();
});

test('goes on showing, and lets a window read, what a failing disk does not take', async () => {
  let isBroken = false;
  const broken = (target: string) =>
    fail({ kind: 'failed', path: target, message: 'EIO: i/o error, write' } as const);
  const { session, time, runsFolder, sendSecond } = await setUp({
    async createAppend(target) {
      if (isBroken) return broken(target);
      const file = await nodeFileLayer.createAppend(target);
      if (!file.ok) return file;
      const write: typeof file.value.write = (bytes) =>
        isBroken ? broken(target) : file.value.write(bytes);
      return succeed({ ...file.value, write });
    },
  });
  const runId = await start(session);
  for (let second = 0; second < 3; second += 1) await sendSecond();
  await time.pass(0.5);
  await expect.poll(() => session.recordingStatus().savedToS).toBe(3);
  isBroken = true;
  for (let second = 0; second < 4; second += 1) await sendSecond();
  expect(session.recordingStatus()).toMatchObject({
    state: 'failed',
    savedToS: 3,
    problem: { kind: 'folder-unavailable', message: 'EIO: i/o error, write' },
  });
  const page = await session.handle('runs/read', { runId, fromIndex: 0 }, teacher);
  expect(
    page.ok && (page.value as RequestAnswer<'runs/read'>).inputs.map(({ timeS }) => timeS),
  ).toEqual([1, 2, 3, 4.5, 5.5, 6.5, 7.5]);
  isBroken = false;
  await time.pass(3);
  await expect.poll(() => session.recordingStatus().savedToS).toBe(7.5);
  expect(session.recordingStatus()).toMatchObject({ state: 'recording', problem: null });
  expect(await readdir(path.join(runsFolder, runId))).toContain('run.jsonl');
});

test('starts no run, and leaves nothing behind, where the folder takes no file', async () => {
  const { session, runsFolder } = await setUp({
    createAppend: async (target) => fail({ kind: 'read-only', path: target, message: 'EROFS' }),
  });
  expect(
    await session.handle('run/start', { settings: defaultRunSettings }, teacher),
  ).toMatchObject({
    ok: false,
    error: { kind: 'folder-read-only' },
  });
  expect(session.recordingStatus().state).toBe('idle');
  expect(await readdir(runsFolder)).toEqual(['in-use.lock']);
});

test('stopped twice at once, and closed, a run ends once, and a late mark is refused', async () => {
  const { session, runsFolder, sendSecond } = await setUp({});
  const runId = await start(session);
  for (let second = 0; second < 3; second += 1) await sendSecond();
  const stop = () => session.handle('run/stop', {}, teacher);
  const stopping = Promise.all([stop(), stop()]);
  const closing = session.close();
  const mark = { type: 'note', text: 'too late' };
  expect(await session.handle('run/mark', { mark }, teacher)).toEqual(
    fail({ kind: 'not-recording' }),
  );
  expect(await stopping).toEqual([succeed({ runId }), succeed({ runId })]);
  await closing;
  const log = await readFile(path.join(runsFolder, runId, 'run.jsonl'), 'latin1');
  const ends = log.split('\n').flatMap((line, at) => (line.includes('"end"') ? [at] : []));
  expect(ends).toEqual([log.trimEnd().split('\n').length - 1]);
  expect(log).not.toContain('too late');
  expect((await readdir(path.join(runsFolder, runId))).sort()).toEqual([
    'labels.jsonl',
    'run.jsonl',
    'summary.json',
  ]);
});

test('a sync that takes five seconds moves no moment, makes no sleep and costs nothing', async () => {
  let letGo: (() => void) | null = null;
  let isSlow = false;
  const { session, time, probeHub, runsFolder } = await setUp({
    async createAppend(target) {
      const file = await nodeFileLayer.createAppend(target);
      if (!file.ok) return file;
      const sync: typeof file.value.sync = async () => {
        if (isSlow) {
          await new Promise<void>((resolve) => {
            letGo = resolve;
          });
        }
        return file.value.sync();
      };
      return succeed({ ...file.value, sync });
    },
  });
  const runId = await start(session);
  const startS = time.clock.monotonicS();
  const sendTenths = async (count: number) => {
    for (let tenth = 0; tenth < count; tenth += 1) {
      await time.pass(0.1);
      probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    }
  };
  await sendTenths(20);
  // A sync of before that this disk is still at would stand in the way of the one to be held.
  await diskAtRest();
  isSlow = true;
  await sendTenths(50);
  // The disk is a real one: the write before the sync takes the time it takes.
  await expect.poll(() => letGo, { timeout: 60_000 }).not.toBeNull();
  isSlow = false;
  expect(session.recordingStatus().savedToS).toBeLessThan(2.5);
  const marked = await ask(session, 'run/mark', { mark: { type: 'heat-off' } });
  (letGo as (() => void) | null)?.();
  await sendTenths(20);
  await ask(session, 'run/stop', {});
  const { inputs } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  const readings = inputs.filter(({ kind }) => kind === 'reading');
  expect(readings.map(({ timeS }) => Math.round(10 * timeS))).toEqual(
    Array.from({ length: 90 }, (_, index) => index + 1),
  );
  expect(marked.timeS).toBeCloseTo(7, 2);
  expect(time.clock.monotonicS() - startS).toBeCloseTo(9, 6);
  const log = await readFile(path.join(runsFolder, runId, 'run.jsonl'), 'latin1');
  expect(log).not.toContain('"kind":"clock"');
});

test('tells that a run is over before the disk has taken the rest of it, and answers the stop after that', async () => {
  let wakes: (() => void) | null = null;
  const sleeps = () => new Promise<void>((resolve) => (wakes = resolve));
  let isAsleep = false;
  const { session, time, sendSecond } = await setUp({
    async createAppend(target) {
      const file = await nodeFileLayer.createAppend(target);
      if (!file.ok) return file;
      return succeed({
        ...file.value,
        async sync() {
          if (isAsleep) await sleeps();
          return file.value.sync();
        },
      });
    },
  });
  const runId = await start(session);
  for (let second = 0; second < 3; second += 1) await sendSecond();
  await time.pass(1);
  isAsleep = true;
  await sendSecond();
  let isStopped = false;
  const stopping = ask(session, 'run/stop', {}).then((answer) => {
    isStopped = true;
    return answer;
  });
  await expect
    .poll(() => session.recordingStatus())
    .toMatchObject({ runId, endedS: expect.any(Number) });
  await time.pass(11);
  expect(session.recordingStatus()).toMatchObject({
    state: 'recording',
    problem: { kind: 'disk-held' },
  });
  expect(isStopped).toBe(false);
  const { endS, endSnapshot } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  const asSent = structuredClone(endSnapshot);
  expect([asSent?.timeS, asSent?.head?.temperatureC]).toEqual([endS, 20]);
  isAsleep = false;
  while (!isStopped) {
    (wakes as (() => void) | null)?.();
    await new Promise(setImmediate);
  }
  expect(await stopping).toEqual({ runId });
  expect(session.recordingStatus()).toMatchObject({ state: 'idle', runId: null });
});

test('asks a disk that does not answer how much room it has no second time', async () => {
  let asked = 0;
  const { session, time } = await setUp({
    freeBytes() {
      asked += 1;
      return new Promise(() => {});
    },
  });
  await start(session);
  await time.pass(120);
  expect(asked).toBe(1);
});
