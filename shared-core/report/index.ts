/** Pages about a run: report, worksheet, tables, their words. */
export { bookTables } from './book-tables.ts';
export type { Block, DocumentTable, PrintedDocument } from './document.ts';
export { fermentSentence } from './ferment-sentence.ts';
export { groupSheetsOf } from './group-sheets-of.ts';
export { keyOf } from './key-of.ts';
export { proofMeaning, proofSightWords } from './proof-words.ts';
export { reportOf } from './report-of.ts';
export { markingSheetOf, worksheetOf } from './worksheet-of.ts';
