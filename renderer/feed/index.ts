/** The stream from the service, taken into the stores. */
export { beforeNextPaint, type PaintingWindow } from './before-next-paint.ts';
export { startLiveFeed } from './live-feed.ts';
export { readWholeRun } from './read-whole-run.ts';
