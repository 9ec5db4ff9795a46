import process from 'node:process';
import { describe, expect, test } from 'vitest';
import {
  createRunLibrary,
  emptyReport,
  type FileLayer,
  type Recorder,
  readRunLog,
  startRecorder,
} from '#main';
import { createRandom, inputsOfRecord, type LogBody, type RunInput } from '#shared-core';
import type { Random } from '../../../shared-core/random/create-random.ts';
import { logHeader } from '../support/log-header.ts';
import { createManualTime, type ManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, type DiskFaults, soundDisk } from '../support/power-loss-disk.ts';

/** The full figure is measured with POWER_LOSS_SEEDS=10000. */
const seeds = Number(process.env.POWER_LOSS_SEEDS ?? 60);
const failingSyncs = Number(process.env.FAILING_SYNCS ?? 25);

const runsFolder = '/runs';
const runId = '20250314T101500Z';
const folder = `${runsFolder}/${runId}`;
const header = logHeader(runId);

async function start(files: FileLayer, time: ManualTime): Promise<Recorder | null> {
  const { clock, scheduler } = time;
  const onStatus = () => undefined;
  const started = startRecorder({ files, clock, scheduler, folder, header, onStatus });
  // Syncs take simulated time.
  await time.pass(2);
  const recorder = await started;
  return recorder.ok ? recorder.value : null;
}

async function recordedIn(files: FileLayer): Promise<readonly RunInput[]> {
  const inputs: RunInput[] = [];
  for await (const records of readRunLog(files, folder, emptyReport())) {
    for (const record of records) inputs.push(...inputsOfRecord(record));
  }
  return inputs;
}

function someBody(random: Random, timeS: number, markId: number): LogBody {
  if (random.uniform() < 0.05) {
    return { kind: 'mark', timeS, markId, mark: { type: 'note', text: 'x'.repeat(700) } };
  }
  const channels = ['head', 'pot', 'room', 'ferment'].slice(0, random.integer(1, 4));
  return {
    kind: 'readings',
    readings: channels.map((channel) => [timeS, channel, Math.round(random.uniform() * 1600) / 16]),
  };
}

interface Outcome {
  readonly written: readonly RunInput[];
  readonly savedToS: number;
  readonly sinceSavedS: number;
  readonly found: readonly RunInput[];
  readonly foundAfterRecovery: readonly RunInput[];
}

/** Records for a while on a disk with these faults, loses power, and reads what is left. */
async function loseAndRecover(random: Random, faults: DiskFaults): Promise<Outcome | null> {
  const time = createManualTime();
  const disk = createPowerLossDisk(faults, time.scheduler);
  const recorder = await start(disk.files, time);
  if (recorder === null) return null;
  const written: RunInput[] = [];
  const startS = time.clock.monotonicS();
  const records = random.integer(1, 60);
  let oldestUnsavedS = Number.POSITIVE_INFINITY;
  for (let count = 0; count < records; count += 1) {
    // No two at the same time, so that "saved to" tells them apart.
    await time.pass(0.002 + random.exponential() * 0.2);
    const timeS = Math.round((time.clock.monotonicS() - startS) * 1000) / 1000 + 0.001;
    const body = someBody(random, timeS, count + 1);
    written.push(...inputsOfRecord({ body }));
    recorder.append(body, timeS, body.kind === 'mark' ? 'now' : 'soon');
  }
  await time.pass(random.uniform());
  const { savedToS } = recorder.status();
  const nowS = time.clock.monotonicS() - startS;
  for (const { timeS } of written) {
    if (timeS > savedToS) oldestUnsavedS = Math.min(oldestUnsavedS, timeS);
  }
  const files = disk.losePower(random);
  const found = await recordedIn(files);
  const library = createRunLibrary({ files, clock: time.clock, runsFolder, mayWrite: () => true });
  await library.recover(runId);
  const foundAfterRecovery = await recordedIn(files);
  return {
    written,
    savedToS,
    sinceSavedS: Math.max(0, nowS - oldestUnsavedS),
    found,
    foundAfterRecovery,
  };
}

const textOf = (inputs: readonly RunInput[]) => inputs.map((input) => JSON.stringify(input));

function expectNothingSavedLost({ written, savedToS, found }: Outcome, label: string): void {
  const kept = new Set(textOf(found));
  const missing = written.filter(
    (input) => input.timeS <= savedToS && !kept.has(JSON.stringify(input)),
  );
  expect(missing, `${label}: saved but missing`).toEqual([]);
  const known = textOf(written);
  let from = 0;
  for (const text of textOf(found)) {
    const at = known.indexOf(text, from);
    if (at === -1) expect.fail(`${label}: ${text} was never recorded, or out of order`);
    from = at + 1;
  }
}

describe('a loss of power', () => {
  test(`costs nothing saved, nothing older than a second, and makes nothing up (${seeds} seeds)`, async () => {
    for (let seed = 0; seed < seeds; seed += 1) {
      const random = createRandom(seed);
      const slow = random.fork('disk');
      const faults = { ...soundDisk, syncTakesS: () => slow.uniform() * 0.5 };
      const outcome = await loseAndRecover(random.fork('run'), faults);
      if (outcome === null) expect.fail('A sound disk starts a run.');
      expectNothingSavedLost(outcome, `seed ${seed}`);
      expect(outcome.sinceSavedS).toBeLessThanOrEqual(1);
      expect(outcome.foundAfterRecovery).toEqual(outcome.found);
    }
  });

  test(`costs nothing saved even when syncs and writes fail before it (${seeds} seeds)`, async () => {
    let started = 0;
    for (let seed = 0; seed < seeds; seed += 1) {
      const random = createRandom(`failing ${seed}`);
      const disk = random.fork('disk');
      const outcome = await loseAndRecover(random.fork('run'), {
        failSync: () => disk.uniform() < 0.1,
        takeBytes: (length) => {
          const luck = disk.uniform();
          if (luck > 0.06) return length;
          return luck < 0.03 ? null : Math.floor(length * disk.uniform());
        },
        syncTakesS: () => disk.uniform() * 0.5,
      });
      if (outcome === null) continue;
      started += 1;
      expectNothingSavedLost(outcome, `seed ${seed}`);
      expect(outcome.foundAfterRecovery).toEqual(outcome.found);
    }
    expect(started).toBeGreaterThan(seeds / 2);
  });
});

describe('a sync that fails', () => {
  test(`at any of ${failingSyncs} points costs nothing of a run that ends cleanly`, async () => {
    for (let failing = 1; failing <= failingSyncs; failing += 1) {
      const time = createManualTime();
      const random = createRandom(failing);
      let syncs = 0;
      // The first two make header and folder safe: without them no run begins.
      const failSync = () => {
        syncs += 1;
        return syncs === failing + 2;
      };
      const disk = createPowerLossDisk({ ...soundDisk, failSync }, time.scheduler);
      const recorder = await start(disk.files, time);
      if (recorder === null) expect.fail('The run begins.');
      const written: RunInput[] = [];
      for (let second = 1; syncs < failing + 4; second += 1) {
        const body = someBody(random, second, second);
        written.push(...inputsOfRecord({ body }));
        recorder.append(body, second, body.kind === 'mark' ? 'now' : 'soon');
        await time.pass(1);
      }
      expect(await recorder.close()).toEqual({ ok: true, value: undefined });
      expect(await recordedIn(disk.losePower(random.fork('loss')))).toEqual(written);
    }
  });
});
