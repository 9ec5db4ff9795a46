import path from 'node:path';
import {
  fail,
  type KeptFerment,
  type Result,
  type ServiceProblem,
  succeed,
  type WarmthReport,
  worded,
} from '#shared-core';
import { type FileLayer, foundOrNone, readText, serviceProblemOf } from '../file-layer/index.ts';
import { fermentOfText } from './ferment-lines.ts';
import { createWarmthFiles, minutesUntilNow } from './warmth-file.ts';
import type { WarmthSpan } from './warmth-lines.ts';

/** A ferment with all that is on the disk of it. */
export interface ArchivedFerment {
  readonly kept: KeptFerment;
  readonly warmth: {
    readonly band: NonNullable<WarmthReport['keeping']>['band'] | null;
    readonly minutes: readonly WarmthSpan[];
  };
}

/** Reads ferments from the disk, beside whoever adds to them. */
export function createFermentArchive(files: FileLayer, runsFolder: string) {
  const warmth = createWarmthFiles(files, runsFolder);
  return {
    read: async (fermentId: string): Promise<Result<ArchivedFerment, ServiceProblem>> => {
      const file = path.join(runsFolder, `ferment-${fermentId}.jsonl`);
      const text = await foundOrNone(files, file, await readText(files, file));
      if (!text.ok) return fail(serviceProblemOf(text.error));
      const kept = text.value === null ? null : fermentOfText(text.value);
      if (kept === null) {
        return fail({
          kind: 'request-invalid',
          message: worded('This ferment is not beside the runs, or its first line cannot be read'),
        });
      }
      const heard = await warmth.read(fermentId);
      if (!heard.ok) return heard;
      const { keeping } = heard.value;
      const underWay = await warmth.underWay(fermentId, heard.value);
      const minutes = minutesUntilNow(heard.value, underWay);
      return succeed({ kept, warmth: { band: keeping?.band ?? null, minutes } });
    },
  };
}
