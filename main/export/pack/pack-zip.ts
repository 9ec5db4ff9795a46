import { type ZipEntry, zipStream } from '../zip-stream.ts';
import { packEntries, packName } from './pack-entries.ts';
import { type PackRequest, studies } from './write-pack.ts';

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
export async function packZip(request: PackRequest): Promise<PackZip> {
  const { createdMs, onProgress = () => {} } = request;
  const worked = await studies(request);
  return {
    fileName: `${packName(worked)}.zip`,
    content: zipStream(packEntries(worked, createdMs, onProgress), createdMs),
  };
}
