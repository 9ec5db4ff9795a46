import type { RunSettings } from '#shared-core';

/** Half of a 90 % interval is as many standard deviations of a normal distribution. */
const deviationsIn90 = 1.645;

/** Standard uncertainty of a strength by the interval that the ferment's judge gave it [% vol]. */
export function judgedDoubtAbv({
  strengthAbv: { low, high },
}: NonNullable<RunSettings['ferment']>): number {
  return (high - low) / 2 / deviationsIn90;
}
