import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { createLogWriter, createRunLibrary, nodeFileLayer, segmentFile, systemClock } from '#main';
import {
  createMonitor,
  type LogBody,
  type LogHeader,
  modelVersion,
  packReading,
  type RunInput,
  runLogVersion,
} from '#shared-core';
import { type SimulatedRun, simulatedRun } from '../../support/simulated-run.ts';

/** Puts a simulated run into a library on the disk, as a recording would have written it. */
export async function writeSimulatedRun(runsFolder: string, run: SimulatedRun): Promise<string> {
  const { settings, inputs, endS } = simulatedRun(run);
  const files = nodeFileLayer;
  await mkdir(runsFolder, { recursive: true });
  const library = createRunLibrary({
    files,
    clock: systemClock,
    runsFolder,
    mayWrite: () => true,
  });
  const wallMs = systemClock.wallMs() - 86_400_000 + run.seed * 3_600_000;
  const place = await library.makeRunFolder(wallMs);
  if (!place.ok) throw new Error(JSON.stringify(place.error));
  const { runId, folder } = place.value;
  const header: LogHeader = {
    format: 'still-head-run-log',
    version: runLogVersion,
    runId,
    startedAtIso: new Date(wallMs).toISOString(),
    settings,
    appVersion: '0.1.0',
    modelVersion,
    timeScale: 1,
    rehearsal: true,
    source: null,
    origin: 'recorded',
  };
  const writer = await createLogWriter(files, path.join(folder, segmentFile(1)));
  if (!writer.ok) throw new Error(JSON.stringify(writer.error));
  let seq = 0;
  for (const body of bodies(header, inputs, endS)) {
    const written = writer.value.write(body, { seq, monoS: seq, wallMs });
    if (!written.ok) throw new Error(JSON.stringify(written.error));
    seq += 1;
  }
  await writer.value.sync();
  await writer.value.close();
  return runId;
}

function* bodies(header: LogHeader, inputs: readonly RunInput[], endS: number): Generator<LogBody> {
  yield { kind: 'header', header };
  const monitor = createMonitor(header.settings);
  for (const input of inputs) {
    if (input.kind === 'reading') yield { kind: 'readings', readings: [packReading(input)] };
    else yield input;
    monitor.push(input);
    for (const change of monitor.takeChanges()) yield { kind: 'change', change };
  }
  monitor.advanceTo(endS);
  for (const change of monitor.takeChanges()) yield { kind: 'change', change };
  yield { kind: 'end', timeS: endS, how: 'clean' };
}
