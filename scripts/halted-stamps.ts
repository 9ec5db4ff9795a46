/**
 * What becomes of the record while the services that write it stand still, as a suspended or starved process does: by how much
 * stamps of lines written meanwhile lie off those of quiet times, what is lost, and whether a sleep is made of it. A counting probe
 * over a real pseudo-terminal.
 *
 * Usage: npx tsx scripts/halted-stamps.ts [HALT-SECONDS]
 */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { createRunLibrary, nodeFileLayer, systemClock } from '#main';
import { countedReadings, startCountingProbe } from './attack/counting-probe.ts';
import { startRecordingServices } from './gaps/recording-services.ts';
import { quantile } from './measuring/quantile.ts';

const [haltS = 10] = process.argv.slice(2).map(Number);
const quietS = 10;

const folder = await mkdtemp(path.join(tmpdir(), 'halted-'));
const probe = startCountingProbe(20);
const services = await startRecordingServices(folder);
try {
  const runId = await services.record(probe.path);
  await pause(1000 * quietS);
  const from = probe.writtenS.length;
  await services.halt(haltS);
  const to = probe.writtenS.length;
  await pause(1000 * quietS);
  const last = probe.writtenS.length - 1;
  await pause(1000);
  await services.ask('run/stop', {});

  const library = createRunLibrary({
    files: nodeFileLayer,
    clock: systemClock,
    runsFolder: folder,
    mayWrite: () => false,
  });
  const whole = await library.whole(runId);
  await library.close();
  if (!whole.ok) throw new Error(whole.error.kind);
  const stamps = new Map(
    countedReadings(whole.value.inputs).map(({ line, timeS }) => [line, timeS]),
  );
  const first = Math.min(...stamps.keys());
  const shiftsMs = (isWanted: (line: number) => boolean) =>
    [...stamps].flatMap(([line, timeS]) =>
      isWanted(line) ? [1000 * (timeS - (probe.writtenS[line] ?? Number.NaN))] : [],
    );
  const isHalted = (line: number) => line >= from && line < to;
  const quiet = shiftsMs((line) => !isHalted(line));
  const usualMs = quantile(quiet, 0.5);
  const off = (shifts: readonly number[]) => {
    const inMs = (share: number) =>
      quantile(
        shifts.map((shift) => Math.abs(shift - usualMs)),
        share,
      ).toFixed(1);
    return `${inMs(0.5)} ms (median), ${inMs(0.99)} ms (99 %), ${inMs(1)} ms (worst) of ${shifts.length}`;
  };
  const lost = Array.from({ length: last - first + 1 }, (_, index) => first + index).filter(
    (line) => !stamps.has(line),
  );
  const log = await readFile(path.join(folder, runId, 'run.jsonl'), 'latin1');
  console.log(`halted for ${haltS} s: stamps off by ${off(shiftsMs(isHalted))}`);
  console.log(`in quiet times: ${off(quiet)}`);
  console.log(
    `${lost.length} lost, ${stamps.size - new Set(stamps.values()).size} on another's stamp, sleep invented: ${log.includes('asleep')}`,
  );
} finally {
  await services.close();
  probe.close();
  await rm(folder, { recursive: true, force: true });
}
