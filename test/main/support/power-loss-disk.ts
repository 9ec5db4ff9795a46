import path from 'node:path';
import type { AppendFile, FileLayer, FileProblem, Scheduler } from '#main';
import { fail, type Result, succeed } from '#shared-core';
import type { Random } from '../../../shared-core/random/create-random.ts';
import { createGrowingBytes, type GrowingBytes } from './growing-bytes.ts';

/** What a disk is asked: to be looked at, to change a name or a length, to take bytes, to make them last. */
export type DiskAct = 'look' | 'change' | 'write' | 'sync';

/** What the disk does to the next sync or write; asked once for each. */
export interface DiskFaults {
  readonly failSync: () => boolean;
  /** Bytes that a write of that length takes; null when the write fails outright. */
  readonly takeBytes: (length: number) => number | null;
  readonly syncTakesS: () => number;
  /** What an opening or a change of names is refused with; null when it is not. */
  readonly refuse?: () => FileProblem['kind'] | null;
  /** Nothing is there but what the system keeps elsewhere: a stick that was pulled out, a share that is gone. */
  readonly isAway?: () => boolean;
  /** What of it is held, as long as this is not over; null where nothing is. */
  readonly held?: (act: DiskAct) => Promise<void> | null;
}

export const soundDisk: DiskFaults = {
  failSync: () => false,
  takeBytes: (length) => length,
  syncTakesS: () => 0,
};

interface Inode {
  /** What programs read: the page cache. */
  readonly current: GrowingBytes;
  /** What is on the platter; pages of a failed sync count as clean and stand here as zeros. */
  durable: GrowingBytes;
  /** What the system tells of it from outside: whether it is another file, and how often it was written to. */
  readonly told: { readonly serial: number; changes: number };
}

interface Names {
  readonly current: Map<string, Inode>;
  readonly durable: Map<string, Inode>;
  /** Claimed, whether anything is in them or not. */
  readonly folders: Set<string>;
  /** Folders that were given another name, and no sync has made it last. */
  moves: { readonly from: string; readonly to: string }[];
  /** How many folders were made for what nobody needs for long. */
  temporary: number;
  /** How many files were made. */
  made: number;
  /** Files that were opened before the disk went away, or its power, are open no more. */
  openedSince: number;
}

const sectorBytes = 512;
/** On another disk. */
const temporaryFolder = '/tmp/';
const isTemporary = (at: string) => at.startsWith(temporaryFolder);

/**
 * A disk with a page cache that loses power. Until its sync, a file's bytes may be there or not,
 * sector by sector, zeroed or garbled; until its folder's sync, a name may be there or not.
 * After a failed sync the system forgets the dirty pages and calls them clean.
 */
export interface PowerLossDisk {
  readonly files: FileLayer;
  /** Its files without its faults, for whoever looks at it in another computer. */
  readonly elsewhere: FileLayer;
  /** What is found after the power came back. */
  losePower(random: Random): FileLayer;
  /** The same for this very disk, which goes on with its faults; files that were open are open no more. */
  cutPower(random: Random): void;
  /** It goes away: files that were open are open no more, and of a stick is lost what it had not taken. */
  disconnect(random: Random | null): void;
}

export function createPowerLossDisk(faults: DiskFaults, scheduler: Scheduler): PowerLossDisk {
  const disk: Names = {
    current: new Map(),
    durable: new Map(),
    folders: new Set(),
    moves: [],
    temporary: 0,
    made: 0,
    openedSince: 0,
  };
  const { current, durable } = disk;
  const surviving = (random: Random, isOnIt: (name: string) => boolean = () => true) => {
    const found = new Map<string, Inode>();
    // A folder is under its old name or under its new one, and all that is in it with it.
    for (const { from, to } of disk.moves.splice(0).reverse()) {
      if (random.uniform() < 0.5) moveNames(durable, from, to);
      else moveNames(current, to, from);
    }
    for (const name of new Set([...current.keys(), ...durable.keys()])) {
      const before = durable.get(name);
      const after = current.get(name);
      const inode = before === after || random.uniform() < 0.5 ? before : after;
      if (!isOnIt(name)) {
        if (after !== undefined) found.set(name, after);
        continue;
      }
      if (inode === undefined) continue;
      const bytes = survive(inode, random);
      const told = { ...inode.told };
      const kept = { current: createGrowingBytes(bytes), durable: createGrowingBytes(bytes), told };
      found.set(name, kept);
    }
    return found;
  };
  function keepOnly(found: ReadonlyMap<string, Inode>): void {
    disk.folders.clear();
    disk.openedSince += 1;
    for (const names of [current, durable]) {
      names.clear();
      for (const [name, inode] of found) names.set(name, inode);
    }
  }

  return {
    files: fileLayer(disk, faults, scheduler),
    elsewhere: fileLayer(disk, soundDisk, scheduler),
    losePower(random) {
      const found = surviving(random);
      const durable = new Map(found);
      const left = { ...disk, current: found, durable, folders: new Set<string>(), moves: [] };
      return fileLayer({ ...left, openedSince: 0 }, soundDisk, scheduler);
    },
    cutPower: (random) => keepOnly(surviving(random)),
    disconnect(random) {
      disk.openedSince += 1;
      if (random !== null) keepOnly(surviving(random, (name) => !isTemporary(name)));
    },
  };
}

/** The bytes of a file after the loss: the synced ones, and of the others whatever happened. */
function survive({ current, durable }: Inode, random: Random): Uint8Array {
  const unsynced = current.length() - durable.length();
  const length = durable.length() + Math.floor(random.uniform() * (unsynced + 1));
  const bytes = new Uint8Array(length);
  bytes.set(durable.slice(0, length));
  for (let from = durable.length(); from < length; ) {
    const fate = random.uniform();
    const sectorEnd = Math.min(length, (Math.floor(from / sectorBytes) + 1) * sectorBytes);
    if (fate < 0.4) bytes.set(current.slice(from, sectorEnd), from);
    else if (fate >= 0.7) {
      for (let at = from; at < sectorEnd; at += 1) bytes[at] = Math.floor(random.uniform() * 256);
    }
    from = sectorEnd;
  }
  return bytes;
}

/** Gives all that stands under a folder's name another. */
function moveNames(names: Map<string, Inode>, from: string, to: string): void {
  for (const [name, inode] of [...names]) {
    if (!name.startsWith(`${from}/`)) continue;
    names.delete(name);
    names.set(`${to}${name.slice(from.length)}`, inode);
  }
}

function fileLayer(disk: Names, faults: DiskFaults, scheduler: Scheduler): FileLayer {
  const { current, durable, folders } = disk;
  const problem = (kind: FileProblem['kind'], at: string) =>
    fail({ kind, path: at, message: `simulated: ${kind}` } as const);

  function appendFile(inode: Inode, at: string): AppendFile {
    const { openedSince } = disk;
    const isOpen = () => openedSince === disk.openedSince && !isAway(at);
    /** Bytes on their way, in order; null while none are. */
    let onTheirWay: Promise<void> | null = null;
    /** What follows bytes that were not taken would stand in the wrong place. */
    let refused: ReturnType<typeof problem> | null = null;

    function take(bytes: Uint8Array): void {
      if (refused !== null) return;
      const taken = isOpen() ? faults.takeBytes(bytes.length) : null;
      if (taken !== bytes.length) refused = problem(isOpen() ? 'full' : 'failed', at);
      if (taken === null) return;
      inode.current.append(bytes.subarray(0, taken));
      inode.told.changes += 1;
    }

    return {
      write(bytes) {
        if (refused !== null) return refused;
        const held = onTheirWay ?? faults.held?.('write') ?? null;
        if (held === null) {
          take(bytes);
          return refused ?? succeed(bytes.length);
        }
        const arrived = held.then(() => {
          take(bytes);
          if (onTheirWay === arrived) onTheirWay = null;
        });
        onTheirWay = arrived;
        return succeed(bytes.length);
      },
      async sync() {
        await onTheirWay;
        await faults.held?.('sync');
        if (refused !== null) return refused;
        const length = inode.current.length();
        const fails = faults.failSync();
        const takesS = faults.syncTakesS();
        if (takesS > 0) await new Promise<void>((done) => scheduler.after(takesS, done));
        if (!isOpen()) return problem('failed', at);
        const dirty = inode.current.slice(inode.durable.length(), length);
        inode.durable.append(fails ? new Uint8Array(dirty.length) : dirty);
        return fails ? problem('failed', at) : succeed(undefined);
      },
      close: async () => undefined,
    };
  }

  const isAway = (at: string) => faults.isAway?.() === true && !isTemporary(at);

  /** What is refused whatever it is. */
  function refusal(at: string) {
    if (isAway(at)) return problem('missing', at);
    const refused = faults.refuse?.() ?? null;
    return refused === null ? null : problem(refused, at);
  }

  function isFolder(at: string): boolean {
    return folders.has(at) || [...current.keys()].some((name) => name.startsWith(`${at}/`));
  }

  function find<T>(at: string, act: (inode: Inode) => T): Result<T, FileProblem> {
    const inode = isAway(at) ? undefined : current.get(at);
    return inode === undefined ? problem('missing', at) : succeed(act(inode));
  }

  const layer: FileLayer = {
    makeFolder: async (at) => (isAway(at) ? problem('missing', at) : succeed(undefined)),
    async claimFolder(folder) {
      if (isAway(folder)) return problem('missing', folder);
      if (isFolder(folder)) return problem('exists', folder);
      folders.add(folder);
      return succeed(undefined);
    },
    async makeTemporaryFolder(name) {
      disk.temporary += 1;
      return succeed(`${temporaryFolder}${name}-${disk.temporary}`);
    },
    async createAppend(at) {
      if (!isAway(at) && current.has(at)) return problem('exists', at);
      const refused = refusal(at);
      if (refused !== null) return refused;
      disk.made += 1;
      const told = { serial: disk.made, changes: 0 };
      const inode: Inode = { current: createGrowingBytes(), durable: createGrowingBytes(), told };
      current.set(at, inode);
      return succeed(appendFile(inode, at));
    },
    async openAppend(at) {
      return refusal(at) ?? find(at, (inode) => appendFile(inode, at));
    },
    async syncFolder(folder) {
      if (isAway(folder)) return problem('missing', folder);
      if (faults.failSync()) return problem('failed', folder);
      disk.moves = disk.moves.filter(({ from, to }) => {
        if (path.dirname(from) !== folder && path.dirname(to) !== folder) return true;
        moveNames(durable, from, to);
        return false;
      });
      for (const name of new Set([...current.keys(), ...durable.keys()])) {
        if (path.dirname(name) !== folder) continue;
        const inode = current.get(name);
        if (inode === undefined) durable.delete(name);
        else durable.set(name, inode);
      }
      return succeed(undefined);
    },
    async list(folder) {
      if (isAway(folder)) return problem('missing', folder);
      const names = new Map<string, boolean>();
      for (const claimed of folders) {
        if (path.dirname(claimed) === folder) names.set(path.basename(claimed), true);
      }
      for (const name of current.keys()) {
        if (!name.startsWith(`${folder}/`)) continue;
        const [first = '', ...rest] = name.slice(folder.length + 1).split('/');
        names.set(first, rest.length > 0);
      }
      return succeed([...names].map(([name, isFolder]) => ({ name, isFolder })));
    },
    sizeBytes: async (at) => find(at, (inode) => inode.current.length()),
    stateOf: async (at) =>
      find(at, ({ current: { length }, told: { serial, changes } }) => {
        return { bytes: length(), changed: `${serial} ${changes}` };
      }),
    read: async (at, offset, length) =>
      find(at, (inode) => inode.current.slice(offset, offset + length)),
    async rename(from, to) {
      const inode = current.get(from);
      if (inode === undefined && !isFolder(from)) return problem('missing', from);
      const refused = refusal(from);
      if (refused !== null) return refused;
      if (inode === undefined) {
        moveNames(current, from, to);
        if (folders.delete(from)) folders.add(to);
        disk.moves.push({ from, to });
        return succeed(undefined);
      }
      current.delete(from);
      current.set(to, inode);
      return succeed(undefined);
    },
    async remove(at) {
      const refused = refusal(at);
      if (refused !== null) return refused;
      folders.delete(at);
      for (const name of current.keys()) {
        if (name === at || name.startsWith(`${at}/`)) current.delete(name);
      }
      return succeed(undefined);
    },
    async truncate(at, length) {
      const refused = refusal(at);
      if (refused !== null) return refused;
      return find(at, (inode) => {
        inode.current.cut(length);
        inode.told.changes += 1;
        inode.durable = createGrowingBytes(inode.current.slice());
      });
    },
    freeBytes: async (at) => (isAway(at) ? problem('missing', at) : succeed(1e12)),
  };
  return faults.held === undefined ? layer : answeringLate(layer, faults.held);
}

/** The same disk, each act of which is begun once it is not held any more. */
function answeringLate(disk: FileLayer, held: NonNullable<DiskFaults['held']>): FileLayer {
  const once = <A extends readonly unknown[], R>(
    act: DiskAct,
    ask: (...given: A) => Promise<R>,
  ): ((...given: A) => Promise<R>) => {
    return async (...given) => {
      await held(act);
      return ask(...given);
    };
  };
  return {
    makeFolder: once('change', disk.makeFolder),
    claimFolder: once('change', disk.claimFolder),
    makeTemporaryFolder: disk.makeTemporaryFolder,
    createAppend: once('change', disk.createAppend),
    openAppend: once('change', disk.openAppend),
    syncFolder: once('sync', disk.syncFolder),
    list: once('look', disk.list),
    sizeBytes: once('look', disk.sizeBytes),
    stateOf: once('look', disk.stateOf),
    read: once('look', disk.read),
    rename: once('change', disk.rename),
    remove: once('change', disk.remove),
    truncate: once('change', disk.truncate),
    freeBytes: once('look', disk.freeBytes),
  };
}
