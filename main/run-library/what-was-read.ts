import path from 'node:path';
import { crc32 } from 'node:zlib';
import { type Result, succeed } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { logFiles } from './log-files.ts';

type Told = Promise<Result<string, FileProblem>>;

/** The end of a record: its checksum, to which those of all before it are chained. */
const recordEndBytes = 20;
const pieceBytes = 1_048_576;

/**
 * What the files of a run look like from outside: names, sizes and times as the system keeps them, and how the newest record ends. A copy of
 * a run looks otherwise, and so does one that was written to; where a disk kept a file's size and lost what was in it, its end tells.
 */
export function looksOf(files: FileLayer, folder: string): Told {
  return ofEachFile(files, folder, async (at) => {
    const state = await files.stateOf(at);
    if (!state.ok) return state;
    const { bytes, changed } = state.value;
    const end = await files.read(at, Math.max(0, bytes - recordEndBytes), recordEndBytes);
    return end.ok
      ? succeed(`${bytes} ${changed} ${Buffer.from(end.value).toString('latin1')}`)
      : end;
  });
}

/** A checksum of every byte of them: a copy of a run is the same run. */
export function contentsOf(files: FileLayer, folder: string): Told {
  return ofEachFile(files, folder, async (at) => {
    let checksum = 0;
    for (let offset = 0; ; offset += pieceBytes) {
      const piece = await files.read(at, offset, pieceBytes);
      if (!piece.ok) return piece;
      checksum = crc32(piece.value, checksum);
      if (piece.value.length < pieceBytes) {
        return succeed(`${offset + piece.value.length} ${checksum.toString(16)}`);
      }
    }
  });
}

async function ofEachFile(files: FileLayer, folder: string, tell: (at: string) => Told): Told {
  const names = await logFiles(files, folder);
  if (!names.ok) return names;
  const parts: string[] = [];
  for (const name of [...names.value].sort()) {
    const told = await tell(path.join(folder, name));
    // A recorder whose disk takes nothing begins files and takes them away again.
    if (!told.ok && told.error.kind === 'missing') continue;
    if (!told.ok) return told;
    parts.push(`${name}: ${told.value}`);
  }
  return succeed(parts.join('; '));
}
