/** A recorded run as a film: made, played, compared with what was called. */
export { type Agreement, agreementWords } from './agreement.ts';
export { type Film, frameIndexAt, frameTimeS, type RecordedRun } from './film.ts';
export { makeFilm } from './make-film.ts';
export { RenameDialog } from './rename-dialog.tsx';
export { ReplayBar } from './replay-bar.tsx';
export { type FilmProgress, useFilm } from './use-film.ts';
export { useReplay } from './use-replay.ts';
