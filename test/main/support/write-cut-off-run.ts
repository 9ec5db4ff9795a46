import path from 'node:path';
import {
  type Clock,
  createLogWriter,
  createRunLibrary,
  nodeFileLayer,
  segmentFile,
  systemClock,
} from '#main';
import {
  createMonitor,
  defaultRunSettings,
  type LogBody,
  type LogHeader,
  type Monitor,
  modelVersion,
  packReading,
  type RunInput,
  type RunSettings,
  serialSourceSchema,
} from '#shared-core';

export interface CutOffRun {
  readonly header: Omit<LogHeader, 'runId' | 'startedAtIso'>;
  /** What was recorded, in order. */
  readonly inputs: readonly RunInput[];
  /** When the program was ended, in run time [s], and how long ago that is. */
  readonly brokeOffS: number;
  readonly agoS: number;
  readonly clock?: Clock;
  readonly createMonitor?: (settings: RunSettings) => Monitor;
}

/** How this program begins the record of one serial probe. */
export const recordedHeader: CutOffRun['header'] = {
  format: 'still-head-run-log',
  version: 1,
  settings: defaultRunSettings,
  appVersion: '0.1.0',
  modelVersion,
  timeScale: 1,
  rehearsal: false,
  source: serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' }),
  origin: 'recorded',
};

/** Puts a run on the disk as a recording leaves it that was killed a moment ago, conclusions included; answers when, by the clock. */
export async function writeCutOffRun(
  runsFolder: string,
  run: CutOffRun,
): Promise<{ readonly runId: string; readonly brokeOffAtS: number }> {
  const { clock = systemClock } = run;
  const files = nodeFileLayer;
  const startedS = clock.monotonicS() - run.agoS - run.brokeOffS;
  const startedMs = clock.wallMs() - (run.agoS + run.brokeOffS) * 1000;
  const setup = { files, clock, runsFolder, mayWrite: () => true };
  const library = createRunLibrary(setup);
  const place = await library.makeRunFolder(startedMs);
  if (!place.ok) throw new Error(JSON.stringify(place.error));
  const { runId, folder } = place.value;
  const startedAtIso = new Date(startedMs).toISOString();
  const header: LogHeader = { ...run.header, runId, startedAtIso };
  await library.keepHeader(folder, header);
  const writer = await createLogWriter(files, path.join(folder, segmentFile(1)));
  if (!writer.ok) throw new Error(JSON.stringify(writer.error));
  let seq = 0;
  const write = (body: LogBody, timeS: number) => {
    const stamp = { seq, monoS: startedS + timeS, wallMs: startedMs + timeS * 1000 };
    const written = writer.value.write(body, stamp);
    if (!written.ok) throw new Error(JSON.stringify(written.error));
    seq += 1;
  };
  write({ kind: 'header', header }, 0);
  const monitor = (run.createMonitor ?? createMonitor)(header.settings);
  for (const input of run.inputs) {
    const body =
      input.kind === 'reading'
        ? { kind: 'readings' as const, readings: [packReading(input)] }
        : input;
    write(body, input.timeS);
    monitor.push(input);
    for (const change of monitor.takeChanges()) write({ kind: 'change', change }, input.timeS);
  }
  await writer.value.sync();
  await writer.value.close();
  return { runId, brokeOffAtS: startedS + run.brokeOffS };
}
