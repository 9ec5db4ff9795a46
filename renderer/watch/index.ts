export { UrgentBar } from './urgent-bar.tsx';
export { useMarkKeys } from './use-mark-keys.ts';
export { WatchPlace } from './watch-place.tsx';
export { WatchRun } from './watch-run.tsx';
