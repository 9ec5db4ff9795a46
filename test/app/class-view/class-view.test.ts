import { writeFileSync } from 'node:fs';
import { get } from 'node:http';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { WebSocket } from 'ws';
import { defaultRunSettings, type RequestAnswer, type RequestName, requests } from '#shared-core';
import { createClassViewDoor } from '../../../app/class-view/index.ts';
import { createWindowFiles } from '../../../app/files/index.ts';
import { until } from '../../main/probe/support/until.ts';
import { ask, setUpSession } from '../../main/support/session-bench.ts';
import { temporaryFolder } from '../../main/support/temporary-folder.ts';

const host = '127.0.0.2';
const named = {
  ...defaultRunSettings,
  name: 'Group of Somebody',
  rig: { ...defaultRunSettings.rig, description: 'Still of Somebody' },
  safetyConfirms: [{ check: 'water-on', role: 'technician' as const }],
  ferment: {
    fermentId: 'a',
    name: 'Pears of Somebody',
    wentIn: 'Yeast from Somebody',
    beganAtIso: '2026-05-01T08:00:00Z',
    chargedAtIso: '2026-05-09T08:00:00Z',
    entries: 9,
    state: 'finished',
    strengthAbv: { low: 9.6, value: 10, high: 10.4 },
    sugarGPerL: null,
  },
};

/** A run under way with a note that names a person, and the class let in to watch it. */
async function openLesson() {
  const windowFolder = await temporaryFolder();
  writeFileSync(path.join(windowFolder, 'index.html'), '<p>window</p>');
  const { session, time } = await setUpSession();
  const { runId } = await ask(session, 'run/start', { settings: named });
  await ask(session, 'run/mark', { mark: { type: 'note', text: 'Somebody broke a flask' } });
  const door = createClassViewDoor({
    services: session,
    windowFiles: createWindowFiles(windowFolder),
    findHost: () => host,
  });
  onTestFinished(async () => {
    await door.shut();
  });
  const address = addressOf(await door.open());
  return { session, time, door, runId, address, code: address.pathname.slice(1) };
}

function addressOf(view: RequestAnswer<'class-view/status'>): URL {
  if (view.state !== 'open') throw new Error(view.state);
  return new URL(view.address);
}

function statusOf(address: URL, target: string, name = address.host): Promise<number> {
  return new Promise((resolve, reject) => {
    get(
      { host, port: address.port, path: target, headers: { host: name }, agent: false },
      (answer) => {
        answer.resume();
        resolve(answer.statusCode ?? 0);
      },
    ).on('error', reject);
  });
}

/** Everything a screen hears after it has shown the code; the list grows. */
function look(address: URL, token: string, origin = address.origin) {
  const socket = new WebSocket(`ws://${address.host}/service`, { origin });
  onTestFinished(() => socket.terminate());
  const heard: { type: string; id?: number; name?: string; result?: unknown }[] = [];
  const closed = new Promise<number>((resolve) => {
    socket.on('close', resolve);
    socket.on('error', () => resolve(-1));
  });
  socket.on('open', () => socket.send(JSON.stringify({ token })));
  socket.on('message', (data) => heard.push(JSON.parse(String(data))));
  let id = 0;
  return {
    socket,
    heard,
    closed,
    welcomed: () => until('a welcome', () => heard.some(({ type }) => type === 'welcome')),
    async ask(name: string, body: unknown = {}) {
      id += 1;
      const asked = id;
      socket.send(JSON.stringify({ id: asked, name, body }));
      await until(`an answer to ${name}`, () => heard.some((message) => message.id === asked));
      return heard.find((message) => message.id === asked)?.result;
    },
  };
}

test('it is shut until somebody opens it, and says plainly where there is no network', async () => {
  const { session } = await setUpSession();
  const parts = { services: session, windowFiles: createWindowFiles('.') };
  const door = createClassViewDoor({ ...parts, findHost: () => null });
  expect([door.status(), await door.open()]).toEqual([
    { state: 'shut' },
    { state: 'impossible', why: 'no-network' },
  ]);
  const strange = createClassViewDoor({ ...parts, findHost: () => '203.0.113.9' });
  expect(await strange.open()).toEqual({ state: 'impossible', why: 'not-allowed' });
});

test('a screen with the code sees the run under way without a name, a note or a path', async () => {
  const { address, code, runId, session, time } = await openLesson();
  expect(await statusOf(address, `/${code.toLowerCase()}`)).toBe(303);
  const screen = look(address, code);
  await screen.welcomed();
  const page = await screen.ask('runs/read', { runId, fromIndex: 0 });
  expect(page).toMatchObject({ ok: true, value: { settings: { name: 'The run' } } });
  for (const name of ['app/describe', 'run/status', 'probe/status', 'runs/list', 'rigs/list']) {
    const answer = (await screen.ask(name)) as { ok: boolean; value: unknown };
    expect(answer.ok).toBe(true);
    expect(requests[name as RequestName].answer.safeParse(answer.value).success).toBe(true);
  }
  await ask(session, 'run/mark', { mark: { type: 'note', text: 'Somebody again' } });
  await time.pass(2);
  await until('the mark', () => JSON.stringify(screen.heard).includes('"name":"inputs"'));
  const all = JSON.stringify(screen.heard);
  expect(all).not.toContain('Somebody');
  expect(all).not.toContain('technician');
  const described = (await ask(session, 'app/describe', {})).runsFolder;
  expect(all).not.toContain(described);
});

test('of all requests there are, no other is answered, and no run but the one under way', async () => {
  const { address, code } = await openLesson();
  const screen = look(address, code);
  await screen.welcomed();
  const answered = new Set<string>();
  for (const name of Object.keys(requests)) {
    const result = (await screen.ask(name, { runId: 'another', fromIndex: 0 })) as { ok: boolean };
    if (result.ok) answered.add(name);
  }
  const mayBeAnswered = ['app/describe', 'ports/list', 'probe/status', 'rigs/list', 'run/status'];
  expect([...answered].filter((name) => !mayBeAnswered.includes(name))).toEqual(['runs/list']);
  expect(await screen.ask('runs/read', { runId: 'another', fromIndex: 0 })).toEqual({
    ok: false,
    error: { kind: 'viewer-may-not-command' },
  });
});

test('wrong codes are soon not looked at any more, by address or by socket', async () => {
  const { address, code } = await openLesson();
  const [guess] = ['AAAAAA', 'BBBBBB'].filter((wrong) => wrong !== code);
  for (let tries = 0; tries < 4; tries += 1) {
    expect(await statusOf(address, `/${guess}`)).toBe(403);
    expect(await look(address, guess ?? '').closed).toBe(4401);
  }
  expect(await statusOf(address, `/${code}`)).toBe(403);
  expect(await look(address, code).closed).toBe(4401);
});

test('pages of other places, other names, long messages and crowds of sockets get nowhere', async () => {
  const { address, code, door } = await openLesson();
  expect(await statusOf(address, '/', 'elsewhere.test')).toBe(421);
  expect(await look(address, code, 'http://elsewhere.test').closed).toBe(-1);
  const crowd = Array.from({ length: 60 }, () => look(address, code));
  const refused = await Promise.all(crowd.slice(20).map(({ closed }) => closed));
  expect(refused.every((closeCode) => closeCode === -1)).toBe(true);
  for (const { socket } of crowd) socket.terminate();
  await until('room again', () => (door.status() as { onlookers: number }).onlookers === 0);
  const screen = look(address, code);
  await screen.welcomed();
  screen.socket.send('x'.repeat(2 * 1024 * 1024));
  expect(await screen.closed).toBe(1009);
});

test('it ends with the run, and a new lesson has a new code', async () => {
  const { session, door, address, code } = await openLesson();
  const screen = look(address, code);
  await screen.welcomed();
  await ask(session, 'run/stop', {});
  expect(await screen.closed).toBe(4401);
  await until('it is shut', () => door.status().state === 'shut');
  expect(addressOf(await door.open()).pathname).not.toBe(address.pathname);
});
