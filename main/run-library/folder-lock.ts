import { randomUUID } from 'node:crypto';
import { readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { z } from 'zod';
import type { Scheduler } from '../clock/index.ts';

const lockFile = 'in-use.lock';
const heartbeatS = 2;
/** A live owner moves the file's time every 2 s; one that has not for this long may be gone [s]. */
const doubtfulAfterS = 10;

const ownerSchema = z.object({ nonce: z.string(), pid: z.number().int(), host: z.string() });
type Owner = z.infer<typeof ownerSchema>;

/** Says that this process alone records into and tidies a folder. */
export interface FolderLock {
  readonly isHeld: () => boolean;
  release(): Promise<void>;
}

/**
 * Takes the folder, or answers null when another running instance has it. A lock left behind by a
 * process that is gone is taken over. Node has no file locks of the operating system, so the owner
 * shows that it lives by its process number and by a time stamp that it keeps moving.
 */
export async function lockFolder(folder: string, scheduler: Scheduler): Promise<FolderLock | null> {
  const file = path.join(folder, lockFile);
  const me: Owner = { nonce: randomUUID(), pid: process.pid, host: hostname() };
  for (let attempt = 0; attempt < 3; attempt += 1) {
    if (await claim(file, me)) return hold(file, me, scheduler);
    const owner = await readOwner(file);
    if (owner !== null && (await isAlive(file, owner, scheduler))) return null;
    await clearAway(file, owner);
  }
  return null;
}

async function claim(file: string, me: Owner): Promise<boolean> {
  try {
    await writeFile(file, JSON.stringify(me), { flag: 'wx' });
  } catch {
    return false;
  }
  return (await readOwner(file))?.nonce === me.nonce;
}

function hold(file: string, me: Owner, scheduler: Scheduler): FolderLock {
  let held = true;
  async function beat(): Promise<void> {
    if ((await readOwner(file))?.nonce !== me.nonce) held = false;
    else await utimes(file, new Date(), new Date());
  }
  // A beat that fails is made up for by the next one.
  const stop = scheduler.every(heartbeatS, () => void beat().catch(() => undefined));
  return {
    isHeld: () => held,
    async release() {
      stop();
      if ((await readOwner(file))?.nonce === me.nonce) await rm(file, { force: true });
      held = false;
    },
  };
}

async function readOwner(file: string): Promise<Owner | null> {
  try {
    return ownerSchema.parse(JSON.parse(await readFile(file, 'utf8')));
  } catch {
    return null;
  }
}

async function isAlive(file: string, owner: Owner, scheduler: Scheduler): Promise<boolean> {
  if (owner.host === hostname() && !processExists(owner.pid)) return false;
  const seen = await changedMs(file);
  if (seen === null) return false;
  if (Date.now() - seen < doubtfulAfterS * 1000) return true;
  // The number may have gone to another process since, or the computer just woke: watch for a beat.
  await new Promise<void>((resolve) => scheduler.after(heartbeatS * 1.5, resolve));
  const later = await changedMs(file);
  return later !== null && later !== seen;
}

function processExists(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // "Not permitted" means it is there and belongs to somebody else.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

async function changedMs(file: string): Promise<number | null> {
  try {
    return (await stat(file)).mtimeMs;
  } catch {
    return null;
  }
}

/** Moves the stale lock away, and back if somebody else took it over in the meantime. */
async function clearAway(file: string, stale: Owner | null): Promise<void> {
  const aside = `${file}.${randomUUID()}`;
  try {
    await rename(file, aside);
    const moved = await readOwner(aside);
    if (moved !== null && moved.nonce !== stale?.nonce) await rename(aside, file);
    else await rm(aside, { force: true });
  } catch {
    // Somebody else cleared it first.
  }
}
