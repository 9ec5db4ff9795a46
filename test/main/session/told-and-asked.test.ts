import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { defaultRunSettings, usualWarmthBand } from '#shared-core';
import { pearJuice } from '../support/pear-juice.ts';
import { plainPort } from '../support/plain-port.ts';
import { ask, head, setUpSession } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

test('what the hub tells of probe and ports goes to the windows, until the session is closed', async () => {
  const { session, probeHub } = await setUpSession();
  const told: unknown[] = [];
  session.on('probe', ({ lastLine }) => told.push(lastLine));
  session.on('ports', ({ ports }) => told.push(ports));
  const status = probeHub.status();
  probeHub.send('status', { ...status, lastLine: '20.5' });
  probeHub.send('ports', [plainPort]);
  await expect.poll(() => told).toEqual(['20.5', [plainPort]]);
  await session.close();
  probeHub.send('status', { ...status, lastLine: '20.6' });
  expect(told).toHaveLength(2);
  expect(probeHub.calls).toEqual(['close']);
});

test('before the computer sleeps the probe is let go, and after it the clocks are looked at and it is asked for again', async () => {
  let sleptS = 0;
  let monotonicS = () => 0;
  const bench = await setUpSession({ uptimeS: () => monotonicS() + sleptS });
  const { session, probeHub, time } = bench;
  monotonicS = time.clock.monotonicS;
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  await time.pass(1);
  probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
  await session.suspend();
  expect(probeHub.calls).toEqual(['suspend']);
  sleptS = 60;
  time.stepWall(60);
  await time.pass(0.1);
  await session.resume();
  expect(probeHub.calls).toEqual(['suspend', 'resume']);
  // Before they would have been looked at anyway.
  const { inputs } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
  expect(inputs.slice(1)).toMatchObject([
    { kind: 'link', state: 'lost', reason: 'computer-asleep' },
    { kind: 'link', state: 'back', reason: 'computer-asleep', timeS: 61.1 },
  ]);
});

test('a probe that is let go while nothing is recorded is gone, and may be connected again', async () => {
  const { session, probeHub } = await setUpSession();
  await ask(session, 'probe/disconnect', {});
  expect(await ask(session, 'probe/status', {})).toMatchObject({ state: 'none', source: null });
  const source = { kind: 'serial', path: '/dev/ttyACM7' } as const;
  expect(await ask(session, 'probe/connect', { source })).toMatchObject({ source });
  expect(probeHub.status().source).toMatchObject({ path: '/dev/ttyACM7' });
});

test('rigs that are kept are listed, and windows hear of a ferment that is kept warm', async () => {
  const { session } = await setUpSession();
  expect(await ask(session, 'rigs/list', {})).toMatchObject({ rigs: [], last: null });
  const told: unknown[] = [];
  session.on('warmth', ({ kept }) => told.push(kept?.fermentId));
  const { fermentId } = await ask(session, 'ferments/begin', {
    stated: pearJuice,
  });
  await ask(session, 'warmth/keep', { fermentId, band: usualWarmthBand, channel: 'ferment' });
  expect(told).toEqual([fermentId]);
});

test('a report names the kept files that cannot be read', async () => {
  const runsFolder = await temporaryFolder();
  await writeFile(path.join(runsFolder, 'known-probes.json'), '{"version":1,');
  const { session } = await setUpSession({ runsFolder });
  const report = await ask(session, 'problem-report/make', { withRunNames: false, window: null });
  expect(report.folder.doubtfulFiles).toEqual(['known-probes.json: not-understood']);
});
