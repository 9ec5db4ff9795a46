import path from 'node:path';
import { contractLimits, type EventBody, fail, type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../../file-layer/index.ts';
import type { PackedRun } from './pack-kind.ts';
import type { PackOrder } from './pack-order.ts';
import { type MadeFile, packZip } from './pack-zip.ts';
import { replaceFileStream } from './replace-file-stream.ts';

/** A pack that lies ready. */
export interface ShelvedPack {
  readonly fileName: string;
  readonly bytes: number;
}

export type ShelfProblem = FileProblem | { readonly kind: 'no-such-pack' };

/** Packs that were made for windows, each a file in a folder of the system's until its window has fetched it. */
export interface PackShelf {
  make<Study extends PackedRun>(
    packId: string,
    order: PackOrder<Study>,
  ): Promise<Result<ShelvedPack, FileProblem>>;
  /** Keeps a file that is made from anything else. */
  keep(packId: string, file: MadeFile): Promise<Result<ShelvedPack, FileProblem>>;
  /** A piece of the file, and where the next one begins; null after the last. */
  read(
    packId: string,
    fromByte: number,
  ): Promise<
    Result<{ readonly piece: Uint8Array; readonly nextByte: number | null }, ShelfProblem>
  >;
  drop(packId: string): Promise<void>;
  close(): Promise<void>;
}

/** Windows that go away without fetching their pack must not fill the disk: the oldest pack makes room. */
const mostPacks = 4;
/** Share of the work that lies in going through the runs, before any file is written [%]. */
const studyPercent = 40;

export function createPackShelf(
  files: FileLayer,
  onProgress: (progress: EventBody<'pack'>) => void,
): PackShelf {
  const packs = new Map<string, ShelvedPack & { readonly file: string }>();
  let folder: Promise<Result<string, FileProblem>> | null = null;
  let made = 0;

  async function drop(packId: string): Promise<void> {
    const pack = packs.get(packId);
    packs.delete(packId);
    if (pack !== undefined) await files.remove(pack.file);
  }

  async function shelfFolder(): Promise<Result<string, FileProblem>> {
    folder ??= files.makeTemporaryFolder('still-head-packs');
    const made = await folder;
    if (!made.ok) folder = null;
    return made;
  }

  async function keep(
    packId: string,
    { fileName, content }: MadeFile,
  ): Promise<Result<ShelvedPack, FileProblem>> {
    const place = await shelfFolder();
    if (!place.ok) return place;
    const others = [...packs.keys()].filter((id) => id !== packId);
    const tooMany = Math.max(0, others.length - mostPacks + 1);
    for (const oldest of others.slice(0, tooMany)) await drop(oldest);
    made += 1;
    const file = path.join(place.value, `pack-${made}.zip`);
    const written = await replaceFileStream(files, file, content);
    const size = written.ok ? await files.sizeBytes(file) : written;
    if (!size.ok) return size;
    await drop(packId);
    packs.set(packId, { fileName, bytes: size.value, file });
    return succeed({ fileName, bytes: size.value });
  }

  return {
    keep,
    async make(packId, order) {
      const tell = (doing: string, done: number) =>
        onProgress({ packId, doing, done: Math.round(done), total: 100 });
      const zip = await packZip(
        order,
        (name, index, count) => tell(name, (studyPercent * index) / count),
        ({ file, filesDone, filesTotal }) =>
          tell(file, studyPercent + ((100 - studyPercent) * filesDone) / filesTotal),
      );
      return keep(packId, zip);
    },
    async read(packId, fromByte) {
      const pack = packs.get(packId);
      if (pack === undefined) return fail({ kind: 'no-such-pack' });
      const piece = await files.read(pack.file, fromByte, contractLimits.pieceBytes);
      if (!piece.ok) return piece;
      const next = fromByte + piece.value.length;
      const isLast = piece.value.length === 0 || next >= pack.bytes;
      return succeed({ piece: piece.value, nextByte: isLast ? null : next });
    },
    drop,
    async close() {
      packs.clear();
      const made = await folder;
      if (made?.ok) await files.remove(made.value);
    },
  };
}
