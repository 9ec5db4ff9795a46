export { exportFileName } from './export-file-name.ts';
export { exportRunAsCsv } from './export-run-as-csv.ts';
