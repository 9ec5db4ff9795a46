import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { checkRuns, nodeFileLayer, type ProbeReading, type TimeDoubt } from '#main';
import {
  createRandom,
  defaultRunSettings,
  encodeRecord,
  fail,
  firstPreviousChecksum,
  type LogBody,
  succeed,
} from '#shared-core';
import { createReadingStamper } from '../../../main/probe/link/stamp-readings.ts';
import { createTimeJudge } from '../../../main/run-library/judge-times.ts';
import { runCommand } from '../../../scripts/testing/run-command.ts';
import { projectRoot } from '../../../scripts/testing/step.ts';
import type { PackedReading } from '../../../shared-core/run-log/packed-reading.ts';
import { logHeader } from '../support/log-header.ts';
import { ask, head, setUpSession, takeIn } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

async function doubtsIn(runsFolder: string): Promise<readonly TimeDoubt[]> {
  const doubts: TimeDoubt[] = [];
  let runs = 0;
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) {
    runs += 1;
    expect({ state: check.state, problem: check.problem }).toEqual({
      state: 'whole',
      problem: null,
    });
    doubts.push(...check.timeDoubts);
  }
  expect(runs).toBe(1);
  return doubts;
}

/** A run that is really recorded; what the probe says and how time passes is the test's. */
async function record(
  act: (bench: Awaited<ReturnType<typeof setUpSession>>) => Promise<void>,
  options: Parameters<typeof setUpSession>[0] = {},
): Promise<readonly TimeDoubt[]> {
  const bench = await setUpSession(options);
  onTestFinished(() => bench.probeHub.heardTo(Number.POSITIVE_INFINITY));
  await ask(bench.session, 'run/start', { settings: defaultRunSettings });
  await act(bench);
  bench.probeHub.heardTo(Number.POSITIVE_INFINITY);
  await ask(bench.session, 'run/stop', {});
  return doubtsIn(bench.runsFolder);
}

const pot = (atS: number): ProbeReading => ({ ...head(atS, 90), channel: 'pot' });

describe('nothing is doubted of', () => {
  test('a probe whose lines come one by one, with marks between them', async () => {
    const doubts = await record(async ({ time, probeHub, session }) => {
      for (let second = 0; second < 60; second += 1) {
        await time.pass(1);
        const atS = time.clock.monotonicS();
        probeHub.send('readings', [head(atS, 20), pot(atS)]);
        if (second % 7 === 0)
          await ask(session, 'run/mark', { mark: { type: 'note', text: 'drop' } });
      }
    });
    expect(doubts).toEqual([]);
  });

  test('two probes that are told one after the other when the services had stood still', async () => {
    const doubts = await record(async ({ time, probeHub }) => {
      for (let piece = 0; piece < 4; piece += 1) {
        const fromS = time.clock.monotonicS();
        probeHub.heardTo(fromS);
        await time.pass(9);
        const moments = Array.from({ length: 90 }, (_, index) => fromS + (index + 1) / 10);
        probeHub.send(
          'readings',
          moments.map((atS) => head(atS, 20)),
        );
        probeHub.send('readings', moments.map(pot));
      }
    });
    expect(doubts).toEqual([]);
  });

  test('a computer that really slept', async () => {
    let extraUptimeS = 0;
    let monotonicS = () => 0;
    const doubts = await record(
      async ({ time, probeHub }) => {
        monotonicS = time.clock.monotonicS;
        for (let second = 0; second < 60; second += 1) {
          await time.pass(1);
          probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
          if (second === 30) {
            extraUptimeS += 600;
            time.stepWall(600);
          }
        }
      },
      { uptimeS: () => monotonicS() + extraUptimeS },
    );
    expect(doubts).toEqual([]);
  });

  test('a rehearsal at sixty times the speed on a busy computer', async () => {
    const timeScale = 60;
    const doubts = await record(
      async ({ time, probeHub }) => {
        for (const stillS of [60, 6, 120, 6, 240, 60]) {
          const fromS = time.clock.monotonicS();
          await time.pass(stillS / timeScale);
          probeHub.send(
            'readings',
            Array.from({ length: stillS }, (_, index) => head(fromS + (index + 1) / timeScale, 22)),
          );
        }
      },
      { timeScale },
    );
    expect(doubts).toEqual([]);
  });

  test('a flood of lines, thousands to a piece', async () => {
    const random = createRandom(1);
    const doubts = await record(async ({ time, probeHub }) => {
      const stamper = createReadingStamper();
      for (let piece = 0; piece < 300; piece += 1) {
        await time.pass(0.005 + 0.1 * random.uniform());
        const values = [
          { channel: 'head', value: 20 + piece / 16, unit: '°C', quality: 'good', doubt: null },
        ] as const;
        const lines = Array.from({ length: 1 + Math.floor(400 * random.uniform()) }, () => ({
          text: '20',
          values,
          rejections: [],
        }));
        probeHub.send('readings', stamper.stamp(lines, time.clock.monotonicS()));
      }
    });
    expect(doubts).toEqual([]);
  });

  test('a very slow probe, two lines of which come in one piece', async () => {
    const doubts = await record(async ({ time, probeHub }) => {
      for (let piece = 0; piece < 20; piece += 1) {
        await time.pass(60);
        const atS = time.clock.monotonicS();
        probeHub.send('readings', [head(atS - 30, 20), head(atS, 20)]);
      }
    });
    expect(doubts).toEqual([]);
  });

  test('a probe that falls silent for an hour', async () => {
    const doubts = await record(async ({ time, probeHub }) => {
      for (let second = 0; second < 40; second += 1) {
        await time.pass(second === 20 ? 3600 : 1);
        const atS = time.clock.monotonicS();
        if (second === 20) probeHub.send('link', { atS, state: 'lost', reason: 'unplugged' });
        if (second === 20) probeHub.send('link', { atS, state: 'back', reason: 'unplugged' });
        probeHub.send('readings', [head(atS, 20)]);
      }
    });
    expect(doubts).toEqual([]);
  });

  test('a disk that took nothing for a while, so that the record goes on in a second file', async () => {
    let isBroken = false;
    const doubts = await record(
      async ({ time, probeHub }) => {
        for (let second = 0; second < 40; second += 1) {
          isBroken = second >= 10 && second < 20;
          await time.pass(1);
          probeHub.send('readings', [head(time.clock.monotonicS(), 20)]);
        }
      },
      {
        faults: {
          async createAppend(target) {
            const broken = fail({ kind: 'failed', path: target, message: 'EIO' } as const);
            if (isBroken) return broken;
            const file = await nodeFileLayer.createAppend(target);
            if (!file.ok) return file;
            return succeed({
              ...file.value,
              write: (bytes: Uint8Array) => (isBroken ? broken : file.value.write(bytes)),
            });
          },
        },
      },
    );
    expect(doubts).toEqual([]);
  });

  test('a rehearsal on a busy computer whose first header is damaged, since its second file has one', () => {
    const judge = createTimeJudge();
    const stamp = { seq: 0, monoS: 0, wallMs: 0 };
    const lines = Array.from({ length: 60 }, (_, index): PackedReading => [index, 'head', 20]);
    const together = Array.from({ length: 6 }, (): PackedReading => [60, 'head', 20]);
    const sixtyfold = { ...logHeader('20250314T101500Z'), rehearsal: true, timeScale: 60 };
    for (const body of [
      { kind: 'segment', segment: 2, because: 'a failed sync', header: sixtyfold } as const,
      readings([...lines, ...together]),
    ]) {
      judge.add({ stamp, body });
    }
    expect(judge.doubts()).toEqual([]);
  });

  test('a table of another logger whose clock counts in minutes', async () => {
    const rows = Array.from(
      { length: 600 },
      (_, second) => `${60 * Math.floor(second / 60)};${20 + second / 16}`,
    );
    const { session, runsFolder } = await setUpSession();
    await takeIn(session, ['time (s);head (°C)', ...rows].join('\n'));
    expect(await doubtsIn(runsFolder)).toEqual([]);
  });
});

/** A log as it was written: whole to the last byte. */
async function writeRun(bodies: readonly LogBody[]): Promise<string> {
  const runsFolder = await temporaryFolder();
  const runId = '20250314T101500Z';
  const whole: readonly LogBody[] = [{ kind: 'header', header: logHeader(runId) }, ...bodies];
  let previous = firstPreviousChecksum;
  const lines = whole.map((body, seq) => {
    const { line, checksum } = encodeRecord(body, { seq, monoS: seq, wallMs: seq }, previous);
    previous = checksum;
    return line;
  });
  await mkdir(path.join(runsFolder, runId));
  await writeFile(path.join(runsFolder, runId, 'run.jsonl'), lines.join(''), 'latin1');
  return runsFolder;
}

const readings = (rows: readonly PackedReading[]): LogBody => ({
  kind: 'readings',
  readings: [...rows],
});
const tenASecond = (fromS: number, toS: number): readonly LogBody[] =>
  Array.from({ length: Math.round((toS - fromS) * 10) }, (_, index) =>
    readings([[Math.round(1000 * fromS + 100 * index) / 1000, 'head', 20]]),
  );
const onOne = (count: number, timeS: number): LogBody =>
  readings(Array.from({ length: count }, () => [timeS, 'head', 20]));
const link = (state: 'lost' | 'back', timeS: number): LogBody => ({
  kind: 'link',
  timeS,
  state,
  reason: 'computer-asleep',
});

describe('doubted are', () => {
  test('readings that waited and were stamped when they were taken', async () => {
    const runsFolder = await writeRun([
      ...tenASecond(0, 30),
      onOne(16, 31.8),
      ...tenASecond(31.9, 40),
    ]);
    expect(await doubtsIn(runsFolder)).toEqual([
      {
        kind: 'on-one-moment',
        channel: 'head',
        timeS: 31.8,
        readings: 16,
        usuallyTakeS: expect.closeTo(1.6, 3),
      },
    ]);
  });

  test('a sleep that the services made of standing still, with all that had been heard behind it', async () => {
    const runsFolder = await writeRun([
      ...tenASecond(0, 30),
      { kind: 'clock', timeS: 29.9, sleptS: 11.3, wallStepS: 0 },
      link('lost', 30),
      link('back', 41.3),
      onOne(113, 41.3),
      ...tenASecond(41.4, 50),
    ]);
    expect(await doubtsIn(runsFolder)).toEqual([
      {
        kind: 'on-one-moment',
        channel: 'head',
        timeS: 41.3,
        readings: 113,
        usuallyTakeS: expect.closeTo(11.3, 3),
      },
      { kind: 'heard-asleep', fromS: 30, toS: 41.3, readings: 113 },
    ]);
  });

  test('readings with their own moments from within a sleep', async () => {
    const runsFolder = await writeRun([
      ...tenASecond(0, 30),
      link('lost', 20),
      link('back', 30),
      ...tenASecond(30.1, 40),
    ]);
    expect(await doubtsIn(runsFolder)).toEqual([
      { kind: 'heard-asleep', fromS: 20, toS: 30, readings: 79 },
    ]);
  });

  test('a sleep only of what is heard at its end, not of what stood on one moment long before', async () => {
    const runsFolder = await writeRun([
      ...tenASecond(0, 10),
      onOne(16, 11.8),
      ...tenASecond(11.9, 30),
      link('lost', 30),
      link('back', 41.3),
      ...tenASecond(41.4, 50),
    ]);
    expect((await doubtsIn(runsFolder)).map(({ kind }) => kind)).toEqual(['on-one-moment']);
  });

  test('three readings from within a sleep, and not two that its edges or a slow probe explain', async () => {
    const within = (...timesS: readonly number[]) =>
      writeRun([
        ...tenASecond(0, 19),
        link('lost', 20),
        link('back', 30),
        // The edges are known to a second.
        readings([20.5, ...timesS, 29.5].map((timeS) => [timeS, 'head', 20])),
      ]);
    expect(await doubtsIn(await within(24, 25, 26))).toEqual([
      { kind: 'heard-asleep', fromS: 20, toS: 30, readings: 3 },
    ]);
    expect(await doubtsIn(await within(24, 25))).toEqual([]);
  });

  test('a channel, and marks, whose moments go back', async () => {
    const mark = (timeS: number, markId: number): LogBody => ({
      kind: 'mark',
      timeS,
      markId,
      mark: { type: 'note', text: 'drop' },
    });
    const runsFolder = await writeRun([
      readings([
        [10, 'head', 20],
        [10, 'pot', 90],
      ]),
      readings([[9, 'head', 20]]),
      readings([[8, 'head', 20]]),
      readings([[11, 'pot', 90]]),
      mark(12, 1),
      mark(11, 2),
    ]);
    expect(await doubtsIn(runsFolder)).toEqual([
      { kind: 'going-back', what: 'head', timeS: 9, afterS: 10 },
      { kind: 'going-back', what: 'the marks', timeS: 11, afterS: 12 },
    ]);
  });

  test('and the command says so in plain words and ends with 1', async () => {
    const runsFolder = await writeRun([
      ...tenASecond(0, 30),
      link('lost', 30),
      link('back', 41.3),
      onOne(113, 41.3),
    ]);
    const { code, output } = await runCommand(
      process.execPath,
      ['--import', 'tsx', 'scripts/check-runs.ts', runsFolder],
      { cwd: projectRoot },
    );
    expect({ code, lines: output.trim().split('\n') }).toEqual({
      code: 1,
      lines: [
        '20250314T101500Z: whole, 0 records missing, 0 not understood',
        '  113 readings of head stand at 41.3 s, for which the probe usually takes 11.3 s: they were heard earlier or later',
        '  a sleep of the computer is recorded from 30.0 to 41.3 s, and 113 readings that were heard in it: one of the two is not so',
        '1 whole, 0 with a cut-off end, 0 damaged, 0 unreadable; 1 with moments that cannot be right',
      ],
    });
  });
});
