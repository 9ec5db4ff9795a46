import { z } from 'zod';
import {
  checkedLine,
  checksumOfLine,
  fermentIdSchema,
  fermentReadSchema,
  type KeptFerment,
  parseJson,
  requests,
  statedFermentSchema,
} from '#shared-core';

/** What this program writes. */
export const fermentLog = { format: 'still-head-ferment-log', version: 1 } as const;

const entryId = z.number().int().min(1);
const keptAtIso = z.iso.datetime();

/** What a line of a ferment's file says. */
const fermentLineSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('begun'),
    format: z.literal(fermentLog.format),
    version: z.literal(fermentLog.version),
    keptAtIso,
    fermentId: fermentIdSchema,
    stated: statedFermentSchema,
  }),
  z.object({
    kind: z.literal('corrected'),
    keptAtIso,
    stated: statedFermentSchema,
    reason: requests['ferments/correct'].body.shape.reason,
  }),
  z.object({ kind: z.literal('entry'), keptAtIso, entryId, read: fermentReadSchema }),
  z.object({ kind: z.literal('withdrawn'), keptAtIso, entryId }),
]);

export type FermentLine = z.infer<typeof fermentLineSchema>;

export function fermentLineText(line: FermentLine): string {
  return checkedLine(line).line;
}

/** Null where any byte of it is wrong, or a later version wrote it. */
function readLine(text: string): FermentLine | null {
  if (checksumOfLine(text) === null) return null;
  return fermentLineSchema.safeParse(parseJson(text)).data ?? null;
}

/** A ferment by the text of its file; null where its beginning can't be read. Lines that can't be read are counted and left out. */
export function fermentOfText(text: string): KeptFerment | null {
  const lines = text.split('\n').filter((line) => line !== '');
  let begun: Extract<FermentLine, { kind: 'begun' }> | null = null;
  const entries = new Map<number, KeptFerment['entries'][number]>();
  const corrected: Extract<FermentLine, { kind: 'corrected' }>[] = [];
  let unreadableLines = 0;
  for (const line of lines.map(readLine)) {
    if (line === null) unreadableLines += 1;
    else if (line.kind === 'begun') begun ??= line;
    else if (line.kind === 'corrected') corrected.push(line);
    else if (line.kind === 'entry') {
      const { entryId, keptAtIso, read } = line;
      entries.set(entryId, { entryId, keptAtIso, read, withdrawnAtIso: null });
    } else {
      const entry = entries.get(line.entryId);
      if (entry) entries.set(line.entryId, { ...entry, withdrawnAtIso: line.keptAtIso });
    }
  }
  if (begun === null) return null;
  const statements = [begun.stated, ...corrected.map(({ stated }) => stated)];
  return {
    fermentId: begun.fermentId,
    stated: statements.at(-1) ?? begun.stated,
    corrections: corrected.map(({ keptAtIso, reason }, index) => ({
      keptAtIso,
      before: statements[index] ?? begun.stated,
      reason,
    })),
    entries: [...entries.values()],
    unreadableLines,
  };
}
