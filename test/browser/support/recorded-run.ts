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
  const scanner = createLogScanner();
  const items = scanner.push(readFileSync(path.join(folder, 'run.jsonl'), 'latin1'));
  const records = items.flatMap((item) => (item.kind === 'record' ? [item.record] : []));
  const header = records.flatMap(({ body }) => (body.kind === 'header' ? [body.header] : []))[0];
  if (header === undefined) throw new Error(`No header in ${folder}.`);
  return {
    header,
    inputs: records.flatMap(inputsOfRecord),
    changes: records.flatMap(({ body }) => (body.kind === 'change' ? [body.change] : [])),
    endS: endOf(records),
    damaged: items.length - records.length + (scanner.end() === null ? 0 : 1),
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

function endOf(records: readonly LogRecord[]): number {
  const end = records.flatMap(({ body }) => (body.kind === 'end' ? [body.timeS] : [])).at(-1);
  if (end === undefined) throw new Error('The run has no end record.');
  return end;
}
