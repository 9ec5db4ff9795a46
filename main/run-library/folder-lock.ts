import { randomUUID } from 'node:crypto';
import { link, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { z } from 'zod';
import type { Scheduler } from '../clock/index.ts';
import { isLifeSignUp, type LifeSign, raiseLifeSign } from './life-sign.ts';

const lockFile = 'in-use.lock';
const heartbeatS = 2;
/** An owner on another computer moves the file's time every 2 s; one that has not for this long may be gone [s]. */
const doubtfulAfterS = 10;

const ownerSchema = z.object({ nonce: z.string(), pid: z.number().int(), host: z.string() });
type Owner = z.infer<typeof ownerSchema>;

/** Says that this process alone records into and tidies a folder. */
export interface FolderLock {
  /** Also while the folder is gone with its drive; not while another has it, and again once that one is gone. */
  readonly isHeld: () => boolean;
  release(): Promise<void>;
}

/**
 * Takes the folder, or answers null when another running instance has it. The file names the owner; that the owner lives is shown
 * by a sign that the operating system takes away with the process. A lock left behind is passed on from its dead owner to one
 * successor: whoever raises that owner's second sign first, and finds the file unchanged after that. By hand, since a lock that goes
 * by a file's age alone is lost when the computer sleeps, and two programs then record into one folder.
 */
export async function lockFolder(folder: string, scheduler: Scheduler): Promise<FolderLock | null> {
  const file = path.join(folder, lockFile);
  const me: Owner = { nonce: randomUUID(), pid: process.pid, host: hostname() };
  const sign = await raiseLifeSign(me.nonce);
  if (sign === null) return null;
  for (let attempt = 0; attempt < 3; attempt += 1) {
    if (await claim(file, me)) return hold(file, me, sign, scheduler);
    const owner = await readOwner(file);
    if (owner !== null && (await isAlive(file, owner, scheduler))) break;
    if (await succeedTo(file, owner, me)) return hold(file, me, sign, scheduler);
  }
  sign.lower();
  return null;
}

/** Puts the whole file there at one stroke, if there is none. */
async function claim(file: string, me: Owner): Promise<boolean> {
  const draft = `${file}.${me.nonce}`;
  try {
    await writeFile(draft, JSON.stringify(me), { mode: 0o600 });
    await link(draft, file);
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    return await claimWithoutLinks(file, me);
  } finally {
    await throwAway(draft);
  }
}

/** A draft that can't be thrown away is gone with its drive. */
async function throwAway(draft: string): Promise<void> {
  await rm(draft, { force: true }).catch(() => undefined);
}

/** For drives whose file system knows no links, such as many sticks. */
async function claimWithoutLinks(file: string, me: Owner): Promise<boolean> {
  try {
    await writeFile(file, JSON.stringify(me), { flag: 'wx', mode: 0o600 });
    return true;
  } catch {
    return false;
  }
}

/** Only the one who holds the turn of this very owner may replace it; a turn that comes late finds another owner. */
async function succeedTo(file: string, dead: Owner | null, me: Owner): Promise<boolean> {
  const turn = await raiseLifeSign(`after ${dead?.nonce ?? file}`);
  if (turn === null) return false;
  const draft = `${file}.${me.nonce}`;
  try {
    if ((await readOwner(file))?.nonce !== dead?.nonce) return false;
    await writeFile(draft, JSON.stringify(me), { mode: 0o600 });
    await rename(draft, file);
    return true;
  } catch {
    await throwAway(draft);
    return false;
  } finally {
    turn.lower();
  }
}

function hold(file: string, me: Owner, sign: LifeSign, scheduler: Scheduler): FolderLock {
  let held = true;
  let isReleased = false;
  let isBeating = false;
  let taking: Promise<boolean> | null = null;

  /** A file that is gone may be gone with its folder, a stick that was pulled out: where it is back, or another folder in its place, it is put there again. */
  async function beat(): Promise<void> {
    const owner = await readOwner(file);
    if (owner?.nonce === me.nonce) {
      held = true;
      await utimes(file, new Date(), new Date());
      return;
    }
    if (owner !== null) held = false;
    if (owner !== null && (await isAlive(file, owner, scheduler))) return;
    if (isReleased) return;
    taking = takeAgain(owner);
    if (await taking) held = true;
  }

  async function takeAgain(before: Owner | null): Promise<boolean> {
    if (before === null && (await claim(file, me))) return true;
    // What can't be read is taken only for what a torn write left of this one's own.
    return (before !== null || held) && (await succeedTo(file, before, me));
  }

  const stop = scheduler.every(heartbeatS, () => {
    if (isBeating) return;
    isBeating = true;
    // A beat that fails is made up for by the next one.
    void beat()
      .catch(() => undefined)
      .finally(() => {
        isBeating = false;
      });
  });
  return {
    isHeld: () => held,
    async release() {
      stop();
      isReleased = true;
      await taking;
      if ((await readOwner(file))?.nonce === me.nonce) await rm(file, { force: true });
      sign.lower();
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
  if (owner.host === hostname()) return isLifeSignUp(owner.nonce);
  const seen = await changedMs(file);
  if (seen === null) return false;
  if (Date.now() - seen < doubtfulAfterS * 1000) return true;
  // The computer over there may just have woken: watch for a beat.
  await new Promise<void>((resolve) => scheduler.after(heartbeatS * 1.5, resolve));
  const later = await changedMs(file);
  return later !== null && later !== seen;
}

async function changedMs(file: string): Promise<number | null> {
  try {
    return (await stat(file)).mtimeMs;
  } catch {
    return null;
  }
}
