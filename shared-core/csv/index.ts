export { type ColumnMapping, columnMappingSchema, mappedLayout } from './column-mapping.ts';
export { type ColumnRole, columnRole } from './column-title.ts';
export { type CsvDialect, type CsvFormat, csvDialects } from './csv-dialect.ts';
export { type ChannelColumn, type CsvLayout, detectLayout } from './csv-layout.ts';
export { detectDelimiter } from './detect-delimiter.ts';
export { detectEncoding, type TextEncodingName } from './detect-encoding.ts';
export { explainCsvProblem } from './explain-csv-problem.ts';
export { loggerSilenceS } from './logger-silence.ts';
export { readMarkCell, writeMarkCell } from './mark-cell.ts';
export { type CsvRow, mostColumns, parseCsv } from './parse-csv.ts';
export {
  type CsvProblem,
  type ReadCsv,
  type RejectedRow,
  readReadingsCsv,
  readReadingsCsvInSteps,
} from './read-readings-csv.ts';
export { type DateOrder, readTime, type TimeCell } from './read-time.ts';
export { createTimeReader, type FileBeginning, type TimeReader } from './time-reader.ts';
export { type CsvCell, writeCsvRow } from './write-csv-row.ts';
export { writeReadingsCsv } from './write-readings-csv.ts';
