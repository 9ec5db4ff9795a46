/** Tables of readings, read and written. */
export { type ColumnMapping, columnMappingSchema } from './column-mapping.ts';
export { columnRole } from './column-title.ts';
export { type CsvDialect, type CsvFormat, csvDialects } from './csv-dialect.ts';
export { daySerials } from './day-serial.ts';
export { detectDelimiter } from './detect-delimiter.ts';
export { detectEncoding } from './detect-encoding.ts';
export { explainCsvProblem } from './explain-csv-problem.ts';
export { loggerSilenceS } from './logger-silence.ts';
export { lookAtCsv } from './look-at-csv.ts';
export { writeMarkCell } from './mark-cell.ts';
export { parseCsv } from './parse-csv.ts';
export {
  type ReadCsv,
  readReadingsCsv,
  readReadingsCsvInSteps,
} from './read-readings-csv.ts';
export { isNewestFirst } from './time-column.ts';
export { createTimeReader } from './time-reader.ts';
export { writeCsvRow } from './write-csv-row.ts';
export { writeReadingsCsv } from './write-readings-csv.ts';
