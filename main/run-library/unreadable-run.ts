import path from 'node:path';
import type { RunSummary } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { segmentNumber } from '../recorder/index.ts';
import { readLabels } from './labels.ts';
import { startOfRunId } from './run-id.ts';

/**
 * A run whose log can't be read, as a line of the library all the same; null for a folder that is no run, holds
 * nothing at all, or has gone meanwhile.
 */
export async function unreadableRun(
  files: FileLayer,
  runsFolder: string,
  runId: string,
  problem: FileProblem,
): Promise<RunSummary | null> {
  const folder = path.join(runsFolder, runId);
  const begun = startOfRunId(runId);
  const listed = await files.list(folder);
  const gone = !listed.ok && listed.error.kind === 'missing';
  const hasLog = listed.ok && listed.value.some(({ name }) => segmentNumber(name) !== undefined);
  // A new run's folder is empty for a moment; and people keep other folders beside their runs.
  const isEmpty = listed.ok && listed.value.length === 0;
  if (gone || isEmpty || (!hasLog && begun === null)) return null;
  const labels = await readLabels(files, folder);
  const { header, label } = labels.ok ? labels.value : { header: null, label: null };
  return {
    runId,
    name: label?.name ?? header?.settings.name ?? runId,
    notes: label?.notes ?? '',
    startedAtIso: header?.startedAtIso ?? (begun ?? new Date(0)).toISOString(),
    durationS: 0,
    readings: 0,
    ended: 'cut-off',
    rehearsal: header?.rehearsal ?? false,
    imported: header?.origin === 'imported',
    plateau: null,
    heatOffCalledS: null,
    damagedRecords: 0,
    unreadable: { why: whyByKind[problem.kind] ?? 'read-failed', message: problem.message },
  };
}

const whyByKind: Partial<
  Record<FileProblem['kind'], NonNullable<RunSummary['unreadable']>['why']>
> = {
  missing: 'log-missing',
  'read-only': 'not-permitted',
};
