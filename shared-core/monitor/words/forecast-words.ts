import type { TwinOutlook } from '../../twin/index.ts';
import type { ForecastDrift } from '../conclude/forecast-check.ts';

/** A mark is asked for only when it would narrow the range by this share. */
const worthAsking = 0.2;
const askAgainAfterS = 300;

/** Asks for a reading of the receiver when that would narrow the forecast most; null otherwise. */
export function volumeWouldHelp(ahead: TwinOutlook, sinceVolumeS: number): string | null {
  if (ahead.volumeWouldNarrow < worthAsking || sinceVolumeS < askAgainAfterS) return null;
  return `Read the volume to narrow this by ${10 * Math.round(10 * ahead.volumeWouldNarrow)} %.`;
}

/** Why the range is wider than the model would have it, or why no end is told. */
export function doubtWords({ sinceS, movedS }: ForecastDrift, isTold: boolean): string {
  const minutes = (seconds: number): string => `${Math.max(1, Math.round(seconds / 60))} min`;
  const moved = `after ${minutes(sinceS)} of boiling the end lies ${minutes(Math.abs(movedS))} ${movedS > 0 ? 'later' : 'earlier'} than was expected then`;
  const follows = isTold ? 'the range is wider for it' : 'no end is told until it does';
  return `This still does not behave as the model expects: ${moved}; ${follows}. Go by the head.`;
}
