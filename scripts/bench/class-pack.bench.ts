/**
 * The pack of a class of thirty: seconds of processor and clock, and memory, of working the runs through and of each
 * kind of file. Every run is a simulated still read once a second, with its own noise, marks and measured cuts.
 *
 * Usage: npx tsx scripts/bench/class-pack.bench.ts [RUNS]
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { nodeFileLayer, type PackRun, writePack } from '#main';
import {
  createMonitor,
  createProbeSignal,
  createRandom,
  defaultRunSettings,
  type MarkBody,
  type RunInput,
  simulateBatch,
  teachingRigs,
} from '#shared-core';
import { tidyMemory } from '../../main/session/desk/tidy-memory.ts';
import { isEntryPoint } from '../checks/is-entry-point.ts';

const easedS = 760;
const changeS = 2000;
const offS = 3600;
const endS = 4500;
const charge = { volumeMl: 250, strengthAbv: 11 };
const pressureKPa = 99.4;
const rigs = ['wirePacking', 'glassBeads', 'vigreux', 'simpleHead'] as const;

export async function run(count = 30): Promise<void> {
  // As the process does that makes packs.
  tidyMemory();
  const runs = benchRuns(count);
  const folder = mkdtempSync(path.join(tmpdir(), 'still-head-bench-'));
  const costs = new Map<string, number>();
  const mostMb = new Map<string, number>();
  let doing = 'study';
  let since = process.cpuUsage();
  const begins = (next: string) => {
    const { user, system } = process.cpuUsage(since);
    costs.set(doing, (costs.get(doing) ?? 0) + (user + system) / 1e6);
    mostMb.set(doing, Math.max(mostMb.get(doing) ?? 0, process.memoryUsage().rss / 1e6));
    since = process.cpuUsage();
    doing = next;
  };
  const startedMs = performance.now();
  const restedMb = process.memoryUsage().rss / 1e6;
  try {
    const written = await writePack({
      runs,
      createMonitor,
      madeBy: { version: 'bench', modelVersion: 'bench' },
      createdMs: 0,
      outDir: folder,
      files: nodeFileLayer,
      onStudied: () => begins('study'),
      onProgress: ({ file }) => begins(kindOf(file)),
    });
    if (!written.ok) throw new Error(written.error.message);
    begins('');
    const total = [...costs.values()].reduce((sum, seconds) => sum + seconds, 0);
    console.log(
      `Pack of ${count} runs of ${endS} readings: ${((performance.now() - startedMs) / 1000).toFixed(1)} s ` +
        `by the clock, ${total.toFixed(1)} s of processor, ${written.value.length} files`,
    );
    const wholeMb = process.resourceUsage().maxRSS / 1e3;
    console.log(
      `  at most ${wholeMb.toFixed(0)} MB, of them ${restedMb.toFixed(0)} MB before it began`,
    );
    for (const [kind, seconds] of [...costs].toSorted(([, a], [, b]) => b - a)) {
      const share = ((100 * seconds) / total).toFixed(0);
      console.log(
        `  ${kind.padEnd(24)} ${seconds.toFixed(2).padStart(7)} s  ${share.padStart(3)} %` +
          `  ${(mostMb.get(kind) ?? 0).toFixed(0).padStart(5)} MB`,
      );
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function benchRuns(count: number): readonly PackRun[] {
  const batches = rigs.map(simulated);
  return Array.from({ length: count }, (_, index) =>
    recorded(batches[index % batches.length], index),
  );
}

/** Files of one folder and one format cost alike. */
function kindOf(file: string): string {
  return `${file.includes('/') ? file.split('/').slice(0, -1).join('/') : file} ${path.extname(file)}`;
}

function simulated(rig: (typeof rigs)[number]): ReturnType<typeof simulateBatch> {
  return simulateBatch(
    {
      charge,
      rig: teachingRigs[rig],
      pressureKPa,
      roomTemperatureC: 21,
      schedule: [
        { timeS: 0, kind: 'heat-on', powerW: 130 },
        { timeS: easedS, kind: 'heat-eased', powerW: 64 },
        { timeS: changeS, kind: 'receiver-changed' },
        { timeS: offS, kind: 'heat-off' },
      ],
      leastStrengthAbv: 80,
    },
    { durationS: endS },
  );
}

function recorded(batch: ReturnType<typeof simulateBatch> | undefined, index: number): PackRun {
  const samples = batch?.samples ?? [];
  const probe = createProbeSignal({
    random: createRandom(`class pack ${index}`),
    whiteNoiseK: 0.05,
    quantumK: 1 / 16,
    powerOnReadings: 0,
  });
  const readings = samples.flatMap(({ timeS, bulbTemperatureC }): RunInput[] => {
    const value = probe.read(timeS, bulbTemperatureC);
    return value === null
      ? []
      : [{ kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' }];
  });
  const receivers = samples.flatMap((sample, at) =>
    samples[at + 1]?.receiverIndex === sample.receiverIndex ? [] : [sample.receiver],
  );
  const marks: readonly (readonly [number, MarkBody])[] = [
    [0, { type: 'heat-on' }],
    [easedS, { type: 'heat-eased' }],
    [changeS, { type: 'receiver-changed', volumeMl: tenth(receivers[0]?.volumeMl) }],
    [offS, { type: 'heat-off' }],
    [endS - 100, { type: 'volume-read', volumeMl: tenth(receivers[1]?.volumeMl) }],
  ];
  const made = marks.map(
    ([timeS, mark], at): RunInput => ({ kind: 'mark', timeS, markId: at + 1, mark }),
  );
  const inputs = [...readings, ...made].toSorted((a, b) => a.timeS - b.timeS);
  return {
    entries: {
      cuts: receivers.map(({ strengthAbv }, at) => ({
        number: at + 1,
        strength: {
          by: 'alcoholometer',
          indicatedAbv: { value: tenth(strengthAbv), standardUncertainty: 0.3 },
          temperatureC: { value: 20, standardUncertainty: 0.5 },
        },
      })),
    },
    run: {
      settings: {
        ...defaultRunSettings,
        charge: { ...charge, standardUncertaintyAbv: 0.2 },
        rig: { ...defaultRunSettings.rig, plates: 3 },
        pressure: {
          pressureKPa,
          standardUncertaintyKPa: 0.2,
          source: 'barometer',
          altitudeM: null,
        },
        attentionCheckS: null,
      },
      appVersion: 'bench',
      modelVersion: 'bench',
      endS,
      inputs,
      lateMarks: [],
      summary: {
        runId: `class-${index + 1}`,
        name: `Pear-juice ferment, bench ${index + 1}`,
        notes: '',
        startedAtIso: new Date(Date.UTC(2026, 2, 18, 9, index)).toISOString(),
        durationS: endS,
        readings: readings.length,
        ended: 'clean',
        rehearsal: true,
        plateau: null,
        heatOffCalledS: null,
        damagedRecords: 0,
        unreadable: null,
      },
    },
  };
}

const tenth = (value = 0) => Math.round(10 * value) / 10;

if (isEntryPoint(import.meta.url)) await run(Number(process.argv[2] ?? 30));
