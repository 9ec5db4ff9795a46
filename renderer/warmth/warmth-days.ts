import { tallyWarmth, type WarmthReport } from '#shared-core';
import { locale } from '../words/index.ts';
import type { WarmthBand } from './band-draft.ts';

export type WarmthTally = NonNullable<ReturnType<typeof tallyWarmth>>;
type WarmthSpan = WarmthReport['stretches'][number];

/** A day of a ferment's warmth, by the clock of whoever looks. */
export interface WarmthDay {
  readonly day: string;
  readonly tally: WarmthTally;
}

/** The days of a ferment, the newest first. */
export function warmthDays(
  stretches: readonly WarmthSpan[],
  band: WarmthBand,
): readonly WarmthDay[] {
  const days = new Map<string, WarmthSpan[]>();
  for (const stretch of stretches) {
    const day = new Date(stretch.atIso).toLocaleDateString(locale(), {
      weekday: 'long',
      day: 'numeric',
      month: 'long',
    });
    const known = days.get(day);
    if (known) known.push(stretch);
    else days.set(day, [stretch]);
  }
  return [...days]
    .flatMap(([day, spans]) => {
      const tally = tallyWarmth(spans, band);
      return tally === null ? [] : [{ day, tally }];
    })
    .reverse();
}
