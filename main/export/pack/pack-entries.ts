import { createHash } from 'node:crypto';
import type { ZipEntry } from '../zip-stream.ts';
import { dataPackage, type PackResource } from './data-package.ts';
import { type PackFile, packFiles } from './pack-files.ts';
import type { PackedRun, PackKind } from './pack-kind.ts';
import { runStems } from './pack-stem.ts';
import { readMe } from './read-me.ts';

/** How far the writing of a pack has come. */
export interface PackProgress {
  /** The file being written. */
  readonly file: string;
  readonly filesDone: number;
  readonly filesTotal: number;
}

/**
 * Every file of a pack in turn, the description last: it holds sizes and hashes of the others, and whoever finds it
 * knows that the pack is whole.
 */
export async function* packEntries<Study extends PackedRun>(
  kind: PackKind<Study>,
  studies: readonly Study[],
  createdMs: number,
  onProgress: (progress: PackProgress) => void,
): AsyncGenerator<ZipEntry> {
  const files = packFiles(kind, studies, createdMs);
  const filesTotal = files.length + 2;
  const resources: PackResource[] = [];
  for (const [filesDone, file] of files.entries()) {
    onProgress({ file: file.path, filesDone, filesTotal });
    yield file.table === undefined ? file : hashed(file, file.table, resources);
  }
  onProgress({ file: 'README.txt', filesDone: files.length, filesTotal });
  yield {
    path: 'README.txt',
    content: [readMe(kind, studies, files)],
  };
  onProgress({ file: 'datapackage.json', filesDone: files.length + 1, filesTotal });
  const description = dataPackage({
    name: packName(studies).toLowerCase(),
    title: studies.map(({ name }) => name).join(', '),
    description: kind.description,
    version: studies[0]?.appVersion ?? '',
    createdMs,
    resources,
    sources: kind.dataSources,
  });
  yield { path: 'datapackage.json', content: [`${JSON.stringify(description, null, 2)}\n`] };
  onProgress({ file: 'datapackage.json', filesDone: filesTotal, filesTotal });
}

/** The pack's name: of its run, or of its first run and how many more. */
export function packName(studies: readonly Pick<PackedRun, 'runId' | 'name'>[]): string {
  const [first = 'runs'] = runStems(studies);
  return studies.length <= 1 ? first : `${first}-and-${studies.length - 1}-more`;
}

/** The same file; once it has been read through, its size and hash are in the list. */
function hashed(
  file: PackFile,
  { title, format, fields, primaryKey }: NonNullable<PackFile['table']>,
  resources: PackResource[],
): ZipEntry {
  async function* content(): AsyncGenerator<Uint8Array> {
    const encoder = new TextEncoder();
    const hash = createHash('sha256');
    let bytes = 0;
    for await (const piece of file.content) {
      const encoded = typeof piece === 'string' ? encoder.encode(piece) : piece;
      hash.update(encoded);
      bytes += encoded.length;
      yield encoded;
    }
    resources.push({
      // The specification wants lower case.
      name: file.path
        .replace(/\.csv$/, '')
        .replaceAll('/', '.')
        .toLowerCase(),
      path: file.path,
      title,
      format,
      fields,
      primaryKey,
      bytes,
      sha256: hash.digest('hex'),
    });
  }
  return { path: file.path, content: content() };
}
