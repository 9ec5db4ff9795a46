import { appendFile, cp, readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { type FileLayer, type FileProblem, nodeFileLayer, type ProbeReading } from '#main';
import { defaultRunSettings, fail, type KeptWarm, usualWarmthBand } from '#shared-core';
import { createMinuteInHand } from '../../../main/ferments/minute-in-hand.ts';
import { eventually } from '../../support/eventually.ts';
import { ask, setUpSession, teacher } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

type Bench = Awaited<ReturnType<typeof setUpSession>>;

const band = usualWarmthBand;

async function beginFerment({ session, time }: Bench, name = 'Pear juice'): Promise<string> {
  const { fermentId } = await ask(session, 'ferments/begin', {
    stated: {
      name,
      beganAtIso: new Date(time.clock.wallMs()).toISOString(),
      volumeMl: 1000,
      sugarG: { low: 100, high: 122 },
      wentIn: '1 L of pear juice',
    },
  });
  return fermentId;
}

function send({ probeHub, time }: Bench, value: number, channel = 'ferment'): void {
  const reading: ProbeReading = {
    atS: time.clock.monotonicS(),
    channel,
    value,
    unit: '°C',
    quality: 'good',
  };
  probeHub.send('readings', [reading]);
}

/** Lets minutes pass with a reading every ten seconds; null where the probe says nothing. */
async function pass(bench: Bench, minutes: number, value: number | null, channel?: string) {
  for (let tens = 0; tens < 6 * minutes; tens += 1) {
    if (value !== null) send(bench, value, channel);
    await bench.time.pass(10);
  }
}

async function now({ session }: Bench): Promise<KeptWarm> {
  const { kept } = await ask(session, 'warmth/now', {});
  if (kept === null) throw new Error('Nothing is kept warm.');
  return kept;
}
const standing = async (bench: Bench) => (await now(bench)).now.standing.map(({ alarm }) => alarm);
const minutesOf = async ({ session }: Bench, fermentId: string) =>
  (await ask(session, 'warmth/report', { fermentId })).stretches.reduce(
    (sum, { minutes }) => sum + minutes,
    0,
  );
/** The real disk takes the time it takes. */
/** The minutes on the disk, once there are as many. */
async function minutesOnDisk({ runsFolder }: Bench, atLeast: number): Promise<readonly string[]> {
  return eventually(async () => {
    const lines = (await readFile(await fileIn(runsFolder), 'utf8')).trim().split('\n');
    const minutes = lines.filter((line) => line.includes('"minute"'));
    expect(minutes.length).toBeGreaterThanOrEqual(atLeast);
    return minutes;
  });
}
async function fileIn(folder: string): Promise<string> {
  const [name] = (await readdir(folder)).filter((found) => found.startsWith('warmth-'));
  return path.join(folder, name ?? '');
}

describe('a ferment kept warm under watch', () => {
  test('each minute is on the disk when the next has begun, and windows are told', async () => {
    const bench = await setUpSession();
    const fermentId = await beginFerment(bench);
    const told: (KeptWarm | null)[] = [];
    bench.session.on('warmth', ({ kept }) => told.push(kept));
    await ask(bench.session, 'warmth/keep', { fermentId, band, channel: 'ferment' });
    await pass(bench, 20, 30.5);
    send(bench, 30.5);
    await bench.time.pass(1);
    expect(await minutesOnDisk(bench, 20)).toHaveLength(20);
    expect(await minutesOf(bench, fermentId)).toBe(20);
    expect(told.at(-1)).toMatchObject({
      fermentId,
      name: 'Pear juice',
      now: { temperatureC: 30.5, standing: [] },
      isProbeAtStill: false,
      unsaved: null,
    });
  });

  test('a cold night and a silent probe are called, and a window that comes later hears of them', async () => {
    const bench = await setUpSession();
    const fermentId = await beginFerment(bench);
    await ask(bench.session, 'warmth/keep', { fermentId, band, channel: 'ferment' });
    await pass(bench, 10, 30);
    expect(await standing(bench)).toEqual([]);
    await pass(bench, 35, 22);
    expect(await standing(bench)).toEqual(['cold']);
    await pass(bench, 15, null);
    expect(await standing(bench)).toEqual(['cold', 'unheard']);
    await pass(bench, 15, 30);
    expect(await standing(bench)).toEqual([]);
  });

  test('after an end of the program it goes on by itself, asks for its probe, and lost nothing', async () => {
    const first = await setUpSession();
    const fermentId = await beginFerment(first);
    await ask(first.session, 'warmth/keep', { fermentId, band, channel: 'ferment' });
    await pass(first, 12, 30);
    const { runsFolder } = first;
    await first.session.close();
    // A line that a loss of power tore.
    await appendFile(await fileIn(runsFolder), '{"kind":"minute","atIso":"2025-');
    const again = await setUpSession({ runsFolder });
    await again.probeHub.disconnect();
    await again.time.pass(12 * 60);
    expect((await now(again)).fermentId).toBe(fermentId);
    // It was there when the program started, so nothing was asked for; then the person let go of it.
    expect(again.probeHub.status().source).toBeNull();
    await pass(again, 5, 30);
    expect(await minutesOf(again, fermentId)).toBe(12 + 5);
  });

  test('a disk that is slower than a second is asked for no more than it can take, and then has the latest', async () => {
    let begun = 0;
    let letGo: () => void = () => undefined;
    const slow = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    const bench = await setUpSession({
      faults: {
        async remove(file) {
          if (file.endsWith('.minute.json.part')) {
            begun += 1;
            await slow;
          }
          return nodeFileLayer.remove(file);
        },
      },
    });
    const fermentId = await beginFerment(bench);
    await ask(bench.session, 'warmth/keep', { fermentId, band, channel: 'ferment' });
    for (let second = 1; second <= 40; second += 1) {
      send(bench, 20 + second / 10);
      await bench.time.pass(1);
    }
    // What is there is read first, from a real disk, however fast the seconds fly.
    await eventually(() => expect(begun).toBe(1));
    letGo();
    const underWay = path.join(bench.runsFolder, `warmth-${fermentId}.minute.json`);
    await eventually(async () =>
      expect(JSON.parse(await readFile(underWay, 'utf8'))).toMatchObject({ highC: 24 }),
    );
    expect(begun).toBe(2);
  });

  test('a loss of power in the middle of a minute takes no more than its last second away', async () => {
    const bench = await setUpSession();
    const fermentId = await beginFerment(bench);
    await ask(bench.session, 'warmth/keep', { fermentId, band, channel: 'ferment' });
    await pass(bench, 3, 30);
    for (const value of [31, 32, 33]) {
      send(bench, value);
      await bench.time.pass(1);
    }
    await minutesOnDisk(bench, 3);
    // As the disk is at that moment; nothing is closed.
    const underWay = path.join(bench.runsFolder, `warmth-${fermentId}.minute.json`);
    await eventually(async () =>
      expect(JSON.parse(await readFile(underWay, 'utf8'))).toMatchObject({
        lowC: 31,
        meanC: 32,
        highC: 33,
        readings: 3,
      }),
    );
    const asItWas = await temporaryFolder();
    await cp(bench.runsFolder, asItWas, {
      recursive: true,
      filter: (file) => !path.basename(file).includes('lock'),
    });
    const again = await setUpSession({ runsFolder: asItWas, withoutProbe: true });
    const report = await ask(again.session, 'warmth/report', { fermentId });
    expect(report.stretches.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(4);
    expect(report.stretches.at(-1)?.highC).toBe(33);
    await minutesOnDisk(again, 4);
  });

  test('a minute is gone on with where the program is started again within it', () => {
    const atMs = Date.parse('2025-03-14T10:15:00.000Z');
    const before = createMinuteInHand();
    for (const [at, value] of [
      [0, 30],
      [10_000, 31],
    ] as const) {
      expect(before.take(atMs + at, value)).toBeNull();
    }
    const after = createMinuteInHand(before.soFar());
    expect(after.take(atMs + 50_000, 35)).toBeNull();
    expect(after.endedBy(atMs + 59_999)).toBeNull();
    expect(after.endedBy(atMs + 60_000)).toEqual({
      atIso: '2025-03-14T10:15:00.000Z',
      lowC: 30,
      meanC: 32,
      highC: 35,
      minutes: 1,
    });
    expect(after.soFar()).toBeNull();
  });

  test('a probe that is not there at the start is asked for until it is', async () => {
    const first = await setUpSession();
    const fermentId = await beginFerment(first);
    await ask(first.session, 'warmth/keep', { fermentId, band, channel: 'ferment' });
    await first.session.close();
    const again = await setUpSession({ runsFolder: first.runsFolder, withoutProbe: true });
    await eventually(async () => {
      await again.time.pass(60);
      expect(again.probeHub.status().source).toMatchObject({ path: '/dev/ttyACM0' });
    });
  });

  test('while a run has the same probe in the still, nothing of it is taken for the ferment', async () => {
    const bench = await setUpSession();
    const fermentId = await beginFerment(bench);
    await ask(bench.session, 'warmth/keep', { fermentId, band, channel: 'head' });
    await pass(bench, 5, 30, 'head');
    await ask(bench.session, 'run/start', { settings: defaultRunSettings });
    await pass(bench, 30, 78.3, 'head');
    expect(await now(bench)).toMatchObject({
      isProbeAtStill: true,
      now: { temperatureC: 30, standing: [] },
    });
    await ask(bench.session, 'run/stop', {});
    await pass(bench, 5, 31, 'head');
    expect(await now(bench)).toMatchObject({ isProbeAtStill: false, now: { temperatureC: 31 } });
  });

  test('a disk that takes nothing for a while loses nothing', async () => {
    let isFull = false;
    const unlessFull = (open: FileLayer['openAppend']) => async (file: string) =>
      isFull && path.basename(file).startsWith('warmth-')
        ? fail<FileProblem>({ kind: 'full', path: file, message: 'No space left.' })
        : open(file);
    const bench = await setUpSession({
      faults: {
        openAppend: unlessFull(nodeFileLayer.openAppend),
        createAppend: unlessFull(nodeFileLayer.createAppend),
      },
    });
    const fermentId = await beginFerment(bench);
    await ask(bench.session, 'warmth/keep', { fermentId, band, channel: 'ferment' });
    await pass(bench, 5, 30);
    isFull = true;
    await pass(bench, 5, 30);
    await eventually(async () => expect((await now(bench)).unsaved).toBe('disk-full'));
    isFull = false;
    await pass(bench, 5, 30);
    const minutes = await minutesOnDisk(bench, 14);
    expect(new Set(minutes).size).toBe(minutes.length);
    await eventually(async () => expect((await now(bench)).unsaved).toBeNull());
  });

  test('another ferment takes its place, and one that is left stays as it was', async () => {
    const bench = await setUpSession();
    const pears = await beginFerment(bench);
    await bench.time.pass(2);
    const quinces = await beginFerment(bench, 'Quince juice');
    await ask(bench.session, 'warmth/keep', { fermentId: pears, band, channel: 'ferment' });
    await pass(bench, 5, 30);
    await ask(bench.session, 'warmth/keep', { fermentId: quinces, band, channel: 'ferment' });
    await pass(bench, 3, 28);
    expect((await now(bench)).name).toBe('Quince juice');
    expect(await minutesOf(bench, pears)).toBe(5);
    const left = await ask(bench.session, 'warmth/leave', { fermentId: quinces });
    expect(left).toMatchObject({ isKeptNow: false, keeping: { channel: 'ferment', band } });
    expect(await ask(bench.session, 'warmth/now', {})).toEqual({ kept: null });
  });

  test('what nobody began can’t be kept, and a window that only looks on keeps nothing', async () => {
    const { session } = await setUpSession();
    const body = { fermentId: '20250101T000000Z', band, channel: 'ferment' };
    const missing = await session.handle('warmth/keep', body, teacher);
    expect(missing).toMatchObject({ ok: false, error: { kind: 'request-invalid' } });
    const looking = await session.handle('warmth/keep', body, { mayCommand: false });
    expect(looking).toMatchObject({ ok: false });
  });
});
