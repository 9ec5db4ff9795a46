export { VolumeOfRun } from './volume-of-run.tsx';
