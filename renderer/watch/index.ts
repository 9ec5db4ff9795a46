export { useMarkKeys } from '../parts/use-mark-keys.ts';
export { UrgentBar } from './urgent-bar.tsx';
export { WatchPlace } from './watch-place.tsx';
export { WatchRun } from './watch-run.tsx';
