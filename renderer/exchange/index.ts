/** Files that come and go: packs fetched, tables sent. */
export { exportRun } from './export-run.ts';
export { PackProgress } from './pack-progress.tsx';
export { saveFile } from './save-file.ts';
export { type SentFile, sendFile, sizeProblem } from './send-file.ts';
export { type PackMaking, usePack } from './use-pack.ts';
