import path from 'node:path';
import { fail, type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import type { PackZip } from './pack/pack-zip.ts';
import { type ZipEntry, zipStream } from './zip-stream.ts';

const pieceBytes = 512 * 1024;
const noteFile = 'could-not-be-read.txt';

/**
 * The files of a run's folder as they are, as one ZIP file: for a run that can't be opened. What can't be read is left out
 * from where it fails on, and named in a text beside the rest; fails where no file can be read.
 */
export async function runFilesZip(
  files: FileLayer,
  folder: string,
  createdMs: number,
): Promise<Result<PackZip, FileProblem>> {
  const listed = await files.list(folder);
  if (!listed.ok) return listed;
  const names = listed.value.filter(({ isFolder }) => !isFolder).map(({ name }) => name);
  let problem: FileProblem = { kind: 'failed', path: folder, message: 'No file is in its folder.' };
  let readable = 0;
  for (const name of names) {
    const tried = await files.read(path.join(folder, name), 0, 1);
    if (tried.ok) readable += 1;
    else problem = tried.error;
  }
  if (readable === 0) return fail(problem);
  return succeed({
    fileName: `${path.basename(folder)}-files.zip`,
    content: zipStream(entriesOf(files, folder, names), createdMs),
  });
}

async function* entriesOf(
  files: FileLayer,
  folder: string,
  names: readonly string[],
): AsyncGenerator<ZipEntry> {
  const left: string[] = [];
  for (const name of names) {
    const file = path.join(folder, name);
    const begun = await files.read(file, 0, 1);
    if (begun.ok) {
      yield { path: name, content: piecesOf(files, file, (why) => left.push(`${name}: ${why}`)) };
    } else {
      left.push(`${name}: ${begun.error.message}`);
    }
  }
  if (left.length > 0) yield { path: noteFile, content: [`${left.join('\r\n')}\r\n`] };
}

async function* piecesOf(
  files: FileLayer,
  file: string,
  onProblem: (why: string) => void,
): AsyncGenerator<Uint8Array> {
  for (let fromByte = 0; ; ) {
    const read = await files.read(file, fromByte, pieceBytes);
    if (!read.ok) {
      onProblem(`only the first ${fromByte} bytes. ${read.error.message}`);
      return;
    }
    if (read.value.length === 0) return;
    yield read.value;
    fromByte += read.value.length;
  }
}
