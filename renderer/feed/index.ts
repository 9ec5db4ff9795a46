export { type LiveFeedParts, startLiveFeed } from './live-feed.ts';
export { type RunReader, readWholeRun } from './read-whole-run.ts';
