import type { FileLayer } from '#main';

/** A program that was killed asks nothing more of the disk, and hears no answer. */
export function whileAlive(files: FileLayer, isAlive: () => boolean): FileLayer {
  const never = new Promise<never>(() => {});
  const gone = { ok: false, error: { kind: 'failed', path: '', message: 'killed' } } as const;
  const open = (made: Awaited<ReturnType<FileLayer['openAppend']>>): typeof made =>
    made.ok
      ? {
          ok: true,
          value: {
            write: (bytes) => (isAlive() ? made.value.write(bytes) : gone),
            sync: () => (isAlive() ? answered(made.value.sync()) : never),
            close: () => made.value.close(),
          },
        }
      : made;
  const answered = async <T>(asked: Promise<T>): Promise<T> => {
    const answer = await asked;
    return isAlive() ? answer : never;
  };
  const ask = <T>(act: () => Promise<T>): Promise<T> => (isAlive() ? answered(act()) : never);
  return {
    makeFolder: (at) => ask(() => files.makeFolder(at)),
    claimFolder: (at) => ask(() => files.claimFolder(at)),
    makeTemporaryFolder: (name) => ask(() => files.makeTemporaryFolder(name)),
    createAppend: (at) => ask(async () => open(await files.createAppend(at))),
    openAppend: (at) => ask(async () => open(await files.openAppend(at))),
    syncFolder: (at) => ask(() => files.syncFolder(at)),
    list: (at) => ask(() => files.list(at)),
    sizeBytes: (at) => ask(() => files.sizeBytes(at)),
    stateOf: (at) => ask(() => files.stateOf(at)),
    read: (at, offset, length) => ask(() => files.read(at, offset, length)),
    rename: (from, to) => ask(() => files.rename(from, to)),
    remove: (at) => ask(() => files.remove(at)),
    truncate: (at, length) => ask(() => files.truncate(at, length)),
    freeBytes: (at) => ask(() => files.freeBytes(at)),
  };
}
