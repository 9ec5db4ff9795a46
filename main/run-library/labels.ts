import path from 'node:path';
import {
  type LogBody,
  type LogHeader,
  type Mark,
  type RequestBody,
  type Result,
  succeed,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import {
  continueLogWriter,
  createLogWriter,
  type LogWriter,
  labelsFile,
} from '../recorder/index.ts';
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
  const scan = scanFile(files, path.join(folder, labelsFile));
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
  if (!step.value.ok && step.value.error.kind !== 'missing') return step.value;
  return succeed({ header, label, lateMarks, corrections, last });
}

/** Starts a run's labels file with a copy of its header. */
export function startLabels(
  files: FileLayer,
  clock: Clock,
  folder: string,
  header: LogHeader,
): Promise<Result<void, FileProblem>> {
  const writer = createLogWriter(files, path.join(folder, labelsFile));
  return writeAll(writer, [{ kind: 'header', header }], 0, clock);
}

/** What a person adds to a run after it was recorded. */
export type LaterRecord = Extract<LogBody, { readonly kind: 'label' | 'late-mark' | 'correction' }>;

/** Adds records to the labels file; the earlier ones stay. */
export async function addLater(
  files: FileLayer,
  clock: Clock,
  folder: string,
  records: readonly LaterRecord[],
): Promise<Result<void, FileProblem>> {
  const cut = await cutTornTail(files, folder, labelsFile);
  if (!cut.ok && cut.error.kind !== 'missing') return cut;
  const found = await readLabels(files, folder);
  if (!found.ok) return found;
  const { last } = found.value;
  const file = path.join(folder, labelsFile);
  const writer =
    last === null ? createLogWriter(files, file) : continueLogWriter(files, file, last.checksum);
  const written = await writeAll(writer, records, (last?.seq ?? 0) + 1, clock);
  return written.ok ? files.syncFolder(folder) : written;
}

async function writeAll(
  writer: Result<LogWriter, FileProblem>,
  bodies: readonly LogBody[],
  firstSeq: number,
  clock: Clock,
): Promise<Result<void, FileProblem>> {
  if (!writer.ok) return writer;
  let written: Result<void, FileProblem> = succeed(undefined);
  for (const [index, body] of bodies.entries()) {
    const stamp = { seq: firstSeq + index, monoS: clock.monotonicS(), wallMs: clock.wallMs() };
    written = writer.value.write(body, stamp);
    if (!written.ok) break;
  }
  const synced = written.ok ? await writer.value.sync() : written;
  await writer.value.close();
  return synced;
}
