import { cp, mkdir, readdir, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { eventually } from '../../support/eventually.ts';
import { diskAtRest } from '../support/manual-time.ts';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** A run under way in a folder that somebody tidies away. */
async function underWay() {
  const above = await temporaryFolder();
  const runsFolder = path.join(above, 'runs');
  const { session, time, probeHub } = await setUpSession({ runsFolder });
  const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
  let heard = 0;
  return {
    above,
    runsFolder,
    runFolder: path.join(runsFolder, runId),
    session,
    time,
    runId,
    heard: () => heard,
    /** A reading a second, and the real disk gets its turns. */
    async hearFor(seconds: number) {
      for (let second = 0; second < seconds; second += 1) {
        await time.pass(1);
        await diskAtRest();
        heard += 1;
        probeHub.send('readings', [head(time.clock.monotonicS(), 22 + heard / 16)]);
      }
    },
    recording: () => session.recordingStatus(),
  };
}

type UnderWay = Awaited<ReturnType<typeof underWay>>;

/** What the record says of a run that is over. */
async function onRecord(runsFolder: string, runId: string) {
  const next = await setUpSession({ runsFolder });
  const { inputs, summary } = await ask(next.session, 'runs/read', { runId, fromIndex: 0 });
  const values = inputs.flatMap((input) => (input.kind === 'reading' ? [input.value] : []));
  const notes = inputs.flatMap((input) =>
    input.kind === 'mark' && input.mark.type === 'note' ? [input.mark.text] : [],
  );
  const { ended, damagedRecords, leftOut } = summary;
  return { values, notes, ended, damagedRecords, leftOut };
}

const taken = (heard: number) => ({
  values: Array.from({ length: heard }, (_, at) => 22 + (at + 1) / 16),
  notes: ['Before.', 'After.'],
  ended: 'clean',
  damagedRecords: 0,
  leftOut: [],
});

test.each<[string, (run: UnderWay) => Promise<void>]>([
  ['of the run is deleted', ({ runFolder }) => rm(runFolder, { recursive: true })],
  [
    'of the runs is deleted and made again by hand',
    async ({ runsFolder, hearFor }) => {
      await rm(runsFolder, { recursive: true });
      await hearFor(7);
      await mkdir(runsFolder);
    },
  ],
  [
    'of the runs is renamed, and an empty one has its name',
    async ({ runsFolder, above }) => {
      await rename(runsFolder, path.join(above, 'old'));
      await mkdir(runsFolder);
    },
  ],
  [
    'of the runs is renamed and comes back',
    async ({ runsFolder, above, hearFor }) => {
      await rename(runsFolder, path.join(above, 'old'));
      await hearFor(7);
      await rename(path.join(above, 'old'), runsFolder);
    },
  ],
  [
    'of the runs is deleted and an older copy of it put back',
    async ({ runsFolder, above, hearFor }) => {
      await cp(runsFolder, path.join(above, 'copy'), { recursive: true });
      await hearFor(7);
      await rm(runsFolder, { recursive: true });
      await hearFor(7);
      await rename(path.join(above, 'copy'), runsFolder);
    },
  ],
])('a run whose folder %s is written whole, as it was', async (_how, act) => {
  const run = await underWay();
  const { session, runsFolder, runId, hearFor } = run;
  await hearFor(5);
  await ask(session, 'run/mark', { mark: { type: 'note', text: 'Before.' } });
  await hearFor(5);
  await act(run);
  await eventually(async () => {
    await hearFor(3);
    const { state, savedToS } = run.recording();
    expect([state, savedToS]).toEqual(['recording', expect.any(Number)]);
    expect(savedToS).toBeGreaterThan(run.heard() - 5);
    expect(await readdir(run.runFolder)).toContain('run.jsonl');
  });
  await ask(session, 'run/mark', { mark: { type: 'note', text: 'After.' } });
  await hearFor(2);
  await ask(session, 'run/stop', {});
  await session.close();
  expect(await onRecord(runsFolder, runId)).toEqual(taken(run.heard()));
});

test('a deleted folder is told within seconds, and nothing is called saved until it is again', async () => {
  const run = await underWay();
  const { runsFolder, hearFor } = run;
  await hearFor(5);
  expect(run.recording()).toMatchObject({ state: 'recording', problem: null });
  await rm(runsFolder, { recursive: true });
  await hearFor(5);
  expect(run.recording()).toMatchObject({
    state: 'failed',
    problem: { kind: 'folder-gone', path: runsFolder },
  });
  await mkdir(runsFolder);
  await eventually(async () => {
    await hearFor(3);
    expect(run.recording()).toMatchObject({ state: 'recording', problem: null });
  });
  expect(await readdir(run.runFolder)).toEqual(
    expect.arrayContaining(['labels.jsonl', 'run.jsonl']),
  );
});

test('a run that goes on after its program was killed is written whole too, with what that program had recorded', async () => {
  const runsFolder = path.join(await temporaryFolder(), 'runs');
  const killed = await setUpSession({ runsFolder });
  const { runId } = await ask(killed.session, 'run/start', { settings: defaultRunSettings });
  for (let second = 1; second <= 5; second += 1) {
    await killed.time.pass(1);
    const nowS = killed.time.clock.monotonicS();
    killed.probeHub.send('readings', [head(nowS, 22 + second / 16)]);
    await diskAtRest();
  }
  const copy = path.join(await temporaryFolder(), 'runs');
  await cp(runsFolder, copy, { recursive: true });
  await rm(path.join(copy, 'in-use.lock'));
  const next = await setUpSession({ runsFolder: copy });
  const continued = await next.session.handle('run/continue', { runId }, teacher);
  expect(continued).toMatchObject({ ok: true });
  const before = await ask(next.session, 'runs/read', { runId, fromIndex: 0 });
  await rm(path.join(copy, runId), { recursive: true });
  await eventually(async () => {
    await next.time.pass(3);
    expect(await readdir(copy)).toContain(runId);
    expect(next.session.recordingStatus()).toMatchObject({ state: 'recording', problem: null });
  });
  await ask(next.session, 'run/stop', {});
  const after = await ask(next.session, 'runs/read', { runId, fromIndex: 0 });
  expect(after.inputs.slice(0, before.inputs.length)).toEqual(before.inputs);
  expect(after.summary).toMatchObject({ ended: 'clean', damagedRecords: 0 });
});
