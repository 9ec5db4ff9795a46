import { mkdir, readdir } from 'node:fs/promises';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { nodeFileLayer } from '#main';
import { defaultRunSettings } from '#shared-core';
import { serveDesk } from '../../../../main/session/desk/serve-desk.ts';
import { createManualTime } from '../../support/manual-time.ts';
import { temporaryFolder } from '../../support/temporary-folder.ts';

const app = { version: '0.1.0', modelVersion: '7', shell: 'loopback' } as const;
const table = Buffer.from('time_s,head_c\n0,20\n1,21\n');

/** The desk's end of the wire, in this process. */
async function setUp() {
  const runsFolder = await temporaryFolder();
  const waiting = new Map<number, (result: unknown) => void>();
  const progress: unknown[] = [];
  let tell: (message: unknown) => void = () => {};
  let onExit = () => {};
  const exited = new Promise<void>((resolve) => {
    onExit = resolve;
  });
  serveDesk({
    port: {
      post(message) {
        const { type, id, result } = message as { type: string; id: number; result: unknown };
        if (type === 'answer') waiting.get(id)?.(result);
        else progress.push(message);
      },
      on(listener) {
        tell = listener;
      },
    },
    clock: createManualTime().clock,
    files: nodeFileLayer,
    exit: onExit,
  });
  let asked = 0;
  const ask = (name: string, body: unknown, other: object = {}) => {
    asked += 1;
    const id = asked;
    const answer = new Promise((resolve) => waiting.set(id, resolve));
    tell({ type: 'ask', id, name, body, mayWrite: true, underWay: null, notSaved: [], ...other });
    return answer as Promise<{ readonly ok: boolean; readonly value: never }>;
  };
  const open = () => tell({ type: 'open', runsFolder, app });
  const close = async () => {
    tell({ type: 'close' });
    await exited;
  };
  return { runsFolder, progress, ask, tell, open, close };
}

/** A table taken in, and the name of its run. */
async function takeIn({ ask }: Awaited<ReturnType<typeof setUp>>, other: object = {}) {
  const { value: begun } = await ask('imports/begin', { bytes: table.length });
  const { importId } = begun as { readonly importId: string };
  await ask('imports/add', { importId, base64: table.toString('base64') });
  const body = { importId, encoding: 'auto', mapping: null, settings: defaultRunSettings };
  return ask('imports/finish', body, other);
}

test('before it knows the folder there is nothing it can answer', async () => {
  const desk = await setUp();
  expect(await desk.ask('runs/list', {})).toMatchObject({
    ok: false,
    error: { kind: 'request-invalid' },
  });
});

test('takes in, lists, reads and packs as the services do, and says how far a pack is', async () => {
  const desk = await setUp();
  onTestFinished(() => desk.close());
  desk.open();
  desk.tell('nonsense');
  const taken = await takeIn(desk);
  expect(taken.ok).toBe(true);
  const { runId } = taken.value as { readonly runId: string };
  expect(await desk.ask('runs/list', {})).toMatchObject({
    ok: true,
    value: { runs: [{ runId, readings: 2, ended: 'clean' }] },
  });
  expect(await desk.ask('runs/read', { runId, fromIndex: 1 })).toMatchObject({
    ok: true,
    value: { inputs: [{ timeS: 1, value: 21 }] },
  });
  expect(await desk.ask('runs/changes', { runId: 'none-such' })).toMatchObject({
    ok: false,
    error: { kind: 'run-not-found' },
  });
  const packed = await desk.ask('packs/make', { packId: 'p', runIds: [runId] });
  expect(packed).toMatchObject({ ok: true, value: { bytes: expect.any(Number) } });
  expect(desk.progress.at(-1)).toMatchObject({
    type: 'pack',
    progress: { packId: 'p', done: 100, total: 100 },
  });
});

test('writes nothing where the services say that the folder is another program’s now', async () => {
  const desk = await setUp();
  onTestFinished(() => desk.close());
  desk.open();
  expect(await takeIn(desk, { mayWrite: false })).toMatchObject({
    ok: false,
    error: { kind: 'folder-in-use' },
  });
  expect(await readdir(desk.runsFolder)).toEqual([]);
});

test('knows of the run that is being recorded what the services tell it, and of no other', async () => {
  const desk = await setUp();
  onTestFinished(() => desk.close());
  desk.open();
  const taken = await takeIn(desk);
  const { runId: past } = taken.value as { readonly runId: string };
  const runId = '20250314T101501Z';
  await mkdir(path.join(desk.runsFolder, runId));
  const summary = { runId, name: 'Pear', readings: 2, ended: 'recording' };
  const view = { known: { summary, header: null, hasTornEnd: false }, unsaved: [] };
  const listed = await desk.ask('runs/list', {}, { underWay: { runId, view } });
  expect(listed).toMatchObject({ value: { runs: [summary, { runId: past }] } });
  expect(
    await desk.ask('runs/read', { runId: past, fromIndex: 0 }, { underWay: { runId, view } }),
  ).toMatchObject({ ok: true, value: { summary: { runId: past, ended: 'clean' } } });
});

test('closes what it has made before its process ends', async () => {
  const desk = await setUp();
  desk.open();
  const { value } = await takeIn(desk);
  const { runId } = value as { readonly runId: string };
  await desk.ask('packs/make-table', { packId: 't', runId, format: 'csv' });
  await desk.close();
  expect(await desk.ask('packs/read', { packId: 't', fromByte: 0 })).toMatchObject({
    ok: false,
    error: { kind: 'request-invalid' },
  });
});
