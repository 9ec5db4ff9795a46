/** The stream from the service, taken into the stores. */

export { startLiveFeed } from './live-feed.ts';
export { createPaintPace, type PaintingWindow } from './paint-pace.ts';
export { readWholeRun } from './read-whole-run.ts';
