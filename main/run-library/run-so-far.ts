import {
  inputsOfRecord,
  type LogHeader,
  type LogRecord,
  type RecordedChange,
  type Result,
  type RunInput,
  succeed,
} from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import {
  createRecordMemory,
  type LogEnd,
  type RecordMemory,
  segmentNumber,
} from '../recorder/index.ts';
import { readLabels } from './labels.ts';
import { createLeftOut, type LeftOut } from './left-out.ts';
import { asRecorded } from './read-changes.ts';
import { emptyReport, type ReadReport, readRunLog } from './read-run-log.ts';
import { createUnsureRecords } from './sureness.ts';

/** A run that was cut off, with all that whoever goes on with it needs to know. */
export interface RunSoFar {
  readonly header: LogHeader;
  /** What the monitor was given, in order. */
  readonly inputs: readonly RunInput[];
  /** What was concluded, by which versions, and which of them drew the latest. */
  readonly changes: readonly RecordedChange[];
  readonly modelVersions: readonly string[];
  readonly modelVersion: string;
  readonly readings: number;
  readonly lastMarkId: number;
  readonly heatOffCalledS: number | null;
  /** Run time of the newest thing recorded [s]. */
  readonly endS: number;
  /** When the last record was written, and what run time it was then [s]. */
  readonly written: LogRecord['stamp'];
  readonly writtenAtS: number;
  readonly logEnd: LogEnd;
  /** All its records. */
  readonly memory: RecordMemory;
  /** What its record lacks so far, and what no file of it holds. */
  readonly leftOut: LeftOut;
  readonly report: Pick<ReadReport, 'missingRecords' | 'unknownRecords'>;
}

/** Reads a run to go on with it; null when it was ended, put right since, or holds nothing to go on from. */
export async function readRunSoFar(
  files: FileLayer,
  folder: string,
): Promise<Result<RunSoFar | null, FileProblem>> {
  const labels = await readLabels(files, folder);
  if (!labels.ok) return labels;
  // What was put right or measured after the run counts from its end.
  const { corrections, lateMarks } = labels.value;
  if (corrections.length + lateMarks.length > 0) return succeed(null);
  const report = emptyReport();
  const gathered = createGathering();
  const leftOut = createLeftOut();
  const memory = createRecordMemory();
  for await (const records of readRunLog(files, folder, report)) {
    records.forEach(gathered.add);
    records.forEach(leftOut.add);
    records.forEach(memory.add);
  }
  if (report.problem !== null) return { ok: false, error: report.problem };
  const found = gathered.result();
  if (found === null) return succeed(null);
  const listed = await files.list(folder);
  if (!listed.ok) return listed;
  const segments = listed.value.flatMap(({ name }) => segmentNumber(name) ?? []);
  const lastSegment = Math.max(1, ...segments);
  const { unsure, ...past } = found;
  const logEnd = { lastSegment, seq: past.written.seq, timeS: past.endS, unsure };
  return succeed({ ...past, logEnd, memory, leftOut, report });
}

function createGathering() {
  let header: LogHeader | null = null;
  let modelVersion = '';
  let written: LogRecord['stamp'] | null = null;
  /** The monotonic clock at the beginning of the run, less what it did not count; each input says it a little too late. */
  let beganS = Number.POSITIVE_INFINITY;
  let hasEnded = false;
  let heatOffCalledS: number | null = null;
  const inputs: RunInput[] = [];
  const changes: RecordedChange[] = [];
  const modelVersions = new Set<string>();
  let readings = 0;
  let lastMarkId = 0;
  let endS = 0;
  const unsure = createUnsureRecords();

  return {
    add(record: LogRecord): void {
      const { body, stamp } = record;
      unsure.add(record);
      // A later file's first record bears an earlier number, and may be of the process that goes on.
      written = body.kind === 'segment' ? (written ?? stamp) : stamp;
      if (body.kind === 'header' || body.kind === 'segment') {
        header ??= body.header;
        modelVersion ||= body.header.modelVersion;
        modelVersions.add(body.header.modelVersion);
      }
      if (body.kind === 'continued') {
        modelVersion = body.modelVersion;
        modelVersions.add(body.modelVersion);
        beganS = (body.clockS ?? stamp.monoS) - body.timeS;
      }
      if (body.kind === 'clock') beganS -= body.sleptS;
      if (body.kind === 'end') hasEnded = true;
      if (body.kind === 'change') {
        const { change } = body;
        changes.push(asRecorded(change));
        endS = Math.max(endS, change.timeS);
        if (change.kind === 'alarm-changed' && change.record.alarm === 'plateau-departure') {
          heatOffCalledS ??= change.record.raisedS;
        }
      }
      if (body.kind === 'mark') lastMarkId = Math.max(lastMarkId, body.markId);
      if (body.kind === 'readings') readings += body.readings.length;
      for (const input of inputsOfRecord(record)) {
        inputs.push(input);
        endS = Math.max(endS, input.timeS);
        beganS = Math.min(beganS, stamp.monoS - input.timeS);
      }
    },
    result() {
      if (header === null || written === null || hasEnded) return null;
      const writtenAtS = Number.isFinite(beganS) ? written.monoS - beganS : 0;
      const counted = { changes, readings, lastMarkId, heatOffCalledS, endS };
      return {
        header,
        inputs,
        modelVersions: [...modelVersions],
        modelVersion,
        written,
        writtenAtS,
        unsure: unsure.records(),
        ...counted,
      };
    },
  };
}
