/** A run against volume collected, as its report draws it. */
export { VolumeOfRun } from './volume-of-run.tsx';
