import path from 'node:path';
import {
  encodeRecord,
  firstPreviousChecksum,
  type LogBody,
  type LogHeader,
  type Mark,
  type RequestBody,
  type Result,
  succeed,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import {
  type FileLayer,
  type FileProblem,
  foundOrNone,
  readBytes,
  replaceFile,
} from '../file-layer/index.ts';
import { labelsFile } from '../recorder/index.ts';
import { cutTornTail } from './cut-torn-tail.ts';
import { scanFile } from './scan-file.ts';

/** Name and notes that a person gave a run after it was recorded. */
export interface RunLabel {
  readonly name: string;
  readonly notes: string;
}

/** What the labels file of a run holds; all null when there is none. */
export interface LabelsFile {
  /** A second copy of the run's header, for the day the first one is damaged. */
  readonly header: LogHeader | null;
  readonly label: RunLabel | null;
  /** Measurements made after the run. */
  readonly lateMarks: readonly Omit<Mark, 'timeS'>[];
  /** What was put right after the run. */
  readonly corrections: readonly RequestBody<'runs/correct'>['correction'][];
  readonly last: { readonly seq: number; readonly checksum: string } | null;
}

export async function readLabels(
  files: FileLayer,
  folder: string,
): Promise<Result<LabelsFile, FileProblem>> {
  let header: LogHeader | null = null;
  let label: RunLabel | null = null;
  const lateMarks: Omit<Mark, 'timeS'>[] = [];
  const corrections: RequestBody<'runs/correct'>['correction'][] = [];
  let last: LabelsFile['last'] = null;
  const file = path.join(folder, labelsFile);
  const scan = scanFile(files, file);
  let step = await scan.next();
  for (; step.done !== true; step = await scan.next()) {
    for (const item of step.value) {
      if (item.kind !== 'record') continue;
      const { body, stamp } = item.record;
      last = { seq: stamp.seq, checksum: item.checksum };
      if (body.kind === 'header') header = body.header;
      if (body.kind === 'late-mark') {
        lateMarks.push({ kind: 'mark', markId: body.markId, mark: body.mark });
      }
      if (body.kind === 'correction') corrections.push(body.correction);
      if (body.kind === 'label') label = { name: body.name, notes: body.notes };
    }
  }
  const scanned = await foundOrNone(files, file, step.value);
  if (!scanned.ok) return scanned;
  return succeed({ header, label, lateMarks, corrections, last });
}

/** Starts a run's labels file with a copy of its header. */
export function startLabels(
  files: FileLayer,
  clock: Clock,
  folder: string,
  header: LogHeader,
): Promise<Result<void, FileProblem>> {
  const lines = linesOf([{ kind: 'header', header }], beforeAny, clock);
  return replaceFile(files, path.join(folder, labelsFile), lines);
}

/** What a person adds to a run after it was recorded. */
export type LaterRecord = Extract<LogBody, { readonly kind: 'label' | 'late-mark' | 'correction' }>;

/**
 * Adds records to the labels file, all of them or none; the earlier ones stay. The whole file is written anew: what is there may be what
 * an earlier sync, perhaps another program's, failed to save, which can be read and is on no disk.
 */
export async function addLater(
  files: FileLayer,
  clock: Clock,
  folder: string,
  records: readonly LaterRecord[],
): Promise<Result<void, FileProblem>> {
  const file = path.join(folder, labelsFile);
  const size = await files.sizeBytes(file);
  const isNew = !size.ok && size.error.kind === 'missing';
  if (!size.ok && !isNew) return size;
  const cut = isNew ? null : await cutTornTail(files, folder, labelsFile);
  if (cut?.ok === false) return cut;
  const found = await readLabels(files, folder);
  if (!found.ok) return found;
  const before = isNew ? null : await readBytes(files, file);
  if (before?.ok === false) return before;
  const last = found.value.last ?? { ...beforeAny, seq: 0 };
  const added = Buffer.from(linesOf(records, last, clock), 'latin1');
  const whole = before === null ? added : Buffer.concat([before.value, added]);
  return replaceFile(files, file, whole, { isNew });
}

/** The header has the number 0, also where it is missing. */
const beforeAny = { seq: -1, checksum: firstPreviousChecksum };

/** Chained to the record before them. */
function linesOf(bodies: readonly LogBody[], last: typeof beforeAny, clock: Clock): string {
  let previous = last.checksum;
  const lines = bodies.map((body, index) => {
    const stamp = { seq: last.seq + 1 + index, monoS: clock.monotonicS(), wallMs: clock.wallMs() };
    const { line, checksum } = encodeRecord(body, stamp, previous);
    previous = checksum;
    return line;
  });
  return lines.join('');
}
