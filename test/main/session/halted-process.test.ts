import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { systemClock } from '#main';
import { countedReadings, startCountingProbe } from '../../../scripts/attack/counting-probe.ts';
import { readWholeRun } from '../../../scripts/measuring/recorded-run.ts';
import { pause, until } from '../probe/support/until.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';
import { startRecordingServices } from './support/recording-services.ts';

const linesPerS = 20;
const haltsS = [2, 4, 10];

function countingProbe() {
  const probe = startCountingProbe(linesPerS);
  onTestFinished(() => probe.close());
  return probe;
}

test('services that stand still for 2, 4 and 10 s lose nothing, move no stamp and invent no sleep', async () => {
  const runsFolder = await temporaryFolder();
  const probe = countingProbe();
  const { child, runId } = await startRecordingServices(runsFolder, probe.path);
  const halted: { readonly fromS: number; readonly toS: number }[] = [];
  await pause(2);
  for (const haltS of haltsS) {
    const fromS = systemClock.monotonicS();
    const linesBefore = probe.writtenS.length;
    child.kill('SIGSTOP');
    await pause(haltS);
    // A busy computer may have held up the probe too.
    const enough = linesBefore + linesPerS * haltS;
    await until('the lines of the halt', () => probe.writtenS.length >= enough, 60);
    child.kill('SIGCONT');
    halted.push({ fromS, toS: systemClock.monotonicS() });
    await pause(1.5);
  }
  const stopAt = probe.writtenS.length;
  await until('a few more lines', () => probe.writtenS.length > stopAt + 5);
  child.stdin.write('stop\n');
  await once(child, 'exit');

  const whole = await readWholeRun(runsFolder, runId);
  const heard = countedReadings(whole.inputs);
  const first = heard[0]?.line ?? 0;
  expect(heard.map(({ line }) => line)).toEqual(heard.map((_, index) => first + index));
  expect(heard.at(-1)?.line).toBeGreaterThanOrEqual(stopAt);

  /** Run time less the moment of writing: the same for every line, but for the way through the system. */
  const shifts = heard.map(({ line, timeS }) => ({
    writtenS: probe.writtenS[line] ?? Number.NaN,
    shiftS: timeS - (probe.writtenS[line] ?? Number.NaN),
  }));
  const isHalted = (atS: number) => halted.some(({ fromS, toS }) => atS >= fromS && atS <= toS);
  const shiftOf = (during: boolean) =>
    median(
      shifts.filter(({ writtenS }) => isHalted(writtenS) === during).map(({ shiftS }) => shiftS),
    );
  const written = probe.writtenS.slice(first, first + heard.length).filter(isHalted);
  expect(shifts.filter(({ writtenS }) => isHalted(writtenS)).length).toBe(written.length);
  expect(written.length).toBeGreaterThan(250);
  expect(Math.abs(shiftOf(true) - shiftOf(false))).toBeLessThan(0.05);
  const log = await readFile(path.join(runsFolder, runId, 'run.jsonl'), 'latin1');
  expect({ asleep: log.includes('asleep'), clock: log.includes('"kind":"clock"') }).toEqual({
    asleep: false,
    clock: false,
  });
});

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
