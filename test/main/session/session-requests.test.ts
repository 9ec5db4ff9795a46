import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  defaultRunSettings,
  type Result,
  requests,
  type ServiceProblem,
  usualWarmthBand,
} from '#shared-core';
import {
  ask,
  setUpSession as setUp,
  takeIn,
  teacher,
  temperatureC,
} from '../support/session-bench.ts';

describe('requests to a session', () => {
  test('imports a CSV as a run and reports the rows it could not use by their line', async () => {
    const { session } = await setUp();
    const rows = Array.from({ length: 1800 }, (_, second) => `${second};${temperatureC(second)}`);
    rows[3] = '3;oops';
    const csv = `Time (s);Head (°C)\n${rows.join('\n').replaceAll('.', ',')}\n`;
    const imported = await takeIn(session, csv);
    expect(imported.rejectedRows).toEqual([
      'Line 5: "oops" in the column "Head (°C)" is not a number.',
    ]);
    const { runs } = await ask(session, 'runs/list', {});
    expect(runs[0]).toMatchObject({
      runId: imported.runId,
      readings: 1799,
      ended: 'clean',
      imported: true,
    });
    expect(runs[0]?.plateau?.value).toBeCloseTo(78.26, 1);
  });

  test('renames with notes, and moves a run to the trash, without touching its log', async () => {
    const { session, runsFolder } = await setUp();
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await ask(session, 'run/stop', {});
    const logFile = path.join(runsFolder, runId, 'run.jsonl');
    const before = await readFile(logFile);
    await ask(session, 'runs/rename', { runId, name: 'Zweite Gärung', notes: 'Slow heat' });
    const renamed = await ask(session, 'runs/rename', { runId, name: 'Birne', notes: '' });
    expect([renamed.name, renamed.notes]).toEqual(['Birne', '']);
    expect((await readFile(logFile)).equals(before)).toBe(true);
    await ask(session, 'runs/trash', { runId });
    expect((await ask(session, 'runs/list', {})).runs).toEqual([]);
    expect(await readFile(path.join(runsFolder, 'trash', runId, 'run.jsonl'))).toEqual(before);
  });

  test('keeps a ferment warm until it is left', async () => {
    const { session, time } = await setUp();
    const beganAtIso = new Date(time.clock.wallMs() - 86_400_000).toISOString();
    const { fermentId } = await ask(session, 'ferments/begin', {
      stated: { name: 'Pear', beganAtIso, volumeMl: 1000, sugarG: null, wentIn: 'pear juice' },
    });
    await ask(session, 'warmth/keep', { fermentId, band: usualWarmthBand, channel: 'ferment' });
    const left = await ask(session, 'warmth/leave', { fermentId });
    expect(left).toMatchObject({ isKeptNow: false, keeping: { channel: 'ferment' } });
    expect(await ask(session, 'warmth/now', {})).toEqual({ kept: null });
  });

  test('tells the way to a second screen to a window that commands, never to a viewer', async () => {
    const { session } = await setUp();
    const offer = { by: 'address', address: 'http://127.0.0.1:1/#token=viewer' } as const;
    const told = async (mayCommand: boolean) => {
      const asker = { mayCommand, secondScreen: { offer } };
      const answer = await session.handle('app/describe', {}, asker);
      return answer.ok && requests['app/describe'].answer.parse(answer.value).secondScreen;
    };
    expect([await told(true), await told(false)]).toEqual([offer, null]);
  });

  test('opens the second screen where the shell has a window for it', async () => {
    const { session } = await setUp();
    let opened = 0;
    const secondScreen = { offer: { by: 'window' } as const, open: () => void ++opened };
    const asker = { mayCommand: true, secondScreen };
    const answer = await session.handle('app/open-second-screen', {}, asker);
    expect([answer, opened]).toEqual([{ ok: true, value: {} }, 1]);
  });

  test.each<[string, unknown, boolean, ServiceProblem['kind']]>([
    ['run/fly', {}, true, 'request-invalid'],
    ['toString', {}, true, 'request-invalid'],
    ['run/start', { settings: {} }, true, 'request-invalid'],
    ['run/mark', { mark: { type: 'heat-on' } }, true, 'not-recording'],
    ['run/mark', { mark: { type: 'heat-on' } }, false, 'viewer-may-not-command'],
    ['app/open-second-screen', {}, false, 'viewer-may-not-command'],
    ['app/open-second-screen', {}, true, 'request-invalid'],
    ['run/stop', {}, true, 'not-recording'],
    ['runs/read', { runId: '../../etc', fromIndex: 0 }, true, 'run-not-found'],
    ['runs/trash', { runId: 'trash' }, true, 'run-not-found'],
    [
      'packs/make-table',
      { packId: 'a', runId: '20200101T000000Z', format: 'csv' },
      true,
      'run-not-found',
    ],
  ])('answers %s %j (may command: %s) with %s', async (name, body, mayCommand, kind) => {
    const { session } = await setUp();
    const result = (await session.handle(name, body, { mayCommand })) as Result<
      unknown,
      ServiceProblem
    >;
    expect(result.ok ? null : result.error.kind).toBe(kind);
  });

  test('says briefly what is wrong with a body that is wrong in ten thousand places', async () => {
    const { session } = await setUp();
    const body = { packId: 'a', runIds: Array.from({ length: 10_000 }, () => 7) };
    const result = await session.handle('packs/make', body, teacher);
    if (result.ok || result.error.kind !== 'request-invalid') throw new Error('not refused');
    expect(result.error.message.length).toBeLessThanOrEqual(400);
  });

  test('refuses to record without a probe, twice at once, or with another time scale', async () => {
    const { session, probeHub } = await setUp();
    await ask(session, 'run/start', { settings: defaultRunSettings });
    const again = await session.handle('run/start', { settings: defaultRunSettings }, teacher);
    const source = { kind: 'demo', timeScale: 60 };
    const rescaled = await session.handle('probe/connect', { source }, teacher);
    await ask(session, 'run/stop', {});
    await probeHub.disconnect();
    const noProbe = await session.handle('run/start', { settings: defaultRunSettings }, teacher);
    expect([again, rescaled, noProbe].map((result) => (result.ok ? null : result.error))).toEqual([
      { kind: 'already-recording', runId: expect.any(String) },
      { kind: 'already-recording', runId: expect.any(String) },
      { kind: 'no-probe' },
    ]);
  });
});
