import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { expect, onTestFinished, test } from 'vitest';
import { lockFolder, type Scheduler, systemScheduler } from '#main';
import { raiseLifeSign } from '../../../main/run-library/life-sign.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** Timers a hundred times as fast, so that doubtful owners are watched for a moment only. */
const hurried: Scheduler = {
  every: (periodS, act) => systemScheduler.every(periodS / 100, act),
  after: (delayS, act) => systemScheduler.after(delayS / 100, act),
};

async function leaveLock(folder: string, pid: number, agedS: number): Promise<void> {
  const file = path.join(folder, 'in-use.lock');
  await writeFile(file, JSON.stringify({ nonce: 'left-behind', pid, host: hostname() }));
  const then = new Date(Date.now() - agedS * 1000);
  await utimes(file, then, then);
}

/** A program of its own that has the folder. */
async function startOwner(folder: string): Promise<ChildProcess> {
  const program = `
    import { lockFolder } from ${JSON.stringify(new URL('../../../main/run-library/folder-lock.ts', import.meta.url).href)};
    import { systemScheduler } from ${JSON.stringify(new URL('../../../main/clock/index.ts', import.meta.url).href)};
    const lock = await lockFolder(${JSON.stringify(folder)}, systemScheduler);
    console.log(lock?.isHeld());
    setInterval(() => {}, 1000);`;
  const owner = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', program], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void owner.kill('SIGKILL'));
  const [said] = await once(owner.stdout, 'data');
  expect(String(said).trim()).toBe('true');
  return owner;
}

/** Real ones, of the hurried timers. */
const someBeats = () => new Promise((resolve) => setTimeout(resolve, 300));

async function endedProcess(): Promise<number> {
  const child = spawn(process.execPath, ['-e', '']);
  await new Promise((resolve) => child.once('close', resolve));
  return child.pid ?? 0;
}

test('one instance has the folder at a time, and the next one after it let go', async () => {
  const folder = await temporaryFolder();
  const first = await lockFolder(folder, hurried);
  expect(first?.isHeld()).toBe(true);
  expect(await lockFolder(folder, hurried)).toBeNull();
  await first?.release();
  expect(first?.isHeld()).toBe(false);
  const second = await lockFolder(folder, hurried);
  expect(second?.isHeld()).toBe(true);
  await second?.release();
  expect(await readdir(folder)).toEqual([]);
});

test('of many that ask at once exactly one gets it', async () => {
  const folder = await temporaryFolder();
  await leaveLock(folder, await endedProcess(), 1);
  const locks = await Promise.all(Array.from({ length: 12 }, () => lockFolder(folder, hurried)));
  const held = locks.filter((lock) => lock?.isHeld());
  expect(held).toHaveLength(1);
  await held[0]?.release();
});

test('a lock left by a process that is gone is taken over', async () => {
  const folder = await temporaryFolder();
  await leaveLock(folder, await endedProcess(), 1);
  const lock = await lockFolder(folder, hurried);
  expect(lock?.isHeld()).toBe(true);
  await lock?.release();
});

test('a lock whose number went to another process, and which nobody refreshes, is taken over', async () => {
  const folder = await temporaryFolder();
  await leaveLock(folder, process.pid, 3600);
  const lock = await lockFolder(folder, hurried);
  expect(lock?.isHeld()).toBe(true);
  await lock?.release();
});

test('an owner on another computer that slept and is refreshing again keeps its lock', async () => {
  const folder = await temporaryFolder();
  const file = path.join(folder, 'in-use.lock');
  await writeFile(file, JSON.stringify({ nonce: 'far away', pid: 1, host: 'another-bench' }));
  await utimes(file, new Date(0), new Date(0));
  // Slow enough to see a beat of the owner.
  const after: Scheduler['after'] = (delayS, act) => {
    void utimes(file, new Date(), new Date());
    return systemScheduler.after(delayS / 10, act);
  };
  expect(await lockFolder(folder, { ...hurried, after })).toBeNull();
});

test('a program that stands still keeps its lock however long, and leaves it when it is killed', async () => {
  const folder = await temporaryFolder();
  const owner = await startOwner(folder);
  owner.kill('SIGSTOP');
  const file = path.join(folder, 'in-use.lock');
  await utimes(file, new Date(0), new Date(0));
  expect(await lockFolder(folder, hurried)).toBeNull();
  owner.kill('SIGKILL');
  await once(owner, 'close');
  const next = await lockFolder(folder, hurried);
  expect(next?.isHeld()).toBe(true);
  await next?.release();
});

test('an owner whose lock was taken over notices and lets the new one be', async () => {
  const folder = await temporaryFolder();
  const owner = await lockFolder(folder, hurried);
  const sign = await raiseLifeSign('left-behind');
  await leaveLock(folder, process.pid, 0);
  await expect.poll(() => owner?.isHeld()).toBe(false);
  await owner?.release();
  sign?.lower();
  expect(await readFile(path.join(folder, 'in-use.lock'), 'utf8')).toContain('left-behind');
});

test('a folder that another has taken is had again once that one is gone', async () => {
  const folder = await temporaryFolder();
  const owner = await lockFolder(folder, hurried);
  const sign = await raiseLifeSign('left-behind');
  await leaveLock(folder, process.pid, 0);
  await expect.poll(() => owner?.isHeld()).toBe(false);
  sign?.lower();
  await expect.poll(() => owner?.isHeld()).toBe(true);
  expect(await lockFolder(folder, hurried)).toBeNull();
  await owner?.release();
  expect(await readdir(folder)).toEqual([]);
});

test.each(['as it was', 'without its lock', 'with a lock cut off in writing'])(
  'a folder that goes away with its drive is had when it is back, %s',
  async (how) => {
    const above = await temporaryFolder();
    const folder = path.join(above, 'stick');
    await mkdir(folder);
    const owner = await lockFolder(folder, hurried);
    await rename(folder, path.join(above, 'pulled-out'));
    await someBeats();
    expect([owner?.isHeld(), await readdir(above)]).toEqual([true, ['pulled-out']]);
    const lock = path.join(above, 'pulled-out', 'in-use.lock');
    if (how === 'without its lock') await rm(lock);
    if (how === 'with a lock cut off in writing') await writeFile(lock, '{"nonce":');
    await rename(path.join(above, 'pulled-out'), folder);
    await someBeats();
    expect([owner?.isHeld(), await lockFolder(folder, hurried)]).toEqual([true, null]);
    await owner?.release();
    expect(await readdir(folder)).toEqual([]);
  },
);

test('a timer is never handed a promise that nobody looks at', async () => {
  const folder = await temporaryFolder();
  const beats: (() => unknown)[] = [];
  const every: Scheduler['every'] = (_, act) => {
    beats.push(act);
    return () => {};
  };
  const lock = await lockFolder(folder, { ...hurried, every });
  expect(beats.map((beat) => beat())).toEqual([undefined]);
  await lock?.release();
});

async function leaveFar(folder: string, agedS: number): Promise<void> {
  const file = path.join(folder, 'in-use.lock');
  await writeFile(file, JSON.stringify({ nonce: 'far away', pid: 1, host: 'another-bench' }));
  const then = new Date(Date.now() - agedS * 1000);
  await utimes(file, then, then);
}

/** Notes what is waited for, and waits for none of it. */
function impatient() {
  const waitedS: number[] = [];
  const after: Scheduler['after'] = (delayS, act) => {
    waitedS.push(delayS);
    return hurried.after(0, act);
  };
  return { waitedS, scheduler: { ...hurried, after } };
}

test('an owner on another computer that beat a moment ago is not waited for', async () => {
  const folder = await temporaryFolder();
  await leaveFar(folder, 0);
  const { waitedS, scheduler } = impatient();
  expect([await lockFolder(folder, scheduler), waitedS]).toEqual([null, []]);
});

test('an owner on another computer that has long been silent is watched for longer than a beat, and then succeeded', async () => {
  const folder = await temporaryFolder();
  await leaveFar(folder, 3600);
  const { waitedS, scheduler } = impatient();
  const lock = await lockFolder(folder, scheduler);
  expect(lock?.isHeld()).toBe(true);
  expect(waitedS).toHaveLength(1);
  const beats: number[] = [];
  const every: Scheduler['every'] = (periodS) => {
    beats.push(periodS);
    return () => {};
  };
  await lock?.release();
  await (await lockFolder(folder, { ...hurried, every }))?.release();
  expect(waitedS[0]).toBeGreaterThan(beats[0] ?? Number.POSITIVE_INFINITY);
});

test('a lock that says nothing readable, as a cut-off write leaves it, is taken over', async () => {
  const file = (folder: string) => path.join(folder, 'in-use.lock');
  for (const left of ['', '{"nonce":', '{"nonce":7}']) {
    const folder = await temporaryFolder();
    await writeFile(file(folder), left);
    const lock = await lockFolder(folder, hurried);
    expect(lock?.isHeld()).toBe(true);
    const owner = JSON.parse(await readFile(file(folder), 'utf8'));
    expect(owner).toEqual({ nonce: expect.any(String), pid: process.pid, host: hostname() });
    await lock?.release();
    expect(await readdir(folder)).toEqual([]);
  }
});

test('a folder that cannot be written is not had, and no draft is left in one that is had by another', async () => {
  const folder = await temporaryFolder();
  expect(await lockFolder(path.join(folder, 'nowhere'), hurried)).toBeNull();
  const first = await lockFolder(folder, hurried);
  expect(await lockFolder(folder, hurried)).toBeNull();
  expect(await readdir(folder)).toEqual(['in-use.lock']);
  await first?.release();
});

test('each beat moves the time of the lock, so that another computer sees its owner alive; after the end none does', async () => {
  const folder = await temporaryFolder();
  const file = path.join(folder, 'in-use.lock');
  let stopped = 0;
  const beats: (() => void)[] = [];
  const every: Scheduler['every'] = (_, act) => {
    beats.push(act);
    return () => {
      stopped += 1;
    };
  };
  const lock = await lockFolder(folder, { ...hurried, every });
  const long = new Date(Date.now() - 3_600_000);
  await utimes(file, long, long);
  for (const beat of beats) beat();
  await expect.poll(async () => (await stat(file)).mtimeMs).toBeGreaterThan(long.getTime() + 1000);
  expect([lock?.isHeld(), stopped]).toEqual([true, 0]);
  await lock?.release();
  expect(stopped).toBe(1);
});
