export { WatchPlace } from './watch-place.tsx';
export { WatchRun } from './watch-run.tsx';
