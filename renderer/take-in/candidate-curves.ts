import { readReadingsCsv, say } from '#shared-core';
import { type ImportDraft, mappingOf, withColumn } from './import-draft.ts';

/** What a column that may hold the head temperature shows over the first lines. */
export interface CandidateCurve {
  readonly column: number;
  readonly title: string;
  readonly points: readonly { readonly timeS: number; readonly temperatureC: number }[];
}

/** The curves to choose from, each read as the head temperature would be; empty where no time is known. */
export function candidateCurves(text: string, draft: ImportDraft): readonly CandidateCurve[] {
  return draft.headDoubt.flatMap((column) => {
    const mapped = mappingOf(withColumn(draft, column, { holds: 'head' }));
    if (mapped.kind !== 'mapping') return [];
    const read = readReadingsCsv(text, mapped.mapping);
    if (!read.ok) return [];
    const points = read.value.inputs.flatMap((input) =>
      input.kind === 'reading' && input.channel === 'head' && input.quality !== 'bad'
        ? [{ timeS: input.timeS, temperatureC: input.value }]
        : [],
    );
    const title = draft.columns[column]?.title || say('Column {column}', { column: column + 1 });
    return points.length === 0 ? [] : [{ column, title, points }];
  });
}
