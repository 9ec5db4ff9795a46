import { setImmediate } from 'node:timers/promises';
import { Zip, ZipPassThrough } from 'fflate';
import { DeflatedFile } from './deflated-file.ts';

/** One file of an archive; its bytes may come in pieces. */
export interface ZipEntry {
  readonly path: string;
  readonly content: Iterable<Uint8Array | string> | AsyncIterable<Uint8Array | string>;
  /** Already compressed, like PNG: stored as it is. */
  readonly stored?: boolean;
}

/** The dates of a ZIP file begin here. */
const firstZipMs = Date.UTC(1980, 0, 2);

/**
 * A ZIP archive in pieces as its entries arrive: memory stays at some pieces, however long they are. Gives way to
 * whatever else runs between pieces.
 */
export async function* zipStream(
  entries: Iterable<ZipEntry> | AsyncIterable<ZipEntry>,
  modifiedMs: number,
): AsyncGenerator<Uint8Array> {
  const encoder = new TextEncoder();
  let ready: Uint8Array[] = [];
  let problem: Error | null = null;
  const zip = new Zip((error, chunk) => {
    if (error !== null) problem = error;
    else ready.push(chunk);
  });
  const take = (): readonly Uint8Array[] => {
    if (problem !== null) throw problem;
    const taken = ready;
    ready = [];
    return taken;
  };
  for await (const { path, content, stored } of entries) {
    const file = stored ? new ZipPassThrough(path) : new DeflatedFile(path);
    file.mtime = Math.max(firstZipMs, modifiedMs);
    zip.add(file);
    for await (const piece of content) {
      file.push(typeof piece === 'string' ? encoder.encode(piece) : piece);
      if (file instanceof DeflatedFile) await file.settled(false);
      yield* take();
      await setImmediate();
    }
    file.push(new Uint8Array(), true);
    if (file instanceof DeflatedFile) await file.settled(true);
    yield* take();
  }
  zip.end();
  yield* take();
}
