/** The place beside a run under way. */
export { FermentScreen } from './ferment-screen.tsx';
export { UrgentBar } from './urgent-bar.tsx';
export { WatchPlace } from './watch-place.tsx';
export { WatchRun } from './watch-run.tsx';
