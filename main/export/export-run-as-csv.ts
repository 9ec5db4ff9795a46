import { type CsvFormat, writeReadingsCsv } from '#shared-core';
import type { RunToExport } from '../run-library/index.ts';
import { exportFileName } from './export-file-name.ts';
import { type CreateMonitor, judgeAgain } from './judge-again.ts';
import type { MadeFile } from './pack/pack-zip.ts';

/** A table, and in a sentence what it lacks; null where it lacks nothing. */
export interface MadeTable extends MadeFile {
  readonly missing: string | null;
}

/** A run as one CSV file, in pieces as they are made; stages are those that the monitor gives the recorded inputs. */
export async function exportRunAsCsv(
  run: RunToExport,
  format: CsvFormat,
  createMonitor: CreateMonitor,
): Promise<MadeTable> {
  const judged = await judgeAgain(run, createMonitor);
  return {
    fileName: exportFileName(run.summary, 'csv'),
    missing: judged.ok ? null : judged.error,
    content: writeReadingsCsv(
      {
        inputs: run.inputs,
        stages: judged.ok ? judged.value.stages : null,
        endS: run.summary.ended === 'recording' ? null : run.endS,
        lateMarks: run.lateMarks,
      },
      format,
    ),
  };
}
