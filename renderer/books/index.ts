export { BooksOfRun } from './books-of-run.tsx';
export { MeasurementList } from './measurement-list.tsx';
export { receiverCount } from './receiver-count.ts';
export { useLateMarks } from './use-late-marks.ts';
