/** A run as files for others: tables, pack, workbook, pages. */

export { exportFileName } from './export-file-name.ts';
export { exportRunAsCsv } from './export-run-as-csv.ts';
export { fermentsOrder } from './pack/ferment/ferments-order.ts';
export type { PackProgress } from './pack/pack-entries.ts';
export type { PackRun } from './pack/pack-run.ts';
export { createPackShelf, type PackShelf, type ShelfProblem } from './pack/pack-shelf.ts';
export { type PackZip, packZip } from './pack/pack-zip.ts';
export { distillationsOrder, type PackRequest, writePack } from './pack/write-pack.ts';
export { runFilesZip } from './run-files-zip.ts';
