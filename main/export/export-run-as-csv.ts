import { setImmediate } from 'node:timers/promises';
import { type CsvFormat, type Monitor, type RunSettings, writeReadingsCsv } from '#shared-core';
import type { RunToExport } from '../run-library/index.ts';
import { exportFileName } from './export-file-name.ts';
import type { MadeFile } from './pack/pack-zip.ts';

/** Inputs worked on before everything else gets its turn: some milliseconds. */
const inputsAtOnce = 2000;

/**
 * A run as one CSV file, in pieces as they are made; stages are those that the monitor gives the recorded inputs. It takes turns
 * with the recording of another run.
 */
export async function exportRunAsCsv(
  run: RunToExport,
  format: CsvFormat,
  createMonitor: (settings: RunSettings) => Monitor,
): Promise<MadeFile> {
  const monitor = createMonitor(run.settings);
  for (const [index, input] of run.inputs.entries()) {
    monitor.push(input);
    if (index % inputsAtOnce === 0) await setImmediate();
  }
  monitor.advanceTo(run.endS);
  const { stages } = monitor.verdicts();
  return {
    fileName: exportFileName(run.summary, 'csv'),
    content: writeReadingsCsv(
      {
        inputs: run.inputs,
        stages,
        endS: run.summary.ended === 'recording' ? null : run.endS,
        lateMarks: run.lateMarks,
      },
      format,
    ),
  };
}
