import type { RecordedChange } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { emptyReport, readRunLog } from './read-run-log.ts';

/** The stages, alarms and events of a run as they were written down at the time. */
export async function readChanges(
  files: FileLayer,
  folder: string,
): Promise<{ readonly changes: readonly RecordedChange[]; readonly problem: FileProblem | null }> {
  const report = emptyReport();
  const changes: RecordedChange[] = [];
  for await (const batch of readRunLog(files, folder, report)) {
    for (const { body } of batch) {
      if (body.kind !== 'change') continue;
      const { change } = body;
      if (change.kind !== 'alarm-changed') changes.push(change);
      else {
        const { snapshot: _, ...withoutSnapshot } = change;
        changes.push(withoutSnapshot);
      }
    }
  }
  return { changes, problem: report.problem };
}
