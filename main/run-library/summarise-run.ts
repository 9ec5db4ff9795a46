import {
  correctedRun,
  type LogHeader,
  type LogRecord,
  plateauOfRun,
  type Reading,
  type Result,
  type RunInput,
  type RunSummary,
  succeed,
  unpackReading,
  wordingOf,
} from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { readLabels } from './labels.ts';
import { createLeftOut, type LostReadings, type Unread } from './left-out.ts';
import { localIso } from './local-iso.ts';
import { logFiles } from './log-files.ts';
import { whyNoHeader } from './no-header.ts';
import { emptyReport, type ReadReport, readRunLog } from './read-run-log.ts';
import { startOfRunId } from './run-id.ts';
import { createSureness } from './sureness.ts';

/** A run's header and summary with what was found wrong in its files. */
export interface SummarisedRun {
  readonly summary: RunSummary;
  /** Null when no copy of it can be read. */
  readonly header: LogHeader | null;
  readonly report: ReadReport;
  readonly lost: readonly LostReadings[];
  readonly unread: readonly Unread[];
}

/** Derives a run's summary from its log alone; shows each record to whoever else wants to see it. */
export async function summariseRun(
  files: FileLayer,
  folder: string,
  runId: string,
  show: (record: LogRecord) => void = () => {},
): Promise<Result<SummarisedRun, FileProblem>> {
  const log = await logFiles(files, folder);
  if (!log.ok) return log;
  const labels = await readLabels(files, folder);
  if (!labels.ok) return labels;
  const report = emptyReport();
  const gathered = createGathering();
  const leftOut = createLeftOut();
  const sureness = createSureness();
  for await (const records of readRunLog(files, folder, report)) {
    for (const record of records) {
      gathered.add(record);
      leftOut.add(record);
      sureness.add(record);
      show(record);
    }
  }
  if (report.problem !== null) return { ok: false, error: report.problem };
  const { corrections } = labels.value;
  const recorded = gathered.header() ?? labels.value.header;
  const { sentences = [], ...corrected } = recorded
    ? correctedRun(recorded, corrections, localIso)
    : {};
  const header = recorded && { ...recorded, ...corrected };
  const found = gathered.result(header);
  const missing = leftOut.sentences(report);
  const why = header === null ? await whyNoHeader(files, folder) : null;
  if (why?.ok === false) return why;
  const summary: RunSummary = {
    runId,
    name: labels.value.label?.name ?? header?.settings.name ?? runId,
    notes: labels.value.label?.notes ?? '',
    startedAtIso:
      header?.startedAtIso ??
      (startOfRunId(runId) ?? new Date(found.firstWallMs ?? 0)).toISOString(),
    durationS: found.endS,
    readings: found.readings,
    ended: found.ended,
    ...(sureness.isUnsure() && { unsure: true }),
    rehearsal: header?.rehearsal ?? false,
    imported: header?.origin === 'imported',
    plateau: found.plateau,
    heatOffCalledS: found.heatOffCalledS,
    corrections: [...sentences],
    leftOut: [...missing],
    ...(sentences.length + missing.length > 0 && {
      wording: wordingOf([...sentences, ...missing]),
    }),
    damagedRecords: report.missingRecords,
    unreadable: why && { why: why.value, message: '' },
  };
  return succeed({ summary, header, report, lost: leftOut.lost(), unread: leftOut.unread() });
}

function createGathering() {
  let header: LogHeader | null = null;
  let firstWallMs: number | null = null;
  let endS = 0;
  let ended: RunSummary['ended'] = 'cut-off';
  let readings = 0;
  let heatOffCalledS: number | null = null;
  const head = createHeadReadings();
  /** What else says of the head what it means: marks and measured pressures. */
  const others: RunInput[] = [];

  return {
    add({ body, stamp }: LogRecord): void {
      firstWallMs ??= stamp.wallMs;
      if (body.kind === 'header') header = body.header;
      if (body.kind === 'segment') header ??= body.header;
      if ('timeS' in body) endS = Math.max(endS, body.timeS);
      if (body.kind === 'end') ended = body.how;
      if (body.kind === 'change') {
        const { change } = body;
        if (change.kind === 'alarm-changed' && change.record.alarm === 'plateau-departure') {
          heatOffCalledS ??= change.record.raisedS;
        }
      }
      if (body.kind === 'mark') others.push(body);
      if (body.kind !== 'readings') return;
      for (const row of body.readings) {
        const reading = unpackReading(row);
        const { timeS, channel, quality } = reading;
        readings += 1;
        endS = Math.max(endS, timeS);
        if (channel === 'head' && quality === 'good') head.add(reading);
        if (channel === 'air-pressure') others.push(reading);
      }
    },
    header: () => header,
    /** `as`: the header with what was put right later. */
    result(as: LogHeader | null) {
      const inputs = {
        *[Symbol.iterator]() {
          yield* others;
          yield* head.all();
        },
      };
      const settings = as?.settings;
      const found = settings === undefined ? null : plateauOfRun({ settings, inputs, endS });
      return { firstWallMs, endS, ended, readings, heatOffCalledS, plateau: found?.mean ?? null };
    },
  };
}

/** Good readings of the head as bare numbers: a run may have millions of them. */
function createHeadReadings() {
  const timesS: number[] = [];
  const values: number[] = [];
  return {
    add({ timeS, value }: Reading): void {
      timesS.push(timeS);
      values.push(value);
    },
    *all(): Generator<Reading> {
      for (const [index, timeS] of timesS.entries()) {
        const value = values[index] ?? 0;
        yield { kind: 'reading', timeS, channel: 'head', value, unit: '°C', quality: 'good' };
      }
    },
  };
}
