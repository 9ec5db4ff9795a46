import path from 'node:path';
import { fail, type Result, type ServiceProblem, succeed } from '#shared-core';
import { type FileLayer, readText, serviceProblemOf } from '../file-layer/index.ts';
import { appendLines } from './append-lines.ts';
import {
  noWarmth,
  type WarmthLine,
  type WarmthRecord,
  warmthLineText,
  warmthOfText,
} from './warmth-lines.ts';

type Answer<T> = Promise<Result<T, ServiceProblem>>;

export const warmthFileNames = /^warmth-([0-9A-Za-z][0-9A-Za-z-]{0,79})\.jsonl$/;

/** The records of how warm ferments were kept: one file each beside the runs, to which lines are only ever added. */
export interface WarmthFiles {
  /** Ferments that have such a record, newest first. */
  ids(): Answer<readonly string[]>;
  read(fermentId: string): Answer<WarmthRecord>;
  add(fermentId: string, lines: readonly WarmthLine[]): Answer<void>;
}

export function createWarmthFiles(files: FileLayer, folder: string): WarmthFiles {
  const fileOf = (fermentId: string) => path.join(folder, `warmth-${fermentId}.jsonl`);
  return {
    ids: async () => {
      const listed = await files.list(folder);
      if (!listed.ok) return fail(serviceProblemOf(listed.error));
      const ids = listed.value.flatMap(({ name }) => warmthFileNames.exec(name)?.[1] ?? []);
      return succeed(ids.sort().reverse());
    },
    read: async (fermentId) => {
      const text = await readText(files, fileOf(fermentId));
      if (text.ok) return succeed(warmthOfText(text.value));
      return text.error.kind === 'missing' ? succeed(noWarmth) : fail(serviceProblemOf(text.error));
    },
    add: async (fermentId, lines) => {
      const size = await files.sizeBytes(fileOf(fermentId));
      const written = await appendLines(files, fileOf(fermentId), {
        text: lines.map(warmthLineText).join(''),
        isNew: !size.ok && size.error.kind === 'missing',
      });
      return written.ok ? succeed(undefined) : fail(serviceProblemOf(written.error));
    },
  };
}
