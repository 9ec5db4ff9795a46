import os from 'node:os';
import { expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { ask, setUpSession, teacher } from '../support/session-bench.ts';

const window = {
  browser: 'a browser',
  language: 'en',
  widthPx: 1280,
  heightPx: 720,
  preferences: { theme: 'dark', sound: true },
};

test('a report made while a run goes on holds what was refused, what the line did, and how the window is set', async () => {
  const { session, probeHub, runsFolder, time } = await setUpSession();
  const settings = { ...defaultRunSettings, name: 'Pear juice of group B' };
  await ask(session, 'run/start', { settings });
  await session.handle('run/start', { settings }, teacher);
  await session.handle('run/mark', { mark: { type: 'heat-off' } }, { mayCommand: false });
  const lost = { atS: time.clock.monotonicS(), state: 'lost', reason: 'unplugged' } as const;
  probeHub.send('link', lost);
  probeHub.send('status', {
    ...probeHub.status(),
    problem: { kind: 'port-not-found', path: '/dev/ttyACM0' },
  });
  const report = await ask(session, 'problem-report/make', { withRunNames: false, window });
  expect(report).toMatchObject({
    program: { version: '0.1.0', shell: 'loopback' },
    folder: { mayWrite: true, runs: 1 },
    recording: { state: 'recording' },
    recentProblems: [
      { what: expect.stringMatching(/^run\/start: already-recording/), times: 1 },
      { what: 'link lost: unplugged', times: 1 },
      { what: 'probe: port-not-found at /dev/ttyACM0', times: 1 },
    ],
    window,
  });
  const text = JSON.stringify(report);
  const secrets = [runsFolder, settings.name, os.hostname(), os.homedir(), os.userInfo().username];
  expect(secrets.filter((secret) => new RegExp(`\\b${secret}\\b`, 'i').test(text))).toEqual([]);
});

test('a viewer is given none', async () => {
  const { session } = await setUpSession();
  const body = { withRunNames: false, window: null };
  expect(await session.handle('problem-report/make', body, { mayCommand: false })).toMatchObject({
    error: { kind: 'viewer-may-not-command' },
  });
});
