import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Session } from '#main';
import {
  createMonitor,
  defaultRunSettings,
  type EventBody,
  type Monitor,
  type RequestAnswer,
  type RunSettings,
  readReadingsCsv,
} from '#shared-core';
import { analyseRun } from '../../../shared-core/monitor/analyse-run.ts';
import { diskAtRest } from '../support/manual-time.ts';
import {
  ask,
  fetchTable,
  head,
  setUpSession as setUp,
  teacher,
  temperatureC,
} from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

async function readWhole(session: Session, runId: string): Promise<RequestAnswer<'runs/read'>> {
  return ask(session, 'runs/read', { runId, fromIndex: 0 });
}

describe('createSession', () => {
  test('records a run whose inputs, replayed, give the verdicts that were reached live', async () => {
    const monitors: Monitor[] = [];
    const keep = (settings: RunSettings) => {
      const monitor = createMonitor(settings);
      monitors.push(monitor);
      return monitor;
    };
    const { time, probeHub, session } = await setUp({ timeScale: 20, createMonitor: keep });
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    const startS = time.clock.monotonicS();
    await ask(session, 'run/mark', { mark: { type: 'heat-on' } });
    for (let step = 0; step < 180; step += 1) {
      await time.pass(0.5);
      const atS = time.clock.monotonicS();
      probeHub.send('readings', [head(atS, temperatureC((atS - startS) * 20))]);
      if (step === 100) await ask(session, 'run/mark', { mark: { type: 'attention-answered' } });
    }
    await ask(session, 'run/stop', {});

    const live = monitors[0]?.verdicts();
    const page = await readWhole(session, runId);
    const replayed = analyseRun(page.settings, page.inputs, page.endS);
    expect(JSON.stringify(replayed)).toBe(JSON.stringify(live));
    const { changes } = await ask(session, 'runs/changes', { runId });
    expect(changes.flatMap((change) => (change.kind === 'event' ? [change.event] : []))).toEqual(
      replayed.events,
    );
    expect(replayed.alarms.map(({ alarm }) => alarm)).toContain('plateau-departure');
    expect(page.summary).toMatchObject({
      ended: 'clean',
      rehearsal: true,
      readings: 180,
      damagedRecords: 0,
      unreadable: null,
      durationS: 1800,
      heatOffCalledS: replayed.alarms.find(({ alarm }) => alarm === 'plateau-departure')?.raisedS,
    });

    for (const format of ['csv', 'csv-semicolon'] as const) {
      const read = readReadingsCsv(await fetchTable(session, runId, format));
      expect(read.ok && { inputs: read.value.inputs, endS: read.value.endS }).toEqual({
        inputs: page.inputs,
        endS: page.endS,
      });
    }
  });

  test('records nothing after the end, though the probe goes on talking while the run is closed', async () => {
    const { time, probeHub, session } = await setUp();
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    const stopping = ask(session, 'run/stop', {});
    probeHub.send('readings', [head(time.clock.monotonicS() + 0.2, 21)]);
    await stopping;
    const page = await readWhole(session, runId);
    expect(page.inputs.map((input) => input.kind === 'reading' && input.value)).toEqual([20]);
    expect(page.endS).toBe(1);
  });

  test('goes on recording when the monitor fails, and says so', async () => {
    const failing = (): Monitor => {
      const monitor = createMonitor(defaultRunSettings);
      return {
        ...monitor,
        push(input) {
          if (input.timeS > 5) throw new Error('a bug');
          return monitor.push(input);
        },
      };
    };
    const { time, probeHub, session } = await setUp({ createMonitor: failing });
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    for (let second = 0; second < 20; second += 1) {
      await time.pass(1);
      probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    }
    // Twenty seconds pass here in less time than a busy disk takes to answer.
    await diskAtRest();
    expect(session.recordingStatus()).toMatchObject({
      state: 'recording',
      problem: null,
      adviceStopped: 'a bug',
    });
    await ask(session, 'run/stop', {});
    const { inputs, summary } = await readWhole(session, runId);
    expect(inputs).toHaveLength(20);
    expect(summary.leftOut).toEqual([
      expect.stringMatching(/^From 0:00:06 on nobody was advised: the monitor had failed\./),
    ]);
  });

  test('tells of each reading of a ten-a-second probe at once, however unevenly they come', async () => {
    const { time, probeHub, session } = await setUp();
    const shown: number[] = [];
    session.on('snapshot', ({ snapshot: { head: told } }) => {
      if (told !== null) shown.push(told.temperatureC);
    });
    await ask(session, 'run/start', { settings: defaultRunSettings });
    const sent: number[] = [];
    for (const waitS of [0.1, 0.13, 0.07, 0.1, 0.14, 0.06]) {
      await time.pass(waitS);
      const atS = time.clock.monotonicS();
      // Two in one batch: what is told must be the newer.
      probeHub.send('readings', [head(atS - 0.01, 20), head(atS, 21 + sent.length)]);
      sent.push(21 + sent.length);
    }
    expect(shown).toEqual(sent);
  });

  test('sends at most 25 snapshots and 25 batches of inputs a second, and no input twice', async () => {
    const { time, probeHub, session } = await setUp();
    const counts = { snapshot: 0, inputs: 0 };
    const received: EventBody<'inputs'>[] = [];
    session.on('snapshot', () => {
      counts.snapshot += 1;
    });
    session.on('inputs', (body) => {
      counts.inputs += 1;
      received.push(body);
    });
    await ask(session, 'run/start', { settings: defaultRunSettings });
    for (let step = 0; step < 300; step += 1) {
      await time.pass(0.01);
      probeHub.send('readings', [head(time.clock.monotonicS(), 20 + step / 100)]);
    }
    await time.pass(1);
    expect(counts.snapshot).toBeLessThanOrEqual(102);
    expect(counts.snapshot).toBeGreaterThan(60);
    expect(counts.inputs).toBeLessThanOrEqual(77);
    expect(received.map(({ fromIndex }) => fromIndex)).toEqual(
      received.map((_, index) =>
        received.slice(0, index).reduce((sum, { inputs }) => sum + inputs.length, 0),
      ),
    );
    expect(received.flatMap(({ inputs }) => inputs)).toHaveLength(300);
  });

  test('moves "saved to" only with the sync, within a second of each reading', async () => {
    const { time, probeHub, session } = await setUp();
    await ask(session, 'run/start', { settings: defaultRunSettings });
    await time.pass(2);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    expect(session.recordingStatus().savedToS).toBe(0);
    await time.pass(0.5);
    await expect.poll(() => session.recordingStatus().savedToS).toBe(2);
  });

  test('keeps the run through unplugging and puts the gap into the record', async () => {
    const { time, probeHub, session } = await setUp();
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    await time.pass(1);
    probeHub.send('link', { atS: time.clock.monotonicS(), state: 'lost', reason: 'unplugged' });
    await time.pass(60);
    probeHub.send('link', { atS: time.clock.monotonicS(), state: 'back', reason: 'unplugged' });
    probeHub.send('readings', [head(time.clock.monotonicS(), 21)]);
    await ask(session, 'run/stop', {});
    expect((await readWhole(session, runId)).inputs).toEqual([
      { kind: 'reading', timeS: 1, channel: 'head', value: 20, unit: '°C', quality: 'good' },
      { kind: 'link', timeS: 2, state: 'lost', reason: 'unplugged' },
      // While nothing came the monitor went on to 61.25 s; nothing is recorded before that.
      { kind: 'link', timeS: 62, state: 'back', reason: 'unplugged' },
      { kind: 'reading', timeS: 62, channel: 'head', value: 21, unit: '°C', quality: 'good' },
    ]);
  });

  test('records sleep as a gap of its real length and a step of the wall clock apart from it', async () => {
    let extraUptimeS = 0;
    let monotonicS = () => 0;
    const { time, probeHub, session, runsFolder } = await setUp({
      uptimeS: () => monotonicS() + extraUptimeS,
    });
    monotonicS = time.clock.monotonicS;
    const { runId } = await ask(session, 'run/start', { settings: defaultRunSettings });
    await time.pass(10);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
    extraUptimeS = 600;
    time.stepWall(600);
    await time.pass(2);
    probeHub.send('readings', [head(time.clock.monotonicS(), 21)]);
    time.stepWall(-3600);
    await time.pass(2);
    await ask(session, 'run/stop', {});
    const { inputs } = await readWhole(session, runId);
    expect(inputs.map(({ kind, timeS }) => `${kind} ${Math.round(timeS)}`)).toEqual([
      'reading 10',
      'link 10',
      'link 610',
      'reading 612',
    ]);
    const log = await readFile(path.join(runsFolder, runId, 'run.jsonl'), 'utf8');
    const clocks = log
      .split('\n')
      .filter((line) => line.includes('"kind":"clock"'))
      .map((line) => JSON.parse(line))
      .map(({ sleptS, wallStepS }) => ({
        sleptS: Math.round(sleptS),
        wallStepS: Math.round(wallStepS),
      }));
    expect(clocks).toEqual([
      { sleptS: 600, wallStepS: 0 },
      { sleptS: 0, wallStepS: -3600 },
    ]);
  });

  test('passes marks on to the rehearsal rig and numbers marks from one', async () => {
    const { session, probeHub } = await setUp();
    await ask(session, 'run/start', { settings: defaultRunSettings });
    const first = await ask(session, 'run/mark', { mark: { type: 'heat-on' } });
    const second = await ask(session, 'run/mark', { mark: { type: 'note', text: 'Clear drops' } });
    expect([first.markId, second.markId, probeHub.followed]).toEqual([1, 2, ['heat-on', 'note']]);
    await ask(session, 'run/mark', { mark: { type: 'heat-eased' } });
    await ask(session, 'run/mark', { mark: { type: 'heat-off' } });
    expect(probeHub.followed).toEqual(['heat-on', 'note', 'heat-eased', 'heat-off']);
  });

  test('lets a second instance look at the runs but change nothing in the folder', async () => {
    const runsFolder = await temporaryFolder();
    const owner = await setUp({ runsFolder });
    const { runId } = await ask(owner.session, 'run/start', { settings: defaultRunSettings });
    await ask(owner.session, 'run/stop', {});
    const second = await setUp({ runsFolder });
    expect((await ask(second.session, 'runs/list', {})).runs.map((run) => run.runId)).toEqual([
      runId,
    ]);
    // Also the run that the first one is recording now.
    const { runId: running } = await ask(owner.session, 'run/start', {
      settings: defaultRunSettings,
    });
    const mark = { type: 'volume-read', volumeMl: 10 };
    for (const [name, body] of [
      ['run/start', { settings: defaultRunSettings }],
      ['runs/trash', { runId: running }],
      ['runs/rename', { runId: running, name: 'Taken', notes: '' }],
      ['runs/book', { runId: running, mark }],
      ['runs/trash', { runId }],
    ] as const) {
      expect(await second.session.handle(name, body, teacher)).toMatchObject({
        ok: false,
        error: { kind: expect.stringMatching('folder-in-use') },
      });
    }
    expect(await readdir(path.join(runsFolder, running))).toContain('run.jsonl');
  });

  test('lists and opens a run that was cut off, its torn end kept aside', async () => {
    const runsFolder = await temporaryFolder();
    const first = await setUp({ runsFolder });
    const { runId } = await ask(first.session, 'run/start', { settings: defaultRunSettings });
    for (let second = 0; second < 5; second += 1) {
      await first.time.pass(1);
      first.probeHub.send('readings', [head(first.time.clock.monotonicS(), 20 + second)]);
    }
    await first.time.pass(1);
    await first.session.close();
    const logFile = path.join(runsFolder, runId, 'run.jsonl');
    const lines = (await readFile(logFile, 'latin1')).split('\n');
    const cut = lines.slice(0, -2).join('\n').slice(0, -20);
    await writeFile(logFile, cut, 'latin1');

    const second = await setUp({ runsFolder });
    const { runs } = await ask(second.session, 'runs/list', {});
    expect(runs.map(({ ended, readings }) => ({ ended, readings }))).toEqual([
      { ended: 'cut-off', readings: 4 },
    ]);
    const kept = cut.lastIndexOf('\n') + 1;
    expect(await readFile(logFile, 'latin1')).toBe(cut.slice(0, kept));
    expect(await readFile(`${logFile}.torn-at-${kept}`, 'latin1')).toBe(cut.slice(kept));
    expect((await readWhole(second.session, runId)).inputs).toHaveLength(4);
  });
});
