import { appendFile, readFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { nodeFileLayer } from '#main';
import { defaultRunSettings, type RunInput, serialSourceSchema } from '#shared-core';
import { createManualTime } from '../support/manual-time.ts';
import { ask, head, setUpSession, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { type CutOffRun, recordedHeader, writeCutOffRun } from '../support/write-cut-off-run.ts';

const source = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' });

function readings(count: number): readonly RunInput[] {
  return Array.from({ length: count }, (_, index): RunInput => {
    const timeS = index + 1;
    const value = 20 + 0.0625 * (index % 3);
    return { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' };
  });
}

/** A run of a minute that broke off so long before the clocks of a bench begin. */
async function cutOff(agoS: number, other: Partial<CutOffRun> = {}) {
  const runsFolder = await temporaryFolder();
  const { clock } = createManualTime();
  const run = {
    header: recordedHeader,
    inputs: readings(60),
    brokeOffS: 60.5,
    agoS,
    clock,
    ...other,
  };
  const { runId } = await writeCutOffRun(runsFolder, run);
  return { runsFolder, runId };
}

/** Opens when it is told to. */
function gate() {
  let open = () => {};
  const passed = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { passed, open: () => open() };
}

describe('a run that broke off with the program', () => {
  test('is offered as it stands on the disk', async () => {
    const { runsFolder, runId } = await cutOff(30);
    const { session } = await setUpSession({ runsFolder });
    expect(await ask(session, 'run/unfinished', {})).toEqual({
      run: {
        runId,
        name: defaultRunSettings.name,
        startedAtIso: '2025-03-14T10:13:29.500Z',
        brokeOffAtIso: '2025-03-14T10:14:29.500Z',
        durationS: 60,
      },
    });
  });

  test.each([
    ['was left for more than an hour', 3700, {}],
    ['was a rehearsal', 30, { header: { ...recordedHeader, rehearsal: true } }],
    ['was taken in from a file', 30, { header: { ...recordedHeader, origin: 'imported' } }],
  ] as const)('is over when it %s', async (_, agoS, other) => {
    const { runsFolder, runId } = await cutOff(agoS, other);
    const { session } = await setUpSession({ runsFolder });
    expect(await ask(session, 'run/unfinished', {})).toEqual({ run: null });
    expect(await session.handle('run/continue', { runId }, teacher)).toEqual({
      ok: false,
      error: { kind: 'run-over', runId },
    });
  });

  test('is over once it was ended, put right, or another was recorded', async () => {
    const corrected = await cutOff(30);
    const bench = await setUpSession({ runsFolder: corrected.runsFolder });
    const correction = { charge: defaultRunSettings.charge, reason: 'misread' };
    const put = await bench.session.handle(
      'runs/correct',
      { runId: corrected.runId, correction },
      teacher,
    );
    expect(put).toMatchObject({ ok: true });
    expect(await ask(bench.session, 'run/unfinished', {})).toEqual({ run: null });

    const { runsFolder, runId } = await cutOff(30);
    const { session } = await setUpSession({ runsFolder });
    await ask(session, 'run/start', { settings: defaultRunSettings });
    expect(await ask(session, 'run/unfinished', {})).toEqual({ run: null });
    await ask(session, 'run/stop', {});
    expect(await ask(session, 'run/unfinished', {})).toEqual({ run: null });
    expect(await session.handle('run/continue', { runId }, teacher)).toMatchObject({
      error: { kind: 'run-over' },
    });
  });

  test('is neither offered to nor continued by a second program on the folder', async () => {
    const { runsFolder, runId } = await cutOff(30);
    await setUpSession({ runsFolder });
    const second = await setUpSession({ runsFolder });
    expect(await ask(second.session, 'run/unfinished', {})).toEqual({ run: null });
    expect(await second.session.handle('run/continue', { runId }, teacher)).toMatchObject({
      error: { kind: 'folder-in-use' },
    });
  });

  test('goes on where it was: times, marks and the pieces told to windows', async () => {
    const { runsFolder, runId } = await cutOff(30);
    await appendFile(path.join(runsFolder, runId, 'run.jsonl'), '{"seq":61,"prev":"');
    const { session, time, probeHub } = await setUpSession({ runsFolder });
    const told: number[] = [];
    session.on('inputs', ({ fromIndex }) => told.push(fromIndex));
    await time.pass(5);
    // What is heard before the press is not part of the run: the record says that nothing is.
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    await ask(session, 'run/continue', { runId });
    expect(session.recordingStatus()).toMatchObject({ state: 'recording', runId });
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 21)]);
    await time.pass(1);
    expect(await ask(session, 'run/mark', { mark: { type: 'heat-on' } })).toEqual({
      markId: 1,
      timeS: 97.5,
    });
    expect(told[0]).toBe(60);
    const page = await ask(session, 'runs/read', { runId, fromIndex: 0 });
    expect(page.inputs.slice(60)).toMatchObject([
      { kind: 'link', state: 'lost', reason: 'program-closed', timeS: 60.25 },
      { kind: 'link', state: 'back', reason: 'program-closed', timeS: 95.5 },
      { kind: 'reading', value: 21, timeS: 96.5 },
      { kind: 'mark', timeS: 97.5 },
    ]);
    await ask(session, 'run/stop', {});
    const log = await readFile(path.join(runsFolder, runId, 'run-2.jsonl'), 'latin1');
    expect(log).toContain('"kind":"continued","timeS":95.5,"closedS":35');
    const { runs } = await ask(session, 'runs/list', {});
    expect(runs).toMatchObject([{ runId, ended: 'clean', readings: 61, damagedRecords: 0 }]);
  });

  test('says that nobody knows how long it was closed when the computer lost its clock meanwhile', async () => {
    // By its clock the computer writes now what comes before the last record.
    const { runsFolder, runId } = await cutOff(-600);
    const { session, time } = await setUpSession({ runsFolder, uptimeS: () => 40 });
    await ask(session, 'run/continue', { runId });
    await time.pass(1);
    const { inputs } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
    expect(inputs.slice(60)).toMatchObject([
      { kind: 'link', state: 'lost', reason: 'program-closed', timeS: 60.25 },
      { kind: 'link', state: 'back', reason: 'clock-stepped', timeS: 100 },
    ]);
  });

  test('says what is wrong with its probe, and goes on once another is connected', async () => {
    const { runsFolder, runId } = await cutOff(30);
    const { session, time, probeHub } = await setUpSession({ runsFolder });
    await probeHub.disconnect();
    const error = { kind: 'port-not-found', path: '/dev/ttyACM0' } as const;
    probeHub.refuse(error);
    expect(await session.handle('run/continue', { runId }, teacher)).toEqual({ ok: false, error });
    expect(await ask(session, 'run/unfinished', {})).toMatchObject({ run: { runId } });
    probeHub.refuse(null);
    await probeHub.connect({ ...source, path: '/dev/ttyACM7' });
    expect(await ask(session, 'run/continue', { runId })).toEqual({ runId });
    // The monitor sees what was recorded before it may end.
    await time.pass(1);
  });

  test.each([
    ['the person’s own choice', {}, '/dev/ttyACM7', '/dev/ttyACM7'],
    ['its own where none is connected', null, '', '/dev/ttyACM0'],
    ['its own where one in another time is', { timeScale: 20 }, '/dev/ttyACM7', '/dev/ttyACM0'],
  ] as const)('goes on with %s', async (_, connect, port, expected) => {
    const { runsFolder, runId } = await cutOff(30);
    const { session, time, probeHub } = await setUpSession({ runsFolder, withoutProbe: true });
    if (connect !== null) await probeHub.connect({ ...source, ...connect, path: port });
    await ask(session, 'run/continue', { runId });
    expect(probeHub.status().source).toMatchObject({ path: expected, timeScale: 1 });
    await time.pass(1);
    await ask(session, 'run/stop', {});
    const log = await readFile(path.join(runsFolder, runId, 'run-2.jsonl'), 'latin1');
    const record = log.split('\n').find((line) => line.includes('"kind":"continued"'));
    expect(JSON.parse(record ?? '')).toMatchObject({
      appVersion: '0.1.0',
      modelVersion: '1',
      source: { path: expected },
    });
  });

  test('goes on with its own probe where a simulated still is connected', async () => {
    const { runsFolder, runId } = await cutOff(30);
    const { session, time, probeHub } = await setUpSession({ runsFolder, timeScale: 60 });
    expect(probeHub.status().source).toMatchObject({ kind: 'demo' });
    await ask(session, 'run/continue', { runId });
    expect(probeHub.status().source).toMatchObject({ kind: 'serial', path: '/dev/ttyACM0' });
    await time.pass(1);
  });

  test('holds all that its probe said since it was connected, however long the record took to open', async () => {
    const { runsFolder, runId } = await cutOff(30);
    const [asked, disk] = [gate(), gate()];
    const { session, time, probeHub } = await setUpSession({
      runsFolder,
      withoutProbe: true,
      faults: {
        async createAppend(file) {
          const opened = await nodeFileLayer.createAppend(file);
          if (!opened.ok || !file.endsWith('run-2.jsonl')) return opened;
          const sync = () => {
            asked.open();
            return disk.passed.then(() => opened.value.sync());
          };
          return { ok: true, value: { ...opened.value, sync } };
        },
      },
    });
    probeHub.whileConnecting(() => {
      const nowS = time.clock.monotonicS();
      probeHub.send('readings', [head(nowS - 0.5, 99), head(nowS + 0.25, 21)]);
      probeHub.send('link', { atS: nowS + 0.5, state: 'lost', reason: 'unplugged' });
      probeHub.send('link', { atS: nowS + 1, state: 'back', reason: 'unplugged' });
    });
    const goingOn = ask(session, 'run/continue', { runId });
    await asked.passed;
    await time.pass(2);
    probeHub.send('readings', [head(time.clock.monotonicS() - 0.5, 22)]);
    disk.open();
    await goingOn;
    const { inputs } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
    expect(inputs.slice(60)).toMatchObject([
      { kind: 'link', state: 'lost', reason: 'program-closed', timeS: 60.25 },
      { kind: 'link', state: 'back', reason: 'program-closed', timeS: 90.5 },
      { kind: 'reading', value: 21, timeS: 90.75 },
      { kind: 'link', state: 'lost', reason: 'unplugged', timeS: 91 },
      { kind: 'link', state: 'back', reason: 'unplugged', timeS: 91.5 },
      { kind: 'reading', value: 22, timeS: 92 },
    ]);
    await time.pass(1);
  });

  test('holds nothing of the simulated still that was connected before its own probe', async () => {
    const { runsFolder, runId } = await cutOff(30);
    const { session, time, probeHub } = await setUpSession({ runsFolder, timeScale: 60 });
    probeHub.whileConnecting(() => {
      const { source } = probeHub.status();
      if (source !== null) probeHub.send('readings', [head(time.clock.monotonicS(), 99)]);
    });
    await ask(session, 'run/continue', { runId });
    const { inputs } = await ask(session, 'runs/read', { runId, fromIndex: 0 });
    expect(inputs.slice(60).map(({ kind }) => kind)).toEqual(['link', 'link']);
    await time.pass(1);
  });

  test('cannot go on where its record does not say which probe it had', async () => {
    const { runsFolder, runId } = await cutOff(30, { header: { ...recordedHeader, source: null } });
    const { session } = await setUpSession({ runsFolder, withoutProbe: true });
    expect(await session.handle('run/continue', { runId }, teacher)).toEqual({
      ok: false,
      error: { kind: 'no-probe' },
    });
  });

  test('is offered for an hour, under its own name alone', async () => {
    const { runsFolder, runId } = await cutOff(3599.5);
    const { session } = await setUpSession({ runsFolder });
    expect(await ask(session, 'run/unfinished', {})).toMatchObject({ run: { runId } });
    const other = '20250314T000000Z';
    expect(await session.handle('run/continue', { runId: other }, teacher)).toEqual({
      ok: false,
      error: { kind: 'run-over', runId: other },
    });
  });
});
