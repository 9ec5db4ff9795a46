import { fail, type LogHeader, type Result, succeed } from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { makeLogSure, segmentNumber } from '../recorder/index.ts';
import { readLabels } from './labels.ts';
import { emptyReport, readRunLog } from './read-run-log.ts';
import { createUnsureRecords } from './sureness.ts';

/**
 * Saves what can be read of a run that nobody records any more and is perhaps on no disk: where a sync had failed, the system has
 * dropped the pages and calls them clean, and shows them until the computer is switched off. Does nothing where all is sure, and
 * leaves a run alone of which a newer version wrote what this one can't write again.
 */
export async function makeSure(
  { files, clock }: { readonly files: FileLayer; readonly clock: Clock },
  folder: string,
): Promise<Result<void, FileProblem>> {
  const labels = await readLabels(files, folder);
  if (!labels.ok) return labels;
  let { header }: { header: LogHeader | null } = labels.value;
  let seq = 0;
  const unsure = createUnsureRecords();
  const report = emptyReport();
  for await (const records of readRunLog(files, folder, report)) {
    for (const record of records) {
      unsure.add(record);
      seq = Math.max(seq, record.stamp.seq);
      if (record.body.kind === 'header' || record.body.kind === 'segment') {
        header = record.body.header;
      }
    }
  }
  if (report.problem !== null) return fail(report.problem);
  const pending = unsure.records();
  if (pending.length === 0 || unsure.hasUnknown() || header === null) return succeed(undefined);
  const listed = await files.list(folder);
  if (!listed.ok) return listed;
  const lastSegment = Math.max(...listed.value.map(({ name }) => segmentNumber(name) ?? 1));
  return makeLogSure({ files, clock, folder, header }, { lastSegment, seq, unsure: pending });
}
