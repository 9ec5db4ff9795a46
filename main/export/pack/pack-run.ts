import { type BookEntries, type RunInput, type RunStudy, studyRun } from '#shared-core';
import { localIso, type RunToExport } from '../../run-library/index.ts';
import { type CreateMonitor, judgeAgain } from '../judge-again.ts';

/** A run of a pack with what was measured after it. */
export interface PackRun {
  readonly run: RunToExport;
  readonly entries?: BookEntries | undefined;
}

/** Who judges runs again, whoever recorded them. */
export interface MadeBy {
  readonly version: string;
  readonly modelVersion: string;
}

const noteLeftOut = 'left out of the export';

/** Works a run through for a pack, giving way to a recording between readings. */
export async function studyForPack(
  { run, entries }: PackRun,
  createMonitor: CreateMonitor,
  madeBy: MadeBy,
): Promise<RunStudy> {
  const inputs = run.inputs.map(withoutNote);
  const judged = await judgeAgain({ ...run, inputs }, createMonitor);
  const { summary, settings, endS, lateMarks } = run;
  const { runId, name, startedAtIso, rehearsal, imported, corrections, leftOut, ended } = summary;
  return studyRun(
    {
      runId,
      name,
      startedAtIso: localIso(startedAtIso),
      rehearsal,
      imported,
      underWay: ended === 'recording',
      corrections,
      leftOut,
      settings,
      appVersion: madeBy.version,
      modelVersion: madeBy.modelVersion,
      recordedModelVersion: run.modelVersion,
      inputs,
      endS,
      lateMarks,
      entries,
    },
    judged,
  );
}

/** Free text may name people; it stays in the laboratory. That something was noted, and when, is kept. */
function withoutNote(input: RunInput): RunInput {
  return input.kind === 'mark' && input.mark.type === 'note'
    ? { ...input, mark: { type: 'note', text: noteLeftOut } }
    : input;
}
