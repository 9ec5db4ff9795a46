import { fail, parseJson, type Result, type ServiceProblem, succeed } from '#shared-core';
import {
  type FileLayer,
  type FileProblem,
  foundOrNone,
  readBytes,
  replaceFile,
  serviceProblemOf,
} from '../file-layer/index.ts';
import { keepCopy } from './keep-copy.ts';

/** How a kept file is read and written. */
export interface KeptFormat<T> {
  /** The version that this program writes. */
  readonly version: number;
  /** What is known where there is no file, or none that says anything. */
  readonly nothing: T;
  /** What a file of this version or an older one says, and whether that is all of it; null where it says nothing. */
  readonly read: (json: unknown) => { readonly value: T; readonly isWhole: boolean } | null;
  /** What a file of this version says; its version is added. */
  readonly written: (value: T) => object;
}

/**
 * `older`: read, and brought to this version when it is next written. `newer`: a later version of this program wrote it, and it is left
 * alone. `not-understood`: damaged, or in part.
 */
export type KeptState = 'none' | 'as-written' | 'older' | 'newer' | 'not-understood';

interface KeptRead<T> {
  readonly value: T;
  readonly state: KeptState;
  readonly bytes: Uint8Array;
}

export interface KeptFile<T> {
  read(): Promise<Result<T, ServiceProblem>>;
  /**
   * Writes what becomes of its value, and answers it. What can't be written back as it was is kept beside it before anything is written; a newer
   * version's file is refused.
   */
  change(changed: (value: T) => Result<T, ServiceProblem>): Promise<Result<T, ServiceProblem>>;
}

export function createKeptFile<T>(
  files: FileLayer,
  file: string,
  format: KeptFormat<T>,
): KeptFile<T> {
  return {
    async read() {
      const found = await readKeptFile(files, file, format);
      return found.ok ? succeed(found.value.value) : fail(serviceProblemOf(found.error));
    },
    async change(changed) {
      const found = await readKeptFile(files, file, format);
      if (!found.ok) return fail(serviceProblemOf(found.error));
      const { value, state, bytes } = found.value;
      const next = changed(value);
      if (!next.ok) return next;
      if (state === 'newer') return fail({ kind: 'kept-by-newer', path: file });
      const why = { older: 'older-version', 'not-understood': 'not-understood' } as const;
      if (state === 'older' || state === 'not-understood') {
        const kept = await keepCopy(files, file, bytes, why[state]);
        if (!kept.ok) return fail(serviceProblemOf(kept.error));
      }
      const text = `${JSON.stringify({ ...format.written(next.value), version: format.version }, null, 2)}\n`;
      const written = await replaceFile(files, file, text, { isNew: state === 'none' });
      return written.ok ? next : fail(serviceProblemOf(written.error));
    },
  };
}

/** What the file says, and in what state it is. */
export async function readKeptFile<T>(
  files: FileLayer,
  file: string,
  format: KeptFormat<T>,
): Promise<Result<KeptRead<T>, FileProblem>> {
  const { version, nothing, read } = format;
  const there = await foundOrNone(files, file, await readBytes(files, file));
  if (!there.ok) return there;
  const bytes = there.value;
  if (bytes === null) return succeed({ value: nothing, state: 'none', bytes: new Uint8Array() });
  const as = (state: KeptState, value = nothing) => succeed({ value, state, bytes });
  const json = parseJson(new TextDecoder().decode(bytes));
  const found = versionOf(json);
  if (found !== null && found > version) return as('newer');
  const known = read(json);
  if (known === null) return as('not-understood');
  if (!known.isWhole) return as('not-understood', known.value);
  return as(found === version ? 'as-written' : 'older', known.value);
}

function versionOf(json: unknown): number | null {
  const isObject = typeof json === 'object' && json !== null && 'version' in json;
  return isObject && typeof json.version === 'number' ? json.version : null;
}
