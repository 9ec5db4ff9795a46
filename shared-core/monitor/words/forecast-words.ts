import type { TwinOutlook } from '../../twin/index.ts';
import { worded } from '../../wording/index.ts';
import type { ForecastDrift } from '../conclude/forecast-check.ts';

/** A mark is asked for only when it would narrow the range by this share. */
const worthAsking = 0.2;
/** Who has just read it is left in peace [s]; chosen here. */
const askAgainAfterS = 300;

/** Asks for a reading of the receiver when that would narrow the forecast most; null otherwise. */
export function volumeWouldHelp(ahead: TwinOutlook, sinceVolumeS: number): string | null {
  if (ahead.volumeWouldNarrow < worthAsking || sinceVolumeS < askAgainAfterS) return null;
  return worded('Read the volume to narrow this by {percent} %.', {
    percent: 10 * Math.round(10 * ahead.volumeWouldNarrow),
  });
}

/** Why the range is wider than the model would have it, or why no end is told. */
export function doubtWords({ sinceS, movedS }: ForecastDrift, isTold: boolean): string {
  const minutes = (seconds: number): string => `${Math.max(1, Math.round(seconds / 60))} min`;
  const moved = movedWords({ after: minutes(sinceS), by: minutes(Math.abs(movedS)) }, movedS > 0);
  const follows = isTold
    ? worded('the range is wider for it')
    : worded('no end is told until it does');
  return worded(
    'This still does not behave as the model expects: {moved}; {follows}. Go by the head.',
    { moved, follows },
  );
}

function movedWords(
  values: { readonly after: string; readonly by: string },
  later: boolean,
): string {
  return later
    ? worded('after {after} of boiling the end lies {by} later than was expected then', values)
    : worded('after {after} of boiling the end lies {by} earlier than was expected then', values);
}
