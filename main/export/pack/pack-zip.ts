import type { ExportedFile } from '#shared-core';
import { zipStream } from '../zip-stream.ts';
import { packEntries, packName } from './pack-entries.ts';
import { type PackRequest, studies } from './write-pack.ts';

/** The export pack of one or several runs as one ZIP file for the window to save. */
export async function packZip(request: PackRequest): Promise<ExportedFile> {
  const { createdMs, onProgress = () => {} } = request;
  const worked = await studies(request);
  const pieces: Uint8Array[] = [];
  for await (const piece of zipStream(packEntries(worked, createdMs, onProgress), createdMs)) {
    pieces.push(piece);
  }
  return {
    fileName: `${packName(worked)}.zip`,
    mediaType: 'application/zip',
    encoding: 'base64',
    content: Buffer.concat(pieces).toString('base64'),
  };
}
