import { countTextBytes, type LineOutcome, type SerialSource } from '#shared-core';
import type { Clock } from '../../clock/index.ts';
import { createTalk } from '../talk/create-talk.ts';
import type { SearchLine } from './search-line.ts';

/** What one speed and language gave. */
export interface Trial {
  readonly source: SerialSource;
  readonly outcomes: readonly LineOutcome[];
  readonly bytes: number;
  readonly textBytes: number;
  readonly identity: string | null;
}

export interface TrialLimits {
  readonly patienceS: number;
  /** Lines with readings that settle it. */
  readonly enough: number;
}

const stepS = 0.05;
/** Bytes after which noise is known to be noise. */
const enoughNoise = 300;

/** Converses in one language for a while and reports what came of it. */
export async function tryTalk(
  line: SearchLine,
  source: SerialSource,
  limits: TrialLimits,
  clock: Clock,
): Promise<Trial> {
  const outcomes: LineOutcome[] = [];
  let bytes = 0;
  let textBytes = 0;
  const talk = createTalk(source, {
    send: (question) => line.send(question),
    outcomes: (more) => outcomes.push(...more),
  });
  talk.opened(clock.monotonicS());
  line.listen((chunk) => {
    bytes += chunk.length;
    textBytes += countTextBytes(chunk);
    talk.receive(chunk, clock.monotonicS());
  });
  const endS = clock.monotonicS() + limits.patienceS;
  const settled = () =>
    outcomes.filter(understood).length >= limits.enough ||
    (bytes > enoughNoise && outcomes.filter(understood).length === 0 && textBytes < 0.7 * bytes);
  while (clock.monotonicS() < endS && !settled()) {
    talk.tick(clock.monotonicS());
    await line.wait(stepS);
  }
  line.listen(() => {});
  return { source, outcomes, bytes, textBytes, identity: talk.identity() };
}

/** A line counts when it gave a reading that can be true and nothing else was wrong with it. */
export function understood({ values, rejections }: LineOutcome): boolean {
  return rejections.length === 0 && values.some(({ quality }) => quality !== 'bad');
}
