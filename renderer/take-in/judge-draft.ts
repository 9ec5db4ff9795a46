import { explainCsvProblem, type ReadCsv, readReadingsCsv, say, told } from '#shared-core';
import { type ImportDraft, mappingOf } from './import-draft.ts';

/** What the first lines give when they are read as the draft says. */
export type Judgement =
  | { readonly kind: 'readable'; readonly read: ReadCsv }
  | { readonly kind: 'not-yet'; readonly sentence: string };

/** Tries a draft on the first lines, by the same reader that takes in the whole file. */
export function judgeDraft(text: string, draft: ImportDraft): Judgement {
  const mapped = mappingOf(draft);
  if (mapped.kind === 'incomplete') return { kind: 'not-yet', sentence: mapped.sentence };
  const read = readReadingsCsv(text, mapped.mapping);
  if (!read.ok) return { kind: 'not-yet', sentence: told(explainCsvProblem(read.error)) };
  const hasHead = read.value.inputs.some(
    (input) => input.kind === 'reading' && input.channel === 'head',
  );
  if (hasHead) return { kind: 'readable', read: read.value };
  return { kind: 'not-yet', sentence: say('The column of the head temperature holds no number.') };
}
