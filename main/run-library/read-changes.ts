import type { RecordedChange } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { emptyReport, readRunLog } from './read-run-log.ts';

/** The stages, alarms and events of a run as they were written down at the time, and the versions of the monitor that concluded them. */
export interface RecordedConclusions {
  readonly changes: readonly RecordedChange[];
  readonly modelVersions: readonly string[];
}

export async function readChanges(
  files: FileLayer,
  folder: string,
): Promise<RecordedConclusions & { readonly problem: FileProblem | null }> {
  const report = emptyReport();
  const changes: RecordedChange[] = [];
  const modelVersions = new Set<string>();
  for await (const batch of readRunLog(files, folder, report)) {
    for (const { body } of batch) {
      if ('header' in body) modelVersions.add(body.header.modelVersion);
      if (body.kind === 'continued') modelVersions.add(body.modelVersion);
      if (body.kind !== 'change') continue;
      const { change } = body;
      if (change.kind !== 'alarm-changed') changes.push(change);
      else {
        const { snapshot: _, ...withoutSnapshot } = change;
        changes.push(withoutSnapshot);
      }
    }
  }
  return { changes, modelVersions: [...modelVersions], problem: report.problem };
}
