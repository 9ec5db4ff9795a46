import {
  type CsvFormat,
  type ExportedFile,
  type Monitor,
  type RunSettings,
  writeReadingsCsv,
} from '#shared-core';
import type { RunToExport } from '../run-library/index.ts';
import { exportFileName } from './export-file-name.ts';

/** A run as one CSV file; stages are those that the monitor gives the recorded inputs. */
export function exportRunAsCsv(
  run: RunToExport,
  format: CsvFormat,
  createMonitor: (settings: RunSettings) => Monitor,
): ExportedFile {
  const monitor = createMonitor(run.settings);
  for (const input of run.inputs) monitor.push(input);
  monitor.advanceTo(run.endS);
  const { stages } = monitor.verdicts();
  const pieces = [...writeReadingsCsv({ inputs: run.inputs, stages, endS: run.endS }, format)];
  return {
    fileName: exportFileName(run.summary, 'csv'),
    mediaType: 'text/csv;charset=utf-8',
    encoding: 'text',
    content: pieces.join(''),
  };
}
