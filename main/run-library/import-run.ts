import path from 'node:path';
import { setImmediate } from 'node:timers/promises';
import {
  detectEncoding,
  explainCsvProblem,
  fail,
  type LogBody,
  type LogHeader,
  loggerSilenceS,
  type Monitor,
  packReading,
  type ReadCsv,
  type Reading,
  type RequestAnswer,
  type RequestBody,
  type Result,
  type RunInput,
  type RunSettings,
  readReadingsCsvInSteps,
  runLogVersion,
  type ServiceProblem,
  succeed,
  worded,
  wordingOf,
} from '#shared-core';
import type { Clock } from '../clock/index.ts';
import { type FileLayer, type FileProblem, serviceProblemOf } from '../file-layer/index.ts';
import { createLogWriter, type LogWriter, segmentFile } from '../recorder/index.ts';
import { addLater } from './labels.ts';
import { createPackedInputs, type PackedInputs } from './packed-inputs.ts';
import type { RunLibrary } from './run-library.ts';

type CsvFacts = Omit<ReadCsv, 'inputs'>;
type CsvProblem = Parameters<typeof explainCsvProblem>[0];

/** What makes a run needs. */
export interface NewRunSetup {
  readonly library: RunLibrary;
  readonly files: FileLayer;
  readonly clock: Clock;
  readonly mayWrite: () => boolean;
  readonly runsFolder: string;
  readonly createMonitor: (settings: RunSettings) => Monitor;
  readonly app: { readonly version: string; readonly modelVersion: string };
}

/** Readings in one record of an imported run. */
const readingsTogether = 400;
/** Longest list of rejected rows that is shown; the number of the others is told. */
const mostRejectedShown = 200;

/** A file as it was read: what it says, and its inputs. */
interface TakenIn extends CsvFacts {
  readonly inputs: PackedInputs;
}

/** A file of another logger with what the person says of it. */
export interface ImportRequest extends Pick<RequestBody<'imports/finish'>, 'encoding' | 'mapping'> {
  readonly content: Uint8Array;
  readonly settings: RunSettings;
  /** When the run began as the person says; null leaves it to the file's own dates. */
  readonly startedAtIso: string | null;
}

/** Makes a run of the library from a CSV file of any logger, taking turns with the recording of another run. */
export async function importRun(
  setup: NewRunSetup,
  request: ImportRequest,
): Promise<Result<RequestAnswer<'imports/finish'>, ServiceProblem>> {
  const { library, files, clock, runsFolder } = setup;
  if (!setup.mayWrite()) return fail({ kind: 'folder-in-use', path: runsFolder });
  const read = await readInTurns(request);
  if (!read.ok) {
    return fail({ kind: 'request-invalid', message: explainCsvProblem(read.error) });
  }
  // Put together aside: cut off in the middle, it is no run of the library.
  const made = await library.makeFolderAside(clock.wallMs());
  if (!made.ok) return fail(serviceProblemOf(made.error));
  const { runId, folder } = made.value;
  const header: LogHeader = {
    format: 'still-head-run-log',
    version: runLogVersion,
    runId,
    startedAtIso: request.startedAtIso ?? ownStartIso(read.value),
    settings: atLoggersPace(request.settings, read.value),
    appVersion: setup.app.version,
    modelVersion: setup.app.modelVersion,
    timeScale: 1,
    rehearsal: false,
    source: null,
    origin: 'imported',
  };
  const written = await writeLog(setup, folder, header, read.value);
  const headed = written.ok ? await library.keepHeader(folder, header) : written;
  const kept = headed.ok ? await keepLateMarks(setup, folder, read.value) : headed;
  if (!kept.ok) {
    await files.remove(folder);
    return fail(serviceProblemOf(kept.error));
  }
  const named = await library.giveName(made.value);
  if (!named.ok) return fail(serviceProblemOf(named.error));
  const remarks = [...read.value.remarks];
  const rejectedRows = rejectedSentences(read.value);
  const wording = wordingOf([...remarks, ...rejectedRows]);
  return succeed({ runId, remarks, rejectedRows, wording });
}

/** When the run began by the file's own dates; empty where it does not say: the moment of import says nothing of it. */
function ownStartIso({ began }: CsvFacts): string {
  if (began === null) return '';
  const utc = new Date(began.calendarS * 1000);
  if (!began.isLocal) return utc.toISOString();
  // Written without a zone: this computer's, which stands beside the still.
  const local = new Date(
    utc.getUTCFullYear(),
    utc.getUTCMonth(),
    utc.getUTCDate(),
    utc.getUTCHours(),
    utc.getUTCMinutes(),
    utc.getUTCSeconds(),
  );
  return local.toISOString();
}

async function readInTurns(request: ImportRequest): Promise<Result<TakenIn, CsvProblem>> {
  const { content, encoding, mapping } = request;
  const text = new TextDecoder(encoding === 'auto' ? detectEncoding(content) : encoding).decode(
    content,
  );
  const inputs = createPackedInputs();
  const steps = readReadingsCsvInSteps(text, inputs.push, mapping ?? undefined);
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      return step.value.ok ? succeed({ ...step.value.value, inputs }) : step.value;
    }
    await setImmediate();
  }
}

async function keepLateMarks(
  { files, clock }: NewRunSetup,
  folder: string,
  { lateMarks }: CsvFacts,
): Promise<Result<void, FileProblem>> {
  if (lateMarks.length === 0) return succeed(undefined);
  const records = lateMarks.map(
    ({ markId, mark }) => ({ kind: 'late-mark', markId, mark }) as const,
  );
  return addLater(files, clock, folder, records);
}

/** A slow logger's pauses are no silence of its probe. */
function atLoggersPace(settings: RunSettings, { inputs }: TakenIn): RunSettings {
  const silenceS = Math.max(settings.probe.silenceS, loggerSilenceS(inputs));
  return { ...settings, probe: { ...settings.probe, silenceS } };
}

/** What could not be used, by its line. */
function rejectedSentences({ rejectedRows }: CsvFacts): string[] {
  const shown = rejectedRows
    .slice(0, mostRejectedShown)
    .map(({ line, reason }) => worded('Line {line}: {reason}.', { line, reason }));
  const more = rejectedRows.length - shown.length;
  return [...shown, ...(more > 0 ? [worded('… and {more} more.', { more })] : [])];
}

async function writeLog(
  { files, clock, createMonitor }: NewRunSetup,
  folder: string,
  header: LogHeader,
  read: TakenIn,
): Promise<Result<void, FileProblem>> {
  const opened = await createLogWriter(files, path.join(folder, segmentFile(1)));
  if (!opened.ok) return opened;
  const bodies = logBodies(header, read, createMonitor);
  const written = await writeAll(opened.value, bodies, clock);
  const synced = written.ok ? await opened.value.sync() : written;
  await opened.value.close();
  return synced.ok ? files.syncFolder(folder) : synced;
}

async function writeAll(
  writer: LogWriter,
  bodies: Iterable<LogBody>,
  clock: Clock,
): Promise<Result<void, FileProblem>> {
  let seq = 0;
  for (const body of bodies) {
    const stamp = { seq, monoS: clock.monotonicS(), wallMs: clock.wallMs() };
    const written = writer.write(body, stamp);
    if (!written.ok) return written;
    seq += 1;
    // A long file takes turns with the recording of another run.
    await setImmediate();
  }
  return succeed(undefined);
}

/** The records that a recording of these inputs would have, readings in larger groups. */
function* logBodies(
  header: LogHeader,
  read: TakenIn,
  createMonitor: NewRunSetup['createMonitor'],
): Generator<LogBody> {
  yield { kind: 'header', header };
  const conclude = concluding(() => createMonitor(header.settings));
  for (const inputs of groups(read.inputs)) {
    const [first] = inputs;
    if (first !== undefined && first.kind !== 'reading') yield first;
    else yield { kind: 'readings', readings: inputs.filter(isReading).map(packReading) };
    yield* conclude((monitor, reach) => {
      for (const input of inputs) {
        reach(input.timeS);
        monitor.push(input);
      }
    });
  }
  yield* conclude((monitor, reach) => {
    reach(read.endS);
    monitor.advanceTo(read.endS);
  });
  yield { kind: 'end', timeS: read.endS, how: 'clean' };
}

/** A monitor that fails keeps no reading from being taken in: the record says so, and it is not asked again. */
function concluding(create: () => Monitor) {
  let monitor: Monitor | null = null;
  let hasFailed = false;
  let timeS = 0;
  const reach = (atS: number) => {
    timeS = atS;
  };
  return (work: (monitor: Monitor, reach: (atS: number) => void) => void): readonly LogBody[] => {
    if (hasFailed) return [];
    try {
      monitor ??= create();
      work(monitor, reach);
      return monitor.takeChanges().map((change) => ({ kind: 'change', change }) as const);
    } catch (error) {
      hasFailed = true;
      const message = error instanceof Error ? error.message : String(error);
      return [{ kind: 'monitor-failed', timeS, message }];
    }
  };
}

/** Runs of readings in handy lengths; each mark and link change by itself. */
function* groups(inputs: Iterable<RunInput>): Generator<readonly RunInput[]> {
  let readings: Reading[] = [];
  for (const input of inputs) {
    if (isReading(input)) readings.push(input);
    if (readings.length === readingsTogether || (!isReading(input) && readings.length > 0)) {
      yield readings;
      readings = [];
    }
    if (!isReading(input)) yield [input];
  }
  if (readings.length > 0) yield readings;
}

function isReading(input: RunInput): input is Reading {
  return input.kind === 'reading';
}
