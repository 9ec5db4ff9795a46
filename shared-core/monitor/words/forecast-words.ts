import type { TwinOutlook } from '../../twin/index.ts';
import { span } from './numbers.ts';

/** A mark is asked for only when it would narrow the range by this share. */
const worthAsking = 0.2;
const askAgainAfterS = 300;

/** Asks for a reading of the receiver when that would narrow the forecast most; null otherwise. */
export function volumeWouldHelp(ahead: TwinOutlook, sinceVolumeS: number): string | null {
  if (ahead.volumeWouldNarrow < worthAsking || sinceVolumeS < askAgainAfterS) return null;
  const width = ahead.limitInS.high - ahead.limitInS.low;
  const narrower = width * (1 - ahead.volumeWouldNarrow);
  return `Read the volume in the receiver: the end of the main fraction is known to within ${span(width)}, with the volume to about ${span(narrower)}.`;
}
