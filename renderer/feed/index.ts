/** The stream from the service, taken into the stores. */

export { beforeNextPaint, type PaintingWindow } from './before-next-paint.ts';
export { type LiveFeedParts, startLiveFeed } from './live-feed.ts';
export { type RunReader, readWholeRun } from './read-whole-run.ts';
