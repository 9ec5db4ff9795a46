import { type ZipEntry, zipStream } from '../zip-stream.ts';
import { type PackProgress, packEntries, packName } from './pack-entries.ts';
import type { PackedRun } from './pack-kind.ts';
import type { OnStudied, PackOrder } from './pack-order.ts';

/** Any file that is made for a window, in pieces as they are made. */
export interface MadeFile {
  readonly fileName: string;
  readonly content: ZipEntry['content'];
}

/** A pack as one ZIP file, in pieces as they are made. */
export interface PackZip {
  readonly fileName: string;
  readonly content: AsyncIterable<Uint8Array>;
}

/** The export pack of one or several runs as one ZIP file: the files that `writePack` puts into a folder. */
export async function packZip<Study extends PackedRun>(
  { kind, work, createdMs }: PackOrder<Study>,
  onStudied: OnStudied = () => {},
  onProgress: (progress: PackProgress) => void = () => {},
): Promise<PackZip> {
  const worked = await work(onStudied);
  return {
    fileName: `${packName(worked)}.zip`,
    content: zipStream(packEntries(kind, worked, createdMs, onProgress), createdMs),
  };
}
