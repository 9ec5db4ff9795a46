import type { TwinOutlook } from '../../twin/index.ts';

/** A mark is asked for only when it would narrow the range by this share. */
const worthAsking = 0.2;
const askAgainAfterS = 300;

/** Asks for a reading of the receiver when that would narrow the forecast most; null otherwise. */
export function volumeWouldHelp(ahead: TwinOutlook, sinceVolumeS: number): string | null {
  if (ahead.volumeWouldNarrow < worthAsking || sinceVolumeS < askAgainAfterS) return null;
  return `Read the volume to narrow this by ${10 * Math.round(10 * ahead.volumeWouldNarrow)} %.`;
}
