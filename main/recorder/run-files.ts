/** The names of the files in a run's folder. */
export const labelsFile = 'labels.jsonl';
export const summaryFile = 'summary.json';

/** The log file of that number; the first one is `run.jsonl`. */
export function segmentFile(segment: number): string {
  return segment === 1 ? 'run.jsonl' : `run-${segment}.jsonl`;
}

/** The number of a log file, or undefined for any other file. */
export function segmentNumber(fileName: string): number | undefined {
  const segment = Number(/[1-9]\d*/.exec(fileName)?.[0] ?? 1);
  return segmentFile(segment) === fileName ? segment : undefined;
}

/** Where the torn end of a log file is kept. */
export function tornFile(fileName: string, offset: number): string {
  return `${fileName}.torn-at-${offset}`;
}
