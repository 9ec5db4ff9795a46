import type { CsvFormat, cautionsAt, RunKind } from '#shared-core';
import type { Sheet } from '../workbook/workbook.ts';
import type { ZipEntry } from '../zip-stream.ts';
import { type Table, type TableField, tableCsv } from './table.ts';

/** What every run of a pack has once it was worked through, whatever kind of run it is. */
export interface PackedRun {
  readonly runId: string;
  readonly name: string;
  readonly appVersion: string;
}

/** A table with the way in which it is written. */
export interface CsvTable extends Pick<Table, 'name' | 'title' | 'primaryKey'> {
  readonly fields: readonly TableField[];
  readonly csv: (format: CsvFormat) => ZipEntry['content'];
}

/** A table that is written row by row. */
export function byRows(table: Table): CsvTable {
  return { ...table, csv: (format) => tableCsv(table, format) };
}

/** What README.txt says of a kind of run. */
interface KindInWords<Study> {
  /** Its first line. */
  readonly title: string;
  /** What is said of a run behind its name, each in brackets. */
  readonly remarksOn: (study: Study) => readonly string[];
  /** Which file is what; lines that only several runs have where there are some. */
  readonly files: (isSeveral: boolean) => readonly string[];
  readonly remarks: readonly string[];
  readonly cautions: Parameters<typeof cautionsAt>[0];
}

/**
 * A kind of run as its pack needs it: what is worked out of a run of it, in tables, drawings and pages. Dialects, pictures, sizes,
 * hashes, names of files and the order in which they lie follow from it.
 */
export interface PackKind<Study extends PackedRun> extends RunKind<Study> {
  /** What the pack holds, in a sentence for its descriptor. */
  readonly description: string;
  /** Where numbers come from that nobody measured here. */
  readonly dataSources: readonly string[];
  readonly readMe: KindInWords<Study>;
  /** Tables that each run has for itself. */
  readonly ownTables: (study: Study, stem: string) => readonly CsvTable[];
  /** Tables of all runs; every one with a `run_id` leads to the one named `runs`. */
  readonly tables: (studies: readonly Study[]) => readonly Table[];
  /** Sheets of the workbook. */
  readonly sheets: (studies: readonly Study[]) => readonly Sheet[];
  /** Files that belong to no other sort. */
  readonly besides: (study: Study, stem: string) => readonly ZipEntry[];
  readonly notebooks: () => readonly ZipEntry[];
}
