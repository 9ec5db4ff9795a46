/** What was collected and measured in a run, as tables and forms. */
export { BooksOfRun } from './books-of-run.tsx';
export { MeasurementList } from './measurement-list.tsx';
export { receiverCount } from './receiver-count.ts';
export { useLateMarks } from './use-late-marks.ts';
