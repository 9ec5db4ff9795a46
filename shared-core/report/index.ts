/** Pages about a run: report, worksheets, tables, their words, for each kind of run. */
export { bookTables } from './book-tables.ts';
export { distillationKind } from './distillation-kind.ts';
export type { Block, DocumentTable, PrintedDocument } from './document.ts';
export { fermentKind } from './ferment-kind.ts';
export { fermentSentence } from './ferment-sentence.ts';
export { fromFermentFigure } from './from-ferment-blocks.ts';
export { proofMeaning, proofSightWords } from './proof-words.ts';
export type { RunKind } from './run-kind.ts';
export { cutsByVolumeTable } from './volume-blocks.ts';
