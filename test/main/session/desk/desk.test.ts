import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { beforeAll, expect, onTestFinished, test } from 'vitest';
import { forkDesk, type SideProcess } from '#main';
import { defaultRunSettings, type RequestBody, type RequestName } from '#shared-core';
import { projectRoot } from '../../../../scripts/testing/step.ts';
import { until } from '../../probe/support/until.ts';
import { buildProgram } from '../../support/build-program.ts';
import {
  ask,
  fetchTable,
  head,
  setUpSession,
  takeIn,
  teacher,
} from '../../support/session-bench.ts';

const table = `time_s,head_c\n${Array.from({ length: 400 }, (_, row) => `${row},${(20 + row / 16).toFixed(2)}\n`).join('')}`;

/** The process as it is shipped, in one file: from its sources each start would take a second of work. */
let program: URL;
beforeAll(async () => {
  const source = path.join(projectRoot, 'main', 'session', 'desk', 'entry.ts');
  const folder = path.join(projectRoot, '.build', 'test-programs', 'desk');
  program = pathToFileURL(await buildProgram(source, folder));
});

/** Services with a real process that goes through whole runs. */
async function setUp() {
  const desks: SideProcess[] = [];
  const bench = await setUpSession({
    startDesk() {
      const desk = forkDesk(program);
      desks.push(desk);
      return desk;
    },
  });
  // Before the services are closed: a process that stands still does not end when it is asked to.
  onTestFinished(() => desks.at(-1)?.kill());
  const signal = (name: NodeJS.Signals) => {
    const id = desks.at(-1)?.processId;
    if (id) process.kill(id, name);
  };
  return { ...bench, desks, signal };
}

test('what goes through whole runs is answered by a process beside this one as it would be by this one', async () => {
  const beside = await setUp();
  const within = await setUpSession({ runsFolder: beside.runsFolder });
  const { runId } = await takeIn(beside.session, table);
  const progress: number[] = [];
  beside.session.on('pack', ({ done }) => progress.push(done));
  await ask(beside.session, 'packs/make', { packId: 'pack', runIds: [runId] });
  const both = async <N extends RequestName>(name: N, body: RequestBody<N>) =>
    Promise.all([beside, within].map(({ session }) => session.handle(name, body, teacher)));
  for (const [name, body] of [
    ['runs/list', {}],
    ['runs/read', { runId, fromIndex: 0 }],
    ['runs/changes', { runId }],
    ['runs/read', { runId: 'nothing-there', fromIndex: 0 }],
    ['packs/read', { packId: 'never-made', fromByte: 0 }],
  ] as const) {
    const [there, here] = await both(name, body);
    expect(there).toEqual(here);
  }
  const tables = [beside, within].map(({ session }) => fetchTable(session, runId, 'csv'));
  const [there, here] = await Promise.all(tables);
  expect(there).toBe(here);
  expect({ desks: beside.desks.length, last: progress.at(-1) }).toEqual({ desks: 1, last: 100 });
});

test('what the services change of a run is seen there at once, also when it was read before', async () => {
  const { session } = await setUp();
  const { runId } = await takeIn(session, table);
  const seen = async () => {
    const { summary, settings } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
    const { runs } = await ask(session, 'runs/list', {});
    return [summary.name, settings.charge.volumeMl, ...runs.map(({ name }) => name)];
  };
  await seen();
  await ask(session, 'runs/rename', { runId, name: 'Column of beads', notes: '' });
  const charge = { ...defaultRunSettings.charge, volumeMl: 240 };
  await ask(session, 'runs/correct', { runId, correction: { charge, reason: 'half of it' } });
  expect(await seen()).toEqual(['Column of beads', 240, 'Column of beads']);
  await ask(session, 'runs/trash', { runId });
  expect(await ask(session, 'runs/list', {})).toEqual({ runs: [] });
});

test('a run that is being recorded is read to its newest reading, and listed once', async () => {
  const { session, time, probeHub } = await setUp();
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  for (let second = 1; second <= 5; second += 1) {
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20 + second)]);
  }
  const { inputs, nextIndex } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  const { runs } = await ask(session, 'runs/list', {});
  expect({
    values: inputs.map((input) => input.kind === 'reading' && input.value),
    nextIndex,
    runs: runs.map((run) => [run.runId, run.ended]),
  }).toEqual({ values: [21, 22, 23, 24, 25], nextIndex: null, runs: [[runId, 'recording']] });
});

test('while it stands still a run is recorded, marked and stopped; killed, it is told and started anew', async () => {
  const { session, time, probeHub, desks, signal } = await setUp();
  await ask(session, 'runs/list', {});
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  signal('SIGSTOP');
  const stuck = [
    session.handle('runs/list', {}, teacher),
    session.handle('packs/make', { packId: 'pack', runIds: [runId] }, teacher),
  ];
  for (let second = 1; second <= 5; second += 1) {
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20 + second)]);
  }
  expect(await ask(session, 'run/mark', { mark: { type: 'heat-off' } })).toMatchObject({
    markId: 1,
  });
  await ask(session, 'run/stop', {});
  signal('SIGKILL');
  const stopped = { ok: false, error: { kind: 'internal' } };
  expect(await Promise.all(stuck)).toMatchObject([stopped, stopped]);
  const { inputs } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  expect({ kinds: inputs.map(({ kind }) => kind), desks: desks.length }).toEqual({
    kinds: [...Array(5).fill('reading'), 'mark'],
    desks: 2,
  });
});

test('a process that is asked to close ends by itself', async () => {
  const desk = forkDesk(program);
  let ended = false;
  desk.onExit(() => {
    ended = true;
  });
  desk.post({
    type: 'open',
    runsFolder: '.',
    app: { version: '', modelVersion: '', shell: 'loopback' },
  });
  desk.post({ type: 'close' });
  await until('its end', () => ended, 60);
});
