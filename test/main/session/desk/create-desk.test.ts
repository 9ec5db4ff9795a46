import { expect, test } from 'vitest';
import type { SideProcess } from '#main';
import type { EventBody, Result } from '#shared-core';
import { createDesk, type DeskSetup } from '../../../../main/session/desk/create-desk.ts';
import { createManualTime } from '../../support/manual-time.ts';

const app = { version: '0.1.0', modelVersion: '7', shell: 'loopback' } as const;
const teacher = { mayCommand: true };
const stopped = { kind: 'internal', message: expect.stringMatching(/Try it once more\.$/) };

/** A desk whose process the test plays. */
function setUp(other: Partial<DeskSetup> = {}) {
  const time = createManualTime();
  const processes: { posted: unknown[]; answer: (raw: unknown) => void; exit: () => void }[] = [];
  const killed: number[] = [];
  const progress: EventBody<'pack'>[] = [];
  const desk = createDesk({
    startProcess(): SideProcess {
      const heard: ((raw: unknown) => void)[] = [];
      const exits: (() => void)[] = [];
      const posted: unknown[] = [];
      const index = processes.length;
      processes.push({
        posted,
        answer: (raw) => heard.forEach((listener) => void listener(raw)),
        exit: () => exits.splice(0).forEach((listener) => void listener()),
      });
      return {
        processId: null,
        post: (message) => posted.push(message),
        on: (listener) => heard.push(listener),
        onExit: (listener) => exits.push(listener),
        kill: () => killed.push(index),
      };
    },
    scheduler: time.scheduler,
    runsFolder: '/runs',
    app,
    mayWrite: () => true,
    underWay: () => null,
    notSaved: () => [],
    onPack: (body) => progress.push(body),
    ...other,
  });
  const list = () => desk.handlers['runs/list']({}, teacher);
  const read = (runId: string) => desk.handlers['runs/read']({ runId, fromIndex: 0 }, teacher);
  return { desk, time, processes, killed, progress, list, read };
}

const asked = (id: number, name: string, body: unknown) => ({
  type: 'ask',
  id,
  name,
  body,
  mayWrite: true,
  underWay: null,
  notSaved: [],
});
const answered = (id: number, result: Result<unknown, unknown>) => ({ type: 'answer', id, result });

test('a process is started when the first thing is asked, once, and gets to know folder and program', async () => {
  const { processes, list, read } = setUp({ app: { ...app, more: 'of the shell' } as typeof app });
  expect(processes).toHaveLength(0);
  void list();
  void read('20250314T101500Z');
  expect(processes.map(({ posted }) => posted)).toEqual([
    [
      { type: 'open', runsFolder: '/runs', app },
      asked(1, 'runs/list', {}),
      asked(2, 'runs/read', { runId: '20250314T101500Z', fromIndex: 0 }),
    ],
  ]);
});

test('each question says whether the folder may be written and what is being recorded at that moment', () => {
  let held = true;
  let underWay: ReturnType<DeskSetup['underWay']> = null;
  const { processes, list } = setUp({ mayWrite: () => held, underWay: () => underWay });
  void list();
  held = false;
  underWay = { runId: '20250314T101500Z' } as NonNullable<typeof underWay>;
  void list();
  expect(processes[0]?.posted.slice(1)).toMatchObject([
    { mayWrite: true, underWay: null },
    { mayWrite: false, underWay: { runId: '20250314T101500Z' } },
  ]);
});

test('answers go to whoever asked, in whatever order they come, and nonsense to nobody', async () => {
  const { processes, progress, list, read } = setUp();
  const [listed, found] = [list(), read('20250314T101500Z')];
  const { answer } = processes[0] ?? { answer: () => {} };
  answer('nonsense');
  answer({ type: 'answer', id: 'nonsense' });
  answer(answered(9, { ok: true, value: 'of nobody' }));
  answer({ type: 'pack', progress: { packId: 'a', doing: 'x.csv', done: 3, total: 100 } });
  const error = { kind: 'run-not-found', runId: '20250314T101500Z' };
  answer(answered(2, { ok: false, error }));
  answer(answered(1, { ok: true, value: { runs: [] } }));
  expect(await Promise.all([listed, found])).toEqual([
    { ok: true, value: { runs: [] } },
    { ok: false, error },
  ]);
  expect(progress).toEqual([{ packId: 'a', doing: 'x.csv', done: 3, total: 100 }]);
});

test('whoever waits is told when the process ends by itself, and the next question starts another', async () => {
  const { processes, list } = setUp();
  const waiting = [list(), list()];
  processes[0]?.exit();
  expect(await Promise.all(waiting)).toEqual([
    { ok: false, error: stopped },
    { ok: false, error: stopped },
  ]);
  const next = list();
  expect(processes.map(({ posted }) => posted.length)).toEqual([3, 2]);
  processes[1]?.answer(answered(3, { ok: true, value: { runs: [] } }));
  expect(await next).toEqual({ ok: true, value: { runs: [] } });
});

test('a process is asked to close, and is not ended by force when it does', async () => {
  const { desk, processes, killed, time, list } = setUp();
  void list();
  let isClosed = false;
  const closing = desk.close().then(() => {
    isClosed = true;
  });
  expect(processes[0]?.posted.at(-1)).toEqual({ type: 'close' });
  await time.pass(1.9);
  expect([isClosed, killed]).toEqual([false, []]);
  processes[0]?.exit();
  await closing;
  await time.pass(10);
  expect(killed).toEqual([]);
  expect(await list()).toEqual({ ok: false, error: stopped });
  expect(processes).toHaveLength(1);
});

test('a process that does not close within two seconds is ended', async () => {
  const { desk, processes, killed, time, list } = setUp();
  void list();
  const closing = desk.close();
  await time.pass(2);
  expect(killed).toEqual([0]);
  processes[0]?.exit();
  await closing;
});

test('where nothing was asked nothing is started, and closing waits for nothing', async () => {
  const { desk, processes, list } = setUp();
  await desk.close();
  expect(await list()).toEqual({ ok: false, error: stopped });
  expect(processes).toEqual([]);
});
