import { close, constants, fdatasync, open as openFile, write } from 'node:fs';
import { mkdir, mkdtemp, open, readdir, rename, rm, stat, statfs } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { fail, type Result, succeed } from '#shared-core';
import type { AppendFile, FileLayer } from './file-layer.ts';
import { type FileProblem, fileProblem } from './file-problem.ts';

const { O_APPEND, O_CREAT, O_EXCL, O_RDONLY, O_WRONLY } = constants;
/** Whoever puts a pipe where a file belongs would otherwise keep a thread, and so the end of the program, waiting for ever. */
const O_NONBLOCK = constants.O_NONBLOCK ?? 0;
const syncData = promisify(fdatasync);
const openDescriptor = promisify(openFile);
const closeFile = promisify(close);
const writeSome = promisify(write);
/** What pupils did is nobody else's to read on a shared computer; Windows keeps documents apart by itself. */
const ownOnly = { folder: 0o700, file: 0o600 } as const;

/** The computer's own file system. */
export const nodeFileLayer: FileLayer = {
  makeFolder: (path) =>
    attempt(path, async () => {
      await mkdir(path, { recursive: true, mode: ownOnly.folder });
    }),
  claimFolder: (path) => attempt(path, () => mkdir(path, { mode: ownOnly.folder })),
  makeTemporaryFolder: (name) => attempt(tmpdir(), () => mkdtemp(join(tmpdir(), `${name}-`))),
  createAppend: (path) => openForAppend(path, O_CREAT | O_EXCL),
  openAppend: (path) => openForAppend(path, 0),
  syncFolder: (path) =>
    attempt(path, async () => {
      // Windows cannot open a folder for this; its file system journals names by itself.
      if (process.platform === 'win32') return;
      const folder = await open(path, 'r');
      try {
        await folder.sync();
      } finally {
        await folder.close();
      }
    }),
  list: (path) =>
    attempt(path, async () => {
      const entries = await readdir(path, { withFileTypes: true });
      return entries.map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }));
    }),
  sizeBytes: (path) => attempt(path, async () => (await stat(path)).size),
  stateOf: (path) =>
    attempt(path, async () => {
      const { size, mtimeNs, ctimeNs } = await stat(path, { bigint: true });
      // The first can be set by whoever copies a file; the second is the system's own.
      return { bytes: Number(size), changed: `${mtimeNs} ${ctimeNs}` };
    }),
  read: (path, offset, length) =>
    attempt(path, async () => {
      const file = await open(path, O_RDONLY | O_NONBLOCK);
      try {
        const { buffer, bytesRead } = await file.read(Buffer.alloc(length), 0, length, offset);
        return buffer.subarray(0, bytesRead);
      } finally {
        await file.close();
      }
    }),
  rename: (from, to) => attempt(from, () => rename(from, to)),
  remove: (path) => attempt(path, () => rm(path, { recursive: true })),
  truncate: (path, length) =>
    attempt(path, async () => {
      const file = await open(path, 'r+');
      try {
        await file.truncate(length);
        await file.sync();
      } finally {
        await file.close();
      }
    }),
  freeBytes: (path) =>
    attempt(path, async () => {
      const { bavail, bsize } = await statfs(path);
      return bavail * bsize;
    }),
};

function openForAppend(path: string, extra: number): Promise<Result<AppendFile, FileProblem>> {
  const flags = O_WRONLY | O_APPEND | O_NONBLOCK | extra;
  return attempt(path, async () =>
    appendFile(await openDescriptor(path, flags, ownOnly.file), path),
  );
}

function appendFile(descriptor: number, path: string): AppendFile {
  // The system gives the number of a closed file to the next one that is opened.
  let isClosed = false;
  /** Waits for the write under way; what comes meanwhile goes out together after it. */
  let gathering: Uint8Array[] | null = null;
  let handedOver = Promise.resolve();
  let refused: FileProblem | null = null;
  const closed = (): Result<never, FileProblem> =>
    fail({ kind: 'failed', path, message: 'The file is closed.' });

  async function handOver(pieces: readonly Uint8Array[]): Promise<void> {
    // What follows a piece that was not taken would stand in the wrong place.
    if (refused !== null) return;
    const written = await attempt(path, () => writeWhole(descriptor, Buffer.concat(pieces)));
    if (!written.ok) refused = written.error;
  }

  return {
    write(bytes) {
      if (isClosed) return closed();
      if (refused !== null) return fail(refused);
      if (gathering === null) {
        const pieces: Uint8Array[] = [];
        gathering = pieces;
        handedOver = handedOver.then(() => {
          gathering = null;
          return handOver(pieces);
        });
      }
      gathering.push(bytes);
      return succeed(bytes.length);
    },
    async sync() {
      if (isClosed) return closed();
      await handedOver;
      return refused === null ? attempt(path, () => syncData(descriptor)) : fail(refused);
    },
    async close() {
      if (isClosed) return;
      isClosed = true;
      await handedOver;
      // Nothing that was synced depends on it, and there is nobody to tell.
      await attempt(path, () => closeFile(descriptor));
    },
  };
}

async function writeWhole(descriptor: number, bytes: Buffer): Promise<void> {
  for (let done = 0; done < bytes.length; ) {
    const { bytesWritten } = await writeSome(descriptor, bytes, done);
    if (bytesWritten === 0) throw new Error(`Only ${done} of ${bytes.length} bytes were taken.`);
    done += bytesWritten;
  }
}

async function attempt<T>(path: string, act: () => Promise<T>): Promise<Result<T, FileProblem>> {
  try {
    return succeed(await act());
  } catch (error) {
    return fail(fileProblem(error, path));
  }
}
