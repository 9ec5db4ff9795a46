import { type AppendFile, type FileLayer, type FileProblem, nodeFileLayer } from '#main';
import { fail, succeed } from '#shared-core';

/** What the one operation that fails does: says no, or, where it writes, takes half of what it is given. */
export type Failure = 'refuses' | 'takes half';

/** A real disk on which the operation of that number, from 0, fails; none for a number that is never reached. */
export function failingFiles(failAt: number, failure: Failure = 'refuses') {
  const done: string[] = [];
  let open = 0;

  function isDue(operation: string): boolean {
    done.push(operation);
    return done.length - 1 === failAt;
  }
  const refuse = (path: string) =>
    fail<FileProblem>({ kind: 'failed', path, message: `simulated: ${done.at(-1)}` });

  function watched(file: AppendFile, path: string): AppendFile {
    open += 1;
    let isOpen = true;
    return {
      write(bytes) {
        if (!isDue('write')) return file.write(bytes);
        return failure === 'refuses'
          ? refuse(path)
          : file.write(bytes.subarray(0, bytes.length >> 1));
      },
      sync: async () => (isDue('sync') ? refuse(path) : file.sync()),
      async close() {
        if (isOpen) open -= 1;
        isOpen = false;
        await file.close();
      },
    };
  }

  const real = nodeFileLayer;
  const files: FileLayer = {
    makeFolder: async (at) => (isDue('makeFolder') ? refuse(at) : real.makeFolder(at)),
    claimFolder: async (at) => (isDue('claimFolder') ? refuse(at) : real.claimFolder(at)),
    makeTemporaryFolder: async (name) =>
      isDue('makeTemporaryFolder') ? refuse(name) : real.makeTemporaryFolder(name),
    async createAppend(at) {
      if (isDue('createAppend')) return refuse(at);
      const opened = await real.createAppend(at);
      return opened.ok ? succeed(watched(opened.value, at)) : opened;
    },
    async openAppend(at) {
      if (isDue('openAppend')) return refuse(at);
      const opened = await real.openAppend(at);
      return opened.ok ? succeed(watched(opened.value, at)) : opened;
    },
    syncFolder: async (at) => (isDue('syncFolder') ? refuse(at) : real.syncFolder(at)),
    list: async (at) => (isDue('list') ? refuse(at) : real.list(at)),
    sizeBytes: async (at) => (isDue('sizeBytes') ? refuse(at) : real.sizeBytes(at)),
    stateOf: async (at) => (isDue('stateOf') ? refuse(at) : real.stateOf(at)),
    read: async (at, offset, length) =>
      isDue('read') ? refuse(at) : real.read(at, offset, length),
    rename: async (from, to) => (isDue('rename') ? refuse(from) : real.rename(from, to)),
    remove: async (at) => (isDue('remove') ? refuse(at) : real.remove(at)),
    truncate: async (at, length) => (isDue('truncate') ? refuse(at) : real.truncate(at, length)),
    freeBytes: async (at) => (isDue('freeBytes') ? refuse(at) : real.freeBytes(at)),
  };
  return { files, done: () => done, stillOpen: () => open };
}
