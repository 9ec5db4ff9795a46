import type { ProbeStatus, Reading } from '#shared-core';
import { usePrepare } from '../parts/index.ts';
import { isSimulated } from '../probe/index.ts';
import { correctedHeadC } from '../stores/index.ts';

/**
 * What a reading will be told as in Watch, by the calibration that is in use; null where it stands as it was sent. A simulated still is
 * rehearsed without one.
 */
export function useHeadAsWatched(
  probe: ProbeStatus | null,
): (reading: Pick<Reading, 'channel' | 'value' | 'unit'>) => number | null {
  const correction = usePrepare((state) => state.draft.correction);
  return ({ channel, value, unit }) => {
    const isCorrected = channel === 'head' && unit === '°C' && probe !== null;
    if (correction === null || !isCorrected || isSimulated(probe)) return null;
    return correctedHeadC(correction, value);
  };
}
