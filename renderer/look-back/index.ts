/** Recorded runs: found, opened, corrected, compared. */
export { LookBackPlace } from './look-back-place.tsx';
