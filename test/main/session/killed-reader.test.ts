import { once } from 'node:events';
import process from 'node:process';
import { expect, onTestFinished, test } from 'vitest';
import { checkRuns, nodeFileLayer, type RunCheck, systemClock } from '#main';
import { clockWords, type RunInput } from '#shared-core';
import {
  countedReadings,
  linesPerKelvin,
  startCountingProbe,
} from '../../../scripts/attack/counting-probe.ts';
import { readWholeRun } from '../../../scripts/measuring/recorded-run.ts';
import { pause, until } from '../probe/support/until.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { startRecordingServices } from './support/recording-services.ts';

const linesPerS = 50;
/** More batches than may be on their way: what comes then waits in the process that reads the probe. */
const haltS = 1.5;

async function readRun(runsFolder: string, runId: string) {
  const whole = await readWholeRun(runsFolder, runId);
  const checks: RunCheck[] = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  return { ...whole, checks };
}

const isOfReader = (input: RunInput) => input.kind === 'link' && input.reason === 'reader-stopped';

test('readings that waited in the process that reads the probe when it was killed are told as lost, from the first of them on', async () => {
  const runsFolder = await temporaryFolder();
  const probe = startCountingProbe(linesPerS);
  onTestFinished(() => probe.close());
  const { child, runId, readerId } = await startRecordingServices(runsFolder, probe.path);
  await pause(2);
  const before = probe.writtenS.length;
  child.kill('SIGSTOP');
  await pause(haltS);
  await until('the lines of the halt', () => probe.writtenS.length > before + linesPerS, 60);
  const killedS = systemClock.monotonicS();
  process.kill(readerId, 'SIGKILL');
  child.kill('SIGCONT');
  const log = () => readRun(runsFolder, runId);
  let found = await log();
  const linesAfterReturn = () => {
    const back = found.inputs.findLastIndex(isOfReader);
    return back < 0 ? 0 : countedReadings(found.inputs.slice(back)).length;
  };
  while (linesAfterReturn() < 5) {
    await pause(0.2);
    found = await log();
  }
  child.stdin.write('stop\n');
  await once(child, 'exit');

  found = await log();
  const [lostAt = -1, backAt = -1, ...others] = found.inputs.flatMap((input, index) =>
    input.kind === 'link' ? [index] : [],
  );
  const [lost, back] = [found.inputs[lostAt], found.inputs[backAt]];
  expect([lost, back, others]).toMatchObject([
    { kind: 'link', state: 'lost', reason: 'reader-stopped' },
    { kind: 'link', state: 'back', reason: 'reader-stopped' },
    [],
  ]);
  const heard = countedReadings(found.inputs);
  const told = countedReadings(found.inputs.slice(0, lostAt));
  const after = countedReadings(found.inputs.slice(lostAt));
  const inOrder = (lines: typeof heard) => lines.map((_, index) => (lines[0]?.line ?? 0) + index);
  // Nothing else is missing.
  expect(told.map(({ line }) => line)).toEqual(inOrder(told));
  expect(after.map(({ line }) => line)).toEqual(inOrder(after));
  const firstLost = (told.at(-1)?.line ?? 0) + 1;
  // By the moments at which lines are written, moved to the time of the run.
  const shiftS = Math.min(...heard.map(({ line, timeS }) => timeS - (probe.writtenS[line] ?? 0)));
  const killedAtS = killedS + shiftS;
  expect(probe.writtenS[firstLost]).toBeLessThan(killedS);
  expect(lost?.timeS).toBeGreaterThanOrEqual(told.at(-1)?.timeS ?? Number.NaN);
  expect(lost?.timeS).toBeLessThan(killedAtS);
  expect(back?.timeS).toBeGreaterThan(killedAtS);
  expect(found.inputs[backAt + 1]).toMatchObject({
    kind: 'reading',
    value: (after[0]?.line ?? 0) / linesPerKelvin,
  });
  const [from, to] = [clockWords(lost?.timeS ?? 0), clockWords(back?.timeS ?? 0)];
  expect(found.summary.leftOut).toEqual([
    `From ${from} to ${to} nothing of the probe is recorded: the part of the program that reads it had stopped. What the probe sent then is lost.`,
  ]);
  expect(found.checks).toMatchObject([
    { state: 'whole', timeDoubts: [], unread: [{ fromS: lost?.timeS, toS: back?.timeS }] },
  ]);
}, 120_000);
