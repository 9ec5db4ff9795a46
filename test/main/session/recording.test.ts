import { expect, test } from 'vitest';
import { lowSpaceBytes, type SideProcess } from '#main';
import { defaultRunSettings, fail, serialSourceSchema, succeed } from '#shared-core';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';

const settings = defaultRunSettings;
const rehearsed = async (connect: object | null, timeScale = 1) => {
  const { session, probeHub } = await setUpSession({ timeScale });
  const serial = { kind: 'serial', path: '/dev/ttyACM0', ...connect };
  if (connect !== null) await probeHub.connect(serialSourceSchema.parse(serial));
  await ask(session, 'run/start', { settings });
  return (await ask(session, 'runs/list', {})).runs[0]?.rehearsal;
};

test('a run of a real probe in its own time is no rehearsal; one of a simulated still, or in another time, is', async () => {
  expect([
    await rehearsed({}),
    await rehearsed({ timeScale: 20 }),
    await rehearsed(null, 60),
  ]).toEqual([false, true, true]);
});

test('in a rehearsal the probe is given as long as a hitch of the computer lasts there, and no less than was stated', async () => {
  const patienceS = async (timeScale: number, silenceS: number) => {
    const { session } = await setUpSession({ timeScale });
    const probe = { ...settings.probe, silenceS };
    const { runId } = await ask(session, 'run/start', { settings: { ...settings, probe } });
    const page = await ask(session, 'runs/read', { runId, fromIndex: 0 });
    return page.settings.probe.silenceS;
  };
  // A second of real time.
  expect([await patienceS(1, 5), await patienceS(60, 5), await patienceS(60, 90)]).toEqual([
    5, 60, 90,
  ]);
});

test('windows are told of the start and of the end, and what runs while it does', async () => {
  const { session, time } = await setUpSession();
  const told: unknown[] = [];
  session.on('recording', ({ state, runId }) => told.push([state, runId]));
  const idle = { state: 'idle', runId: null, startedAtIso: null, savedToS: null, problem: null };
  expect(await ask(session, 'run/status', {})).toEqual(idle);
  const { runId } = await ask(session, 'run/start', { settings });
  expect(await ask(session, 'run/status', {})).toMatchObject({
    state: 'recording',
    runId,
    startedAtIso: new Date(time.clock.wallMs()).toISOString(),
    problem: null,
  });
  expect(told[0]).toEqual(['recording', runId]);
  await ask(session, 'run/stop', {});
  expect(told.at(-1)).toEqual(['idle', null]);
  expect(await ask(session, 'run/status', {})).toEqual(idle);
});

test('two starts at once begin one run, and a start while one runs says which', async () => {
  const { session } = await setUpSession();
  const start = () => session.handle('run/start', { settings }, teacher);
  const [first, second] = await Promise.all([start(), start()]);
  expect(first).toMatchObject({ ok: true });
  expect(second).toEqual(fail({ kind: 'already-recording', runId: '' }));
  const { runId } = session.recordingStatus();
  expect(await start()).toEqual(fail({ kind: 'already-recording', runId }));
  // One that was refused does not stand in the way of the next.
  await ask(session, 'run/stop', {});
  expect(await start()).toMatchObject({ ok: true });
});

test('nothing is started, found or connected beside a run that would harm it', async () => {
  const { session } = await setUpSession();
  const { runId } = await ask(session, 'run/start', { settings });
  const running = fail({ kind: 'already-recording', runId });
  expect([
    await session.handle('probe/find', { path: '/dev/ttyACM7' }, teacher),
    await session.handle('runs/rename', { runId, name: 'Mine', notes: '' }, teacher),
    await session.handle('runs/trash', { runId }, teacher),
    await session.handle(
      'runs/correct',
      { runId, correction: { charge: settings.charge, reason: 'misread' } },
      teacher,
    ),
  ]).toEqual([running, running, running, running]);
  // The same scale of time: a probe that failed may be connected again.
  const source = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM7' });
  expect(await session.handle('probe/connect', { source }, teacher)).toMatchObject({ ok: true });
  await ask(session, 'run/stop', {});
  const other = { ...source, timeScale: 20 };
  expect(await session.handle('probe/connect', { source: other }, teacher)).toMatchObject({
    ok: true,
  });
  expect(await ask(session, 'probe/find', { path: '/dev/ttyACM7' })).toMatchObject({
    because: 'Nothing was heard.',
  });
  expect(await ask(session, 'probe/status', {})).toMatchObject({ source: null });
  expect(await ask(session, 'ports/list', {})).toEqual({ ports: [] });
});

test('a disk that is nearly full is told at once at the start, and not where nobody knows', async () => {
  let free: () => ReturnType<typeof succeed<number>> | ReturnType<typeof fail<never>> = () =>
    succeed(lowSpaceBytes - 1);
  const { session, time, runsFolder } = await setUpSession({
    faults: { freeBytes: async () => free() as never },
  });
  await ask(session, 'run/start', { settings });
  await expect
    .poll(() => session.recordingStatus().problem)
    .toEqual({ kind: 'disk-full', path: runsFolder });
  free = () => fail({ kind: 'failed', path: runsFolder, message: 'EIO' } as never);
  await time.pass(10);
  await expect.poll(() => session.recordingStatus().problem).toBeNull();
  free = () => succeed(lowSpaceBytes);
  await time.pass(10);
  expect(session.recordingStatus().problem).toBeNull();
});

test('whoever reads runs in another process is told of the one that is being recorded, and of none when there is none', async () => {
  const asked: { readonly underWay?: unknown; readonly mayWrite?: unknown }[] = [];
  let answer: (raw: unknown) => void = () => {};
  let exit = () => {};
  const startDesk = (): SideProcess => ({
    processId: null,
    on: (listener) => {
      answer = listener;
    },
    onExit: (listener) => {
      exit = listener;
    },
    kill: () => exit(),
    post(message) {
      const { type, id } = message as { readonly type: string; readonly id: number };
      if (type === 'close') exit();
      if (type !== 'ask') return;
      asked.push(message as object);
      answer({ type: 'answer', id, result: succeed({ runs: [] }) });
    },
  });
  const { session, time, probeHub } = await setUpSession({ startDesk });
  await ask(session, 'runs/list', {});
  const { runId } = await ask(session, 'run/start', { settings });
  await time.pass(1);
  probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
  await ask(session, 'runs/list', {});
  await ask(session, 'run/stop', {});
  await ask(session, 'runs/list', {});
  expect(asked).toMatchObject([
    { underWay: null, mayWrite: true },
    {
      underWay: {
        runId,
        view: { known: { summary: { readings: 1, durationS: 1 }, hasTornEnd: false } },
      },
    },
    { underWay: null },
  ]);
});

test('a session that is closed while a run goes on ends it cleanly', async () => {
  const { session, runsFolder } = await setUpSession();
  const { runId } = await ask(session, 'run/start', { settings });
  await session.close();
  const next = await setUpSession({ runsFolder });
  expect((await ask(next.session, 'runs/list', {})).runs).toMatchObject([
    { runId, ended: 'clean' },
  ]);
});
