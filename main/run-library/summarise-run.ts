import type { LogHeader, LogRecord, Result, RunSummary, StageSpan } from '#shared-core';
import { succeed, unpackReading } from '#shared-core';
import type { FileLayer, FileProblem } from '../file-layer/index.ts';
import { readLabels } from './labels.ts';
import { emptyReport, type ReadReport, readRunLog } from './read-run-log.ts';
import { startOfRunId } from './run-id.ts';

/** A run's header and summary with what was found wrong in its files. */
export interface SummarisedRun {
  readonly summary: RunSummary;
  /** Null when no copy of it can be read. */
  readonly header: LogHeader | null;
  readonly report: ReadReport;
}

/** Derives a run's summary from its log alone. */
export async function summariseRun(
  files: FileLayer,
  folder: string,
  runId: string,
): Promise<Result<SummarisedRun, FileProblem>> {
  const labels = await readLabels(files, folder);
  if (!labels.ok) return labels;
  const report = emptyReport();
  const gathered = createGathering();
  for await (const records of readRunLog(files, folder, report)) {
    for (const record of records) gathered.add(record);
  }
  if (report.problem !== null) return { ok: false, error: report.problem };
  const found = gathered.result();
  const header = found.header ?? labels.value.header;
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
    rehearsal: header?.rehearsal ?? false,
    imported: header?.origin === 'imported',
    plateauC: found.plateauC,
    heatOffCalledS: found.heatOffCalledS,
    damagedRecords: report.missingRecords + report.unknownRecords,
    unreadable: header === null ? { why: 'header-lost', message: '' } : null,
  };
  return succeed({ summary, header, report });
}

function createGathering() {
  let header: LogHeader | null = null;
  let firstWallMs: number | null = null;
  let endS = 0;
  let ended: RunSummary['ended'] = 'cut-off';
  let readings = 0;
  let heatOffCalledS: number | null = null;
  const spans: StageSpan[] = [];
  const headTimesS: number[] = [];
  const headTemperaturesC: number[] = [];

  return {
    add({ body, stamp }: LogRecord): void {
      firstWallMs ??= stamp.wallMs;
      if (body.kind === 'header') header = body.header;
      if (body.kind === 'segment') header ??= body.header;
      if ('timeS' in body) endS = Math.max(endS, body.timeS);
      if (body.kind === 'end') ended = body.how;
      if (body.kind === 'change') {
        const { change } = body;
        if (change.kind === 'stage-entered') spans.push(change.span);
        if (change.kind === 'alarm-changed' && change.record.alarm === 'plateau-departure') {
          heatOffCalledS ??= change.record.raisedS;
        }
      }
      if (body.kind !== 'readings') return;
      for (const row of body.readings) {
        const { timeS, channel, value, quality } = unpackReading(row);
        readings += 1;
        endS = Math.max(endS, timeS);
        if (channel === 'head' && quality === 'good') {
          headTimesS.push(timeS);
          headTemperaturesC.push(value);
        }
      }
    },
    result() {
      const plateauC = plateauTemperatureC(spans, headTimesS, headTemperaturesC);
      return { header, firstWallMs, endS, ended, readings, heatOffCalledS, plateauC };
    },
  };
}

/** The median head temperature of the main fraction, to the hundredth; null without one. */
function plateauTemperatureC(
  spans: readonly StageSpan[],
  timesS: readonly number[],
  temperaturesC: readonly number[],
): number | null {
  const index = spans.findIndex(({ stage }) => stage === 'main-fraction');
  const span = spans[index];
  if (span === undefined) return null;
  const toS = spans[index + 1]?.fromS ?? Number.POSITIVE_INFINITY;
  const inside = temperaturesC.filter((_, position) => {
    const timeS = timesS[position] ?? -1;
    return timeS >= span.fromS && timeS < toS;
  });
  inside.sort((a, b) => a - b);
  const median = inside[Math.floor(inside.length / 2)];
  return median === undefined ? null : Math.round(median * 100) / 100;
}
