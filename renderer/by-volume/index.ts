/** A run against volume collected, as its report draws it. */
export { DrawnFigure } from './drawn-figure.tsx';
export { VolumeOfRun } from './volume-of-run.tsx';
