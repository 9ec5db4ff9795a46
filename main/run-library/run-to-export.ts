import type { Mark, RunInput, RunSettings, RunSummary } from '#shared-core';

/** A whole run in memory: what exports and reports are made from. */
export interface RunToExport {
  readonly summary: RunSummary;
  readonly settings: RunSettings;
  readonly appVersion: string;
  readonly modelVersion: string;
  readonly inputs: readonly RunInput[];
  readonly endS: number;
  /** Measurements made after the run, as marks at its end. */
  readonly lateMarks: readonly Mark[];
}
