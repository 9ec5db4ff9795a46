import {
  fail,
  isBookMark,
  type Mark,
  type MarkBody,
  type Result,
  type ServiceProblem,
  succeed,
  worded,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { addLater, readLabels } from './labels.ts';
import { emptyReport, readRunLog } from './read-run-log.ts';
import { runProblem } from './run-problem.ts';

/** The measurements made after a run, as marks at its end. */
export async function readLateMarks(
  files: FileLayer,
  folder: string,
  endS: number,
): Promise<Result<readonly Mark[], FileProblem>> {
  const labels = await readLabels(files, folder);
  if (!labels.ok) return labels;
  return succeed(labels.value.lateMarks.map((late) => ({ ...late, timeS: endS })));
}

/**
 * Adds a measurement made after a run, or takes one back. The log stays as it was closed: what the monitor saw and
 * concluded cannot change any more, so only marks that serve the books alone are taken.
 */
export async function addLateMark(
  { files, clock }: { readonly files: FileLayer; readonly clock: Clock },
  run: { readonly runId: string; readonly folder: string },
  mark: MarkBody,
): Promise<Result<number, ServiceProblem>> {
  const known = await marksOf(files, run.folder);
  if (!known.ok) return fail(runProblem(run.runId, known.error));
  const isKnown = (markId: number) =>
    known.value.some((other) => other.markId === markId && isBookMark(other.mark));
  const isAllowed =
    mark.type === 'mark-withdrawn' ? isKnown(mark.withdrawnMarkId) : isBookMark(mark);
  if (!isAllowed) {
    const message = worded('after the run only measurements of liquids can be added or withdrawn');
    return fail({ kind: 'request-invalid', message });
  }
  const markId = known.value.reduce((most, other) => Math.max(most, other.markId), 0) + 1;
  const added = await addLater(files, clock, run.folder, [{ kind: 'late-mark', markId, mark }]);
  return added.ok ? succeed(markId) : fail(runProblem(run.runId, added.error));
}

/** Every mark of a run, those made after it included. */
async function marksOf(
  files: FileLayer,
  folder: string,
): Promise<Result<readonly Omit<Mark, 'timeS'>[], FileProblem>> {
  const labels = await readLabels(files, folder);
  if (!labels.ok) return labels;
  const report = emptyReport();
  const marks: Omit<Mark, 'timeS'>[] = [...labels.value.lateMarks];
  for await (const records of readRunLog(files, folder, report)) {
    for (const { body } of records) if (body.kind === 'mark') marks.push(body);
  }
  return report.problem === null ? succeed(marks) : fail(report.problem);
}
