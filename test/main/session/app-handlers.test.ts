import process from 'node:process';
import { expect, test } from 'vitest';
import type { RequestAnswer } from '#shared-core';
import { ask, setUpSession, teacher } from '../support/session-bench.ts';

const offer = { by: 'window' } as const;
type ClassView = RequestAnswer<'class-view/status'>;
const isOpen: ClassView = { state: 'open', address: 'http://192.0.2.7:4000/', onlookers: 3 };
const isShut: ClassView = { state: 'shut' };

test('a window is told what program this is, where its runs lie and what it may do', async () => {
  const { session, runsFolder } = await setUpSession();
  expect(await ask(session, 'app/describe', {})).toEqual({
    version: '0.1.0',
    modelVersion: '1',
    shell: 'loopback',
    platform: process.platform,
    runsFolder,
    mayCommand: true,
    secondScreen: null,
  });
});

test('screens of the pupils are the shell’s to give: where it has a way, all that is asked goes there', async () => {
  const { session } = await setUpSession();
  const asked: string[] = [];
  const answering = (what: string, answer: ClassView) => () => {
    asked.push(what);
    return Promise.resolve(answer);
  };
  const classView = {
    status: () => isShut,
    open: answering('open', isOpen),
    shut: answering('shut', isShut),
  };
  const asker = { mayCommand: true, secondScreen: { offer, classView } };
  const answers = [];
  for (const name of ['class-view/status', 'class-view/open', 'class-view/shut']) {
    answers.push(await session.handle(name, {}, asker));
  }
  expect(answers).toEqual([isShut, isOpen, isShut].map((value) => ({ ok: true, value })));
  expect(asked).toEqual(['open', 'shut']);
});

test.each([
  ['no second screen', teacher],
  ['no way to a local network', { mayCommand: true, secondScreen: { offer } }],
])('where the shell has %s there is no class view, and asking harms nothing', async (_, asker) => {
  const { session } = await setUpSession();
  for (const name of ['class-view/status', 'class-view/open', 'class-view/shut']) {
    expect(await session.handle(name, {}, asker)).toEqual({
      ok: true,
      value: { state: 'impossible', why: 'no-network' },
    });
  }
});

test('a second screen that is opened by its address says so', async () => {
  const { session } = await setUpSession();
  const asker = { mayCommand: true, secondScreen: { offer } };
  expect(await session.handle('app/open-second-screen', {}, asker)).toMatchObject({
    ok: false,
    error: { kind: 'request-invalid', message: 'a second screen is opened by its address' },
  });
});
