import { z } from 'zod';
import {
  channelSchema,
  checkedLine,
  checksumOfLine,
  type KeptWarm,
  type ProbeSource,
  parseJson,
  requests,
  type WarmthReport,
  warmthBandSchema,
  warmthSpanSchema,
} from '#shared-core';

/** A minute of a ferment, or a longer stretch. */
export type WarmthSpan = WarmthReport['stretches'][number];

/** What this program writes. */
export const warmthLog = { format: 'still-head-ferment-warmth', version: 1 } as const;

const keptAtIso = z.iso.datetime();

/** What a line of the record of a ferment's warmth says. */
const warmthLineSchema = z.discriminatedUnion('kind', [
  /** From here on it is kept warm under watch, by this channel of this probe. */
  z.object({
    kind: z.literal('keep'),
    format: z.literal(warmthLog.format),
    version: z.literal(warmthLog.version),
    keptAtIso,
    band: warmthBandSchema,
    channel: channelSchema,
    source: requests['probe/connect'].body.shape.source.nullable(),
  }),
  z.object({ kind: z.literal('minute'), ...warmthSpanSchema.shape }),
  z.object({ kind: z.literal('leave'), keptAtIso }),
]);

export type WarmthLine = z.infer<typeof warmthLineSchema>;

/** How a ferment is kept warm, and by which probe. */
export type Keeping = KeptWarm['keeping'] & { readonly source: ProbeSource | null };

/** What the record of a ferment's warmth comes to. */
export interface WarmthRecord {
  /** As it was kept the last time; null where it never was. */
  readonly keeping: Keeping | null;
  readonly isKeptNow: boolean;
  readonly minutes: readonly WarmthSpan[];
}

export const noWarmth: WarmthRecord = { keeping: null, isKeptNow: false, minutes: [] };

export function warmthLineText(line: WarmthLine): string {
  return checkedLine(line).line;
}

/**
 * The record by the text of its file. A line with a wrong byte, or of a later version, is left out; so is a minute that was written
 * again because the disk had taken only part of what it was given.
 */
export function warmthOfText(text: string): WarmthRecord {
  const minutes: WarmthSpan[] = [];
  let keeping: Keeping | null = null;
  let isKeptNow = false;
  const known = new Set<string>();
  for (const one of text.split('\n')) {
    const line = readLine(one);
    if (line === null) continue;
    if (line.kind === 'leave') isKeptNow = false;
    else if (line.kind === 'minute') {
      const { kind: _, ...minute } = line;
      if (!known.has(minute.atIso)) minutes.push(minute);
      known.add(minute.atIso);
    } else {
      const { band, channel, source } = line;
      keeping = { band, channel, source, sinceIso: line.keptAtIso };
      isKeptNow = true;
    }
  }
  return { keeping, isKeptNow, minutes };
}

function readLine(text: string): WarmthLine | null {
  if (text === '' || checksumOfLine(text) === null) return null;
  return warmthLineSchema.safeParse(parseJson(text)).data ?? null;
}
