import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import {
  createLogScanner,
  createMonitor,
  inputsOfRecord,
  type LogHeader,
  type LogRecord,
  type MonitorChange,
  type RunInput,
  type Verdicts,
} from '#shared-core';
import type { LoggedChange } from '../../../shared-core/run-log/log-record.ts';

/** A run as it stands on the disk, read without any of the app's services. */
export interface RecordedRun {
  readonly header: LogHeader;
  readonly inputs: readonly RunInput[];
  /** Stages, alarms and events as the recorder wrote them down. */
  readonly changes: readonly LoggedChange[];
  readonly endS: number;
  readonly damaged: number;
}

/** The only run in the library, or the named one. */
export function readRecordedRun(runsFolder: string, runId?: string): RecordedRun {
  const folder = path.join(runsFolder, runId ?? onlyRun(runsFolder));
  const scanned = logFiles(folder).map((file) => {
    const scanner = createLogScanner();
    const items = scanner.push(readFileSync(file, 'latin1'));
    const read = items.flatMap((item) => (item.kind === 'record' ? [item.record] : []));
    return { read, damaged: items.length - read.length + (scanner.end() === null ? 0 : 1) };
  });
  const records = eachOnce(scanned.flatMap(({ read }) => read));
  const header = records.flatMap(({ body }) => (body.kind === 'header' ? [body.header] : []))[0];
  if (header === undefined) throw new Error(`No header in ${folder}.`);
  return {
    header,
    inputs: records.flatMap(inputsOfRecord),
    changes: records.flatMap(({ body }) => (body.kind === 'change' ? [body.change] : [])),
    endS: endOf(records),
    damaged: scanned.reduce((sum, { damaged }) => sum + damaged, 0),
  };
}

export interface Replayed {
  readonly changes: readonly MonitorChange[];
  readonly verdicts: Verdicts;
}

/** What the monitor concludes when the recorded inputs are fed to it again, `stepS` at a time. */
export function replayRun(run: RecordedRun, stepS: number): Replayed {
  const monitor = createMonitor(run.header.settings);
  const changes: MonitorChange[] = [];
  let clockS = 0;
  for (const input of run.inputs) {
    // As a replay does at any speed: time is advanced in steps of its own between the inputs.
    for (; clockS + stepS < input.timeS; clockS += stepS) monitor.advanceTo(clockS);
    monitor.push(input);
    changes.push(...monitor.takeChanges());
  }
  monitor.advanceTo(run.endS);
  changes.push(...monitor.takeChanges());
  return { changes, verdicts: monitor.verdicts() };
}

export function runIds(runsFolder: string): readonly string[] {
  return readdirSync(runsFolder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && /^\d{8}T/.test(entry.name))
    .map(({ name }) => name)
    .sort();
}

function onlyRun(runsFolder: string): string {
  const [runId, ...others] = runIds(runsFolder);
  if (runId === undefined || others.length > 0) throw new Error(`Not one run in ${runsFolder}.`);
  return runId;
}

/** The files of a log in their order: a run that goes on has a file more. */
function logFiles(folder: string): readonly string[] {
  const numberOf = (name: string) => Number(/^run-(\d+)\.jsonl$/.exec(name)?.[1] ?? 1);
  return readdirSync(folder)
    .filter((name) => /^run(-\d+)?\.jsonl$/.test(name))
    .sort((a, b) => numberOf(a) - numberOf(b))
    .map((name) => path.join(folder, name));
}

/** A later file repeats what was not surely saved before it; its own opening bears the number of the last that was. */
function eachOnce(records: readonly LogRecord[]): readonly LogRecord[] {
  const known = new Set<number>();
  return records.filter(({ body, stamp }) => {
    if (body.kind === 'segment' || known.has(stamp.seq)) return false;
    known.add(stamp.seq);
    return true;
  });
}

function endOf(records: readonly LogRecord[]): number {
  const end = records.flatMap(({ body }) => (body.kind === 'end' ? [body.timeS] : [])).at(-1);
  if (end === undefined) throw new Error('The run has no end record.');
  return end;
}
