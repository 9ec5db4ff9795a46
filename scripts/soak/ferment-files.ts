import type { KeptFerment } from '#shared-core';
import { fermentLineText, fermentLog } from '../../main/ferments/ferment-lines.ts';
import {
  type Keeping,
  type WarmthSpan,
  warmthLineText,
  warmthLog,
} from '../../main/ferments/warmth-lines.ts';

/** The text of a ferment's file, as the program would have written it. */
export function fermentFileText(
  { fermentId, stated, entries }: Pick<KeptFerment, 'fermentId' | 'stated' | 'entries'>,
  keptAtIso: string,
): string {
  return [
    fermentLineText({ kind: 'begun', ...fermentLog, keptAtIso, fermentId, stated }),
    ...entries.map((entry) =>
      fermentLineText({
        kind: 'entry',
        keptAtIso: entry.keptAtIso,
        entryId: entry.entryId,
        read: entry.read,
      }),
    ),
    ...entries.flatMap(({ entryId, withdrawnAtIso }) =>
      withdrawnAtIso === null
        ? []
        : [fermentLineText({ kind: 'withdrawn', keptAtIso: withdrawnAtIso, entryId })],
    ),
  ].join('');
}

/** The text of the file of how warm it was kept; its watch is under way unless it was left. */
export function warmthFileText(
  { band, source, sinceIso }: Omit<Keeping, 'channel'>,
  minutes: readonly WarmthSpan[],
  leftAtIso: string | null = null,
): string {
  return [
    warmthLineText({
      kind: 'keep',
      ...warmthLog,
      keptAtIso: sinceIso,
      band,
      channel: 'ferment',
      source,
    }),
    ...minutes.map((minute) => warmthLineText({ kind: 'minute', ...minute })),
    ...(leftAtIso === null ? [] : [warmthLineText({ kind: 'leave', keptAtIso: leftAtIso })]),
  ].join('');
}

/** A minute as a probe with a tenth of a kelvin of noise gives it. */
export function quietMinute(atMs: number, meanC: number): WarmthSpan {
  return {
    atIso: new Date(atMs).toISOString(),
    lowC: meanC - 0.1,
    meanC,
    highC: meanC + 0.1,
    minutes: 1,
  };
}
