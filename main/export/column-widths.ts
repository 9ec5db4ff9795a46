import type { DocumentTable } from '#shared-core';

/** How wide a word of a cell, or of a column's title, is set, with the room that its cell keeps free. */
export type WordWidth = (word: string, isTitle: boolean) => number;

/** Where any typesetter may break a line. */
const breaks = /\s+|(?<=[-–])/;

/**
 * Widths of the columns of a table: by their shares, but none narrower than its longest word, which would be torn. What one needs more the others
 * give by what they can spare; shares alone where there is not room enough for all.
 */
export function columnWidths(
  { columns, rows }: DocumentTable,
  total: number,
  widthOf: WordWidth,
): readonly number[] {
  const shares = columns.reduce((sum, { width }) => sum + width, 0);
  const wanted = columns.map(({ width }) => (total * width) / shares);
  const least = columns.map(({ title }, at) => {
    const words = new Set(rows.flatMap((row) => (row[at] ?? '').split(breaks)));
    const ofTitle = title.split(breaks).map((word) => widthOf(word, true));
    return Math.max(...ofTitle, ...[...words].map((word) => widthOf(word, false)));
  });
  const spare = wanted.map((width, at) => width - (least[at] ?? 0));
  const lacking = spare.reduce((sum, left) => sum + Math.max(0, -left), 0);
  const spared = spare.reduce((sum, left) => sum + Math.max(0, left), 0);
  if (lacking === 0 || lacking > spared) return wanted;
  return wanted.map((width, at) => {
    const left = spare[at] ?? 0;
    return left < 0 ? width - left : width - (left * lacking) / spared;
  });
}
