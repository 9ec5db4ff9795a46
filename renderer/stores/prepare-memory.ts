import type { z } from 'zod';
import { parseJson } from '#shared-core';
import { keptDraftSchema } from './kept-draft-schema.ts';
import { firstDraft, type PrepareDraft } from './prepare-draft.ts';

export function keptDraft({ confirms: _, ...kept }: PrepareDraft): string {
  return JSON.stringify(kept satisfies z.infer<typeof keptDraftSchema>);
}

/** The draft as kept before a reload; null where there is none that can be used. */
export function restoredDraft(stored: string | null): PrepareDraft | null {
  const parsed = keptDraftSchema.safeParse(parseJson(stored ?? 'null'));
  return parsed.success ? { ...parsed.data, confirms: firstDraft.confirms } : null;
}
