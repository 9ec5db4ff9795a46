import { worded } from '../wording/index.ts';
import type { TwoPartClock } from './column-title.ts';
import { readTime } from './read-time.ts';

/** What clock times of two parts are taken for, and the doubt that is left, in a sentence. */
export interface TwoPartJudgement {
  readonly clock: TwoPartClock;
  readonly remark: string | null;
}

/** Before this hour no class is at the still, so such a time is hardly one of the day. */
const earliestHour = 6;
/** A logger's rows keep one distance, up to the few it misses. */
const evenShare = 0.8;

/**
 * Tells `mm:ss` from `h:mm` by all the cells of a time column whose title says neither; null when the
 * column holds no such times. No day has more than 23 hours, and a clock that goes on to `h:mm:ss` had
 * left out its hours. Times from zero on at even distances are a logger's seconds; times from the morning on
 * are those of a day. What is left stays hours and minutes, with the doubt said.
 *
 * Source: this project's rule; no standard.
 */
export function judgeTwoPartClock(cells: Iterable<string>): TwoPartJudgement | null {
  let firstHour: number | null = null;
  let lastMinutes = 0;
  let hasThreeParts = false;
  const rowsByStep = new Map<number, number>();
  let steps = 0;
  for (const cell of cells) {
    const time = readTime(cell);
    if (time?.kind === 'clock') hasThreeParts = true;
    if (time?.kind !== 'two-part-clock') continue;
    if (time.first > 23) return { clock: 'mm:ss', remark: null };
    const minutes = 60 * time.first + time.second;
    if (firstHour !== null) {
      const step = minutes - lastMinutes;
      rowsByStep.set(step, (rowsByStep.get(step) ?? 0) + 1);
      steps += 1;
    }
    firstHour ??= time.first;
    lastMinutes = minutes;
  }
  if (firstHour === null) return null;
  if (hasThreeParts) return { clock: 'mm:ss', remark: null };
  if (firstHour >= earliestHour) return { clock: 'h:mm', remark: null };
  const isEven = Math.max(0, ...rowsByStep.values()) >= evenShare * steps && !rowsByStep.has(0);
  return firstHour === 0 && steps > 0 && isEven ? doubtful('mm:ss') : doubtful('h:mm');
}

function doubtful(clock: TwoPartClock): TwoPartJudgement {
  const remark =
    clock === 'mm:ss'
      ? worded(
          'The times were read as minutes and seconds. If they are hours and minutes, write "(h:mm)" behind the title of their column.',
        )
      : worded(
          'The times were read as hours and minutes. If they are minutes and seconds, write "(mm:ss)" behind the title of their column.',
        );
  return { clock, remark };
}
