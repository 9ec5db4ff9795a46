import type { RunSummary } from '#shared-core';
import { dateWords, momentText, monthWords } from '../words/index.ts';

/** Which runs of the library are looked for. */
export type RunFilter = 'all' | 'recorded' | 'imported' | 'rehearsal';

export interface LookFor {
  readonly text: string;
  readonly filter: RunFilter;
}

export const everything: LookFor = { text: '', filter: 'all' };

const originOfRun = ({ rehearsal, imported }: RunSummary): RunFilter =>
  rehearsal ? 'rehearsal' : imported === true ? 'imported' : 'recorded';

/**
 * The runs whose name, notes or date hold every word that was typed, of the kind wanted, in their order. A number is a group's or a day's: of a date it is
 * found whole, not as a part of the minutes.
 */
export function matchingRuns(
  runs: readonly RunSummary[],
  { text, filter }: LookFor,
): readonly RunSummary[] {
  const wanted = plain(text).split(/\s+/).filter(Boolean);
  return runs.filter((run) => {
    if (filter !== 'all' && originOfRun(run) !== filter) return false;
    const { name, notes, startedAtIso } = run;
    const own = plain(`${name} ${notes}`);
    const date = plain(
      `${momentText(startedAtIso).slice(0, 10)} ${dateWords(startedAtIso)} ${monthWords(startedAtIso)}`,
    );
    const numbers = new Set(date.replace(clock, '').match(/\d+/g));
    return wanted.every(
      (word) =>
        own.includes(word) || (/^\d+$/.test(word) ? numbers.has(word) : date.includes(word)),
    );
  });
}

/** A time of day, however a language writes it. */
const clock = /\d{1,2}[:.]\d{2}(?!\d|\.)/;

/** Without capitals and accents: who types "pruf" finds "Prüfung". */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}
