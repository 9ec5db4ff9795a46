import path from 'node:path';
import { createLogWriter, createRunLibrary, nodeFileLayer, segmentFile, systemClock } from '#main';
import {
  createMonitor,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  type LogBody,
  type LogHeader,
  type MarkBody,
  modelVersion,
  packReading,
  pearFermentSetup,
  type Reading,
  type RunInput,
  type RunSettings,
  runLogVersion,
  simulateBatch,
} from '#shared-core';

export interface SimulatedRun {
  readonly name: string;
  readonly pressureKPa: number;
  readonly seed: number;
}

/** Simulates a careful run of the pear ferment, pot probe and bookings included. */
export function simulatedRun({ name, pressureKPa, seed }: SimulatedRun): {
  readonly settings: RunSettings;
  readonly inputs: readonly RunInput[];
  readonly endS: number;
} {
  const setup = { ...pearFermentSetup(), pressureKPa };
  const limitS = simulateBatch(setup, { durationS: 4800 }).truth.limitReachedS ?? 3000;
  const offS = Math.round(limitS) + 20;
  const endS = offS + 480;
  const schedule = [...(setup.schedule ?? []), { timeS: offS, kind: 'heat-off' as const }];
  const { samples, truth } = simulateBatch({ ...setup, schedule }, { durationS: endS });
  const probe = createProbeSignal({ random: createRandom(seed), whiteNoiseK: 0.04, biasK: 0.05 });
  const arrivedS = Math.round(truth.vapourArrivalS ?? 900);
  const volumeAt = (timeS: number) => samples[timeS]?.distillateVolumeMl ?? 0;
  const marks: (readonly [number, MarkBody])[] = [
    [1, { type: 'heat-on' }],
    [760, { type: 'heat-eased' }],
    ...[300, 700, 1100, 1500].flatMap((afterS): [number, MarkBody][] => {
      const timeS = arrivedS + afterS;
      return timeS < offS - 60
        ? [[timeS, { type: 'volume-read', volumeMl: Math.round(volumeAt(timeS) * 2) / 2 }]]
        : [];
    }),
    [offS, { type: 'heat-off' }],
    [offS + 60, { type: 'receiver-changed', volumeMl: Math.round(volumeAt(offS + 60) * 2) / 2 }],
  ];
  const reading = (timeS: number, channel: string, value: number): Reading => ({
    kind: 'reading',
    timeS,
    channel,
    value,
    unit: '°C',
    quality: 'good',
  });
  const readings = samples.flatMap((sample): Reading[] => {
    const head = probe.read(sample.timeS, sample.bulbTemperatureC);
    if (head === null) return [];
    const pot = Math.round(sample.potTemperatureC * 10) / 10;
    return [
      reading(sample.timeS, 'head', Math.round(head * 100) / 100),
      ...(sample.timeS % 5 === 0 ? [reading(sample.timeS, 'pot', pot)] : []),
    ];
  });
  const made = marks.map(
    ([timeS, mark], index): RunInput => ({ kind: 'mark', timeS, markId: index + 1, mark }),
  );
  return {
    settings: {
      ...defaultRunSettings,
      name,
      charge: { volumeMl: 250, strengthAbv: 11, standardUncertaintyAbv: 0.5 },
      rig: { description: 'wire packing', plates: 6, heatW: 64, columnLossW: 30 },
      pressure: {
        pressureKPa,
        standardUncertaintyKPa: 0.3,
        source: 'barometer',
        altitudeM: null,
      },
      attentionCheckS: null,
    },
    inputs: [...readings, ...made].toSorted((a, b) => a.timeS - b.timeS),
    endS,
  };
}

/** Puts a simulated run into a library on the disk, as a recording would have written it. */
export async function writeSimulatedRun(runsFolder: string, run: SimulatedRun): Promise<string> {
  const { settings, inputs, endS } = simulatedRun(run);
  const files = nodeFileLayer;
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
  const writer = createLogWriter(files, path.join(folder, segmentFile(1)));
  if (!writer.ok) throw new Error(JSON.stringify(writer.error));
  let seq = 0;
  for (const body of bodies(header, inputs, endS)) {
    const written = writer.value.write(body, { seq, monoS: seq, wallMs });
    if (!written.ok) throw new Error(JSON.stringify(written.error));
    seq += 1;
  }
  await writer.value.sync();
  await writer.value.close();
  await library.close();
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
