import type { RunSettings } from '#shared-core';

/** What the head is at [°C] where the probe sends this [°C], by the calibration of its run: as the monitor takes it. */
export function correctedHeadC(
  { offsetK, gain }: Pick<RunSettings['probe'], 'offsetK' | 'gain'>,
  readingC: number,
): number {
  return offsetK + gain * readingC;
}
