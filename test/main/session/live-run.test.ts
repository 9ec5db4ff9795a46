import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { emptyReport, nodeFileLayer, type ProbeReading, readRunLog } from '#main';
import {
  createMonitor,
  defaultRunSettings,
  type LogBody,
  type Monitor,
  type MonitorChange,
  modelVersion,
  type RunSettings,
} from '#shared-core';
import { goodReading } from '../../support/good-reading.ts';
import { createManualTime } from '../support/manual-time.ts';
import { ask, head, setUpSession } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { recordedHeader, writeCutOffRun } from '../support/write-cut-off-run.ts';

const started = async (options: Parameters<typeof setUpSession>[0] = {}) => {
  const bench = await setUpSession(options);
  const { runId } = await ask(bench.session, 'run/start', { settings: defaultRunSettings });
  const log = () => readFile(path.join(bench.runsFolder, runId, 'run.jsonl'), 'latin1');
  const inputs = async () =>
    (await ask(bench.session, 'runs/read', { runId, fromIndex: 0 })).inputs;
  return { ...bench, runId, log, inputs, startS: bench.time.clock.monotonicS() };
};

const noted = (timeS: number): MonitorChange => ({
  kind: 'event',
  timeS,
  event: { event: 'vapour-arrived', timeS, because: 'The head is warm.' },
});

type AlarmName = Extract<MonitorChange, { kind: 'alarm-changed' }>['record']['alarm'];

const alarmed = (alarm: AlarmName, timeS: number): MonitorChange => ({
  kind: 'alarm-changed',
  timeS,
  record: {
    alarm,
    priority: 'high',
    raisedS: timeS,
    clearedS: null,
    acknowledgedS: null,
    because: 'The head is warm.',
  },
  state: 'unacknowledged',
  snapshot: null,
});

/** A monitor that concludes besides what it is told to, at the first input from so late on. */
function concluding(changes: readonly MonitorChange[]): (settings: RunSettings) => Monitor {
  return (settings) => {
    const monitor = createMonitor(settings);
    let nowS = 0;
    let left = [...changes];
    return {
      ...monitor,
      push(input) {
        nowS = input.timeS;
        return monitor.push(input);
      },
      advanceTo(timeS) {
        nowS = timeS;
        return monitor.advanceTo(timeS);
      },
      takeChanges() {
        monitor.takeChanges();
        const due = left.filter(({ timeS }) => timeS <= nowS);
        left = left.filter(({ timeS }) => timeS > nowS);
        return due;
      },
    };
  };
}

test('what several probes told out of turn is recorded in the order in which it was measured', async () => {
  const { time, probeHub, inputs } = await started();
  await time.pass(2);
  const nowS = time.clock.monotonicS();
  const pot: ProbeReading = { ...head(nowS - 1, 91), channel: 'pot' };
  probeHub.send('readings', [head(nowS, 78), pot]);
  expect((await inputs()).map(({ timeS }) => timeS)).toEqual([1, 2]);
});

test('what was measured before the run, and what is no number, is not recorded; a minus nought is nought', async () => {
  const { time, probeHub, inputs, startS, session } = await started();
  const told: unknown[] = [];
  session.on('inputs', (body) =>
    told.push(...body.inputs.map((input) => input.kind === 'reading' && input.value)),
  );
  await time.pass(2);
  probeHub.send('readings', [
    head(startS - 0.5, 19),
    head(startS + 1, Number.NaN),
    head(startS + 1, Number.POSITIVE_INFINITY),
  ]);
  expect(await inputs()).toEqual([]);
  probeHub.send('readings', [head(startS + 2, -0)]);
  await time.pass(1);
  expect(told).toEqual([0]);
});

test('what the probe process had to give up is told by the record, in run time, and only what was heard in the run', async () => {
  const { time, probeHub, runsFolder, runId, session, startS } = await started();
  await time.pass(9);
  probeHub.send('givenUp', { readings: 7, fromS: startS - 5, toS: startS - 1 });
  probeHub.send('givenUp', { readings: 5, fromS: startS - 1, toS: startS + 2 });
  probeHub.send('readings', [head(startS + 8, 78)]);
  probeHub.send('givenUp', { readings: 300, fromS: startS + 3, toS: startS + 6 });
  const underWay = await ask(session, 'runs/list', {});
  await ask(session, 'run/stop', {});
  const dropped: LogBody[] = [];
  const folder = path.join(runsFolder, runId);
  for await (const records of readRunLog(nodeFileLayer, folder, emptyReport())) {
    for (const { body } of records) if (body.kind === 'dropped') dropped.push(body);
  }
  const lost = { kind: 'dropped', where: 'probe-process' } as const;
  expect(dropped).toEqual([
    { ...lost, timeS: 0, readings: 5, fromS: 0, toS: 2 },
    { ...lost, timeS: 8, readings: 300, fromS: 3, toS: 6 },
  ]);
  const { runs } = await ask(session, 'runs/list', {});
  // The same while it is under way, with what its German is made from.
  expect(underWay.runs.map(({ leftOut, wording }) => [leftOut, wording])).toEqual(
    runs.map(({ leftOut, wording }) => [leftOut, wording]),
  );
  expect(runs.map(({ leftOut }) => leftOut)).toEqual([
    [
      '305 readings are missing between 0:00:00 and 0:00:06: more came from the probe than could be taken.',
    ],
  ]);
});

test('a reader of the probe that stopped before it had told anything of the run is missing from its first second on', async () => {
  const { time, probeHub, inputs, session, startS } = await started();
  await time.pass(2);
  probeHub.send('link', { atS: startS - 1, state: 'lost', reason: 'reader-stopped' });
  await ask(session, 'run/stop', {});
  expect(await inputs()).toEqual([
    // Of the second that was worked out already nothing can be said any more.
    { kind: 'link', timeS: 0.5, state: 'lost', reason: 'reader-stopped' },
  ]);
});

test('a lost probe before the run, or after its end was asked for, is not of the run', async () => {
  const { time, probeHub, inputs, session, startS } = await started();
  await time.pass(2);
  const lost = { state: 'lost', reason: 'unplugged' } as const;
  probeHub.send('link', { atS: startS - 1, ...lost });
  const stopping = ask(session, 'run/stop', {});
  probeHub.send('link', { atS: startS + 2.5, ...lost });
  await stopping;
  expect(await inputs()).toEqual([]);
});

test('the windows get every input once from the first on, however it came', async () => {
  const { time, probeHub, session, startS } = await started();
  const told: unknown[] = [];
  session.on('inputs', ({ fromIndex, inputs }) =>
    told.push([fromIndex, inputs.map(({ kind }) => kind)]),
  );
  await time.pass(1);
  probeHub.send('readings', [head(startS + 0.5, 20), head(startS + 1, 20)]);
  await time.pass(1);
  await ask(session, 'run/mark', { mark: { type: 'heat-on' } });
  expect(told).toEqual([
    [0, ['reading', 'reading']],
    [2, ['mark']],
  ]);
});

test('marks and a lost probe are safe at once, with no second to wait for', async () => {
  const { time, probeHub, session } = await started();
  await time.pass(3);
  await ask(session, 'run/mark', { mark: { type: 'heat-off' } });
  await expect.poll(() => session.recordingStatus().savedToS).toBe(3);
  await time.pass(0.1);
  const lost = { state: 'lost', reason: 'unplugged' } as const;
  probeHub.send('link', { atS: time.clock.monotonicS(), ...lost });
  await expect.poll(() => session.recordingStatus().savedToS).toBeCloseTo(3.1, 3);
});

test('time passes for the monitor though nothing is heard, and its windows see it', async () => {
  const { time, probeHub, session } = await started();
  const alarms: (readonly string[])[] = [];
  session.on('snapshot', ({ snapshot }) => alarms.push(snapshot.alarms.map(({ alarm }) => alarm)));
  for (let second = 1; second <= 5; second += 1) {
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20 + second / 16)]);
  }
  expect(alarms.at(-1)).toEqual([]);
  await time.pass(60);
  expect(alarms.at(-1)).toEqual(['probe-lost']);
});

test('what the monitor concludes is in the record, an alarm at once, and the call to turn off the heat in the list of runs', async () => {
  const createOne = concluding([alarmed('probe-lost', 1), alarmed('plateau-departure', 2)]);
  const { time, probeHub, session, log } = await started({ createMonitor: createOne });
  const calledS = async () => (await ask(session, 'runs/list', {})).runs[0]?.heatOffCalledS;
  for (let second = 1; second <= 2; second += 1) {
    await time.pass(1);
    expect(await calledS()).toBeNull();
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
  }
  expect(await calledS()).toBe(2);
  await expect.poll(() => session.recordingStatus().savedToS).toBe(2);
  expect((await log()).match(/"kind":"alarm-changed"/g)).toHaveLength(2);
});

/** A cut-off run of a minute in whose record stand these many of the conclusions that a monitor draws of it. */
async function cutOff(changes: readonly MonitorChange[]) {
  const runsFolder = await temporaryFolder();
  const { clock } = createManualTime();
  const inputs = Array.from({ length: 60 }, (_, index) =>
    goodReading(index + 1, 20 + 0.0625 * (index % 3)),
  );
  const setup = { header: recordedHeader, inputs, brokeOffS: 60.5, agoS: 30, clock };
  const { runId } = await writeCutOffRun(runsFolder, {
    ...setup,
    createMonitor: concluding(changes),
  });
  return { runsFolder, runId };
}

/** The conclusions in the record once the run has gone on for some seconds. */
async function goneOn(
  { runsFolder, runId }: Awaited<ReturnType<typeof cutOff>>,
  options: Parameters<typeof setUpSession>[0],
) {
  const { session, time, probeHub } = await setUpSession({ ...options, runsFolder });
  await ask(session, 'run/continue', { runId });
  for (let second = 1; second <= 3; second += 1) {
    await time.pass(1);
    probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
  }
  await ask(session, 'run/stop', {});
  const { changes } = await ask(session, 'runs/changes', { runId });
  return changes.map(({ timeS }) => timeS);
}

test('a run that goes on gets each conclusion once: those that stand in its record, the one that was lost with the program, new ones', async () => {
  const cut = await cutOff([noted(10), noted(20)]);
  const createOne = concluding([noted(10), noted(20), noted(60), noted(92)]);
  expect(await goneOn(cut, { createMonitor: createOne, modelVersion })).toEqual([10, 20, 60, 92]);
});

test('another version of the monitor may conclude otherwise of what is past: the record stays as it was', async () => {
  const cut = await cutOff([noted(10), noted(20)]);
  const createOne = concluding([noted(10), noted(15), noted(20), noted(92)]);
  const goesOn = { createMonitor: createOne, modelVersion: 'a later one' };
  expect(await goneOn(cut, goesOn)).toEqual([10, 20, 92]);
});
