import path from 'node:path';
import { fail, parseJson, type Result, type ServiceProblem, succeed } from '#shared-core';
import {
  type FileLayer,
  foundOrNone,
  readText,
  replaceFile,
  serviceProblemOf,
} from '../file-layer/index.ts';
import { addLines, appendLines } from './add-lines.ts';
import { type MinuteSoFar, minuteOf, minuteSoFarSchema } from './minute-in-hand.ts';
import {
  noWarmth,
  type WarmthLine,
  type WarmthRecord,
  type WarmthSpan,
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
  /** All of them or none; of minutes alone some may be there that are told as not kept, and may be added again. */
  add(fermentId: string, lines: readonly WarmthLine[]): Answer<void>;
  /** Puts the minute under way beside the record, in place of what was there of it or of one before. */
  keepUnderWay(fermentId: string, minute: MinuteSoFar): Answer<void>;
  /** What was heard of a minute that did not come into the record; null where there is none. */
  underWay(fermentId: string, record: WarmthRecord): Promise<MinuteSoFar | null>;
}

/** The minutes of a record, the one under way among them. */
export function minutesUntilNow(
  { minutes }: WarmthRecord,
  underWay: MinuteSoFar | null,
): readonly WarmthSpan[] {
  return underWay === null ? minutes : [...minutes, minuteOf(underWay)];
}

export function createWarmthFiles(files: FileLayer, folder: string): WarmthFiles {
  const fileOf = (fermentId: string) => path.join(folder, `warmth-${fermentId}.jsonl`);
  const underWayOf = (fermentId: string) => path.join(folder, `warmth-${fermentId}.minute.json`);
  /** Files that are on the disk to their last byte, as far as this program has put them there: a week of minutes is not written anew each minute. */
  const sure = new Set<string>();

  async function addTo(file: string, lines: readonly WarmthLine[]) {
    const text = lines.map(warmthLineText).join('');
    const wasSure = sure.delete(file);
    if (wasSure && lines.every(({ kind }) => kind === 'minute')) {
      return appendLines(files, file, text);
    }
    const size = await files.sizeBytes(file);
    return addLines(files, file, { text, isNew: !size.ok && size.error.kind === 'missing' });
  }

  return {
    ids: async () => {
      const listed = await files.list(folder);
      if (!listed.ok) return fail(serviceProblemOf(listed.error));
      const ids = listed.value.flatMap(({ name }) => warmthFileNames.exec(name)?.[1] ?? []);
      return succeed(ids.sort().reverse());
    },
    read: async (fermentId) => {
      const file = fileOf(fermentId);
      const text = await foundOrNone(files, file, await readText(files, file));
      if (!text.ok) return fail(serviceProblemOf(text.error));
      return succeed(text.value === null ? noWarmth : warmthOfText(text.value));
    },
    add: async (fermentId, lines) => {
      const file = fileOf(fermentId);
      const written = await addTo(file, lines);
      if (!written.ok) return fail(serviceProblemOf(written.error));
      sure.add(file);
      return written;
    },
    keepUnderWay: async (fermentId, minute) => {
      const kept = await replaceFile(files, underWayOf(fermentId), JSON.stringify(minute));
      return kept.ok ? succeed(undefined) : fail(serviceProblemOf(kept.error));
    },
    underWay: async (fermentId, { minutes }) => {
      const text = await readText(files, underWayOf(fermentId));
      const minute = text.ok ? minuteOfText(text.value) : null;
      const isRecorded = minutes.some(({ atIso }) => atIso === minute?.atIso);
      return isRecorded ? null : minute;
    },
  };
}

/** Null where a loss of power left nothing that can be read. */
function minuteOfText(text: string): MinuteSoFar | null {
  return minuteSoFarSchema.safeParse(parseJson(text)).data ?? null;
}
