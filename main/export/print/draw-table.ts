import type { DocumentTable } from '#shared-core';
import { columnWidths } from '../column-widths.ts';
import {
  contentWidth,
  ink,
  keepTogether,
  margins,
  type Pdf,
  pageEnd,
  rule,
  setFont,
  softInk,
  write,
  writeAt,
} from './page.ts';
import { branch, decoration, leaf, type Tag } from './tagged.ts';

const cellPt = 9;
/** A table up to this height stays on one page. */
const shortTablePt = 160;
const padding = { x: 4, y: 3 } as const;
/** A word as wide as its cell to the last bit may be broken all the same. */
const hairPt = 0.1;

/** A table with its caption above; a table over several pages repeats its column titles. */
export function drawTable(pdf: Pdf, document: Tag, table: DocumentTable): void {
  const { caption, columns, rows } = table;
  const hasTitles = columns.some(({ title }) => title !== '');
  const titles = columns.map(({ title }) => title);
  const heights = rows.map((row) => rowHeight(pdf, table, row, 'regular'));
  keepTogether(pdf, leastTablePt(pdf, table));
  const element = branch(pdf, document, 'Table');
  pdf.y += 4;
  leaf(pdf, element, 'Caption', () => {
    setFont(pdf, 'bold', cellPt, softInk);
    write(pdf, caption, 'bold');
  });
  pdf.y += 3;
  if (hasTitles) drawRow(pdf, table, titles, 'bold', element);
  for (const [index, row] of rows.entries()) {
    // The last row never goes overleaf by itself.
    const isLastButOne = index === rows.length - 2;
    const ahead = (heights[index] ?? 0) + (isLastButOne ? (heights[index + 1] ?? 0) : 0);
    if (pdf.y + ahead > pageEnd(pdf)) {
      pdf.addPage();
      // Read out once, at the head of the table.
      if (hasTitles) {
        decoration(pdf, 'Pagination', () => drawCells(pdf, table, titles, 'bold', inOnePiece));
        finishRow(pdf, table, titles, 'bold');
      }
    }
    drawRow(pdf, table, row, 'regular', element);
  }
  element.end();
  pdf.y += 10;
}

/** Height of the caption, the titles and the first rows [pt]: neither of the first two is ever the last thing on a page. */
export function leastTablePt(pdf: Pdf, table: DocumentTable): number {
  const { caption, columns, rows } = table;
  const titles = columns.map(({ title }) => title);
  const titlesPt = titles.some((title) => title !== '') ? rowHeight(pdf, table, titles, 'bold') : 0;
  const [first, total] = firstRowsPt(pdf, table, rows);
  setFont(pdf, 'bold', cellPt, softInk);
  const captionPt = pdf.heightOfString(caption, { width: contentWidth(pdf) });
  return 7 + captionPt + titlesPt + (total <= shortTablePt ? total : first);
}

/** Height of the first two rows, and of all, counted until they are no short table [pt]. */
function firstRowsPt(
  pdf: Pdf,
  table: DocumentTable,
  rows: DocumentTable['rows'],
): readonly [number, number] {
  let [first, total] = [0, 0];
  for (const [index, row] of rows.entries()) {
    total += rowHeight(pdf, table, row, 'regular');
    if (index < 2) first = total;
    else if (total > shortTablePt) break;
  }
  return [first, total];
}

/** Worked out once a table: each of its rows asks. */
const known = new WeakMap<DocumentTable, readonly number[]>();

function widths(pdf: Pdf, table: DocumentTable): readonly number[] {
  const before = known.get(table);
  if (before !== undefined) return before;
  const found = columnWidths(table, contentWidth(pdf), (word, isTitle) => {
    setFont(pdf, isTitle ? 'bold' : 'regular', cellPt, ink);
    return pdf.widthOfString(word) + 2 * padding.x + hairPt;
  });
  known.set(table, found);
  return found;
}

function rowHeight(
  pdf: Pdf,
  table: DocumentTable,
  row: readonly string[],
  weight: 'regular' | 'bold',
): number {
  const heights = widths(pdf, table).map((width, index) => {
    setFont(pdf, weight, cellPt, ink);
    return pdf.heightOfString(row[index] ?? '', { width: width - 2 * padding.x });
  });
  return Math.max(cellPt, ...heights) + 2 * padding.y;
}

/** How the cells of a row are put into the structure: each as it is drawn. */
type DrawCell = (column: number, draw: () => void) => void;

const inOnePiece: DrawCell = (_column, draw) => draw();

function drawRow(
  pdf: Pdf,
  table: DocumentTable,
  row: readonly string[],
  weight: 'regular' | 'bold',
  parent: Tag,
): void {
  const element = branch(pdf, parent, 'TR');
  drawCells(pdf, table, row, weight, (column, draw) => {
    if (weight === 'bold') leaf(pdf, element, 'TH', draw, { scope: 'Column' });
    else if (column === 0) leaf(pdf, element, 'TH', draw, { scope: 'Row' });
    else leaf(pdf, element, 'TD', draw);
  });
  element.end();
  finishRow(pdf, table, row, weight);
}

function drawCells(
  pdf: Pdf,
  table: DocumentTable,
  row: readonly string[],
  weight: 'regular' | 'bold',
  drawCell: DrawCell,
): void {
  const top = pdf.y;
  let left: number = margins.left;
  for (const [index, width] of widths(pdf, table).entries()) {
    const [from, align] = [left, table.columns[index]?.align === 'end' ? 'right' : 'left'] as const;
    drawCell(index, () => {
      setFont(pdf, weight, cellPt, ink);
      writeAt(pdf, weight, row[index] ?? '', [from + padding.x, top + padding.y], {
        width: width - 2 * padding.x,
        align,
      });
    });
    left += width;
  }
  pdf.y = top;
}

/** The rule under a row; the next one begins below it. */
function finishRow(
  pdf: Pdf,
  table: DocumentTable,
  row: readonly string[],
  weight: 'regular' | 'bold',
): void {
  const bottom = pdf.y + rowHeight(pdf, table, row, weight);
  decoration(pdf, 'Layout', () =>
    pdf
      .undash()
      .lineWidth(weight === 'bold' ? 0.9 : 0.4)
      .strokeColor(weight === 'bold' ? softInk : rule)
      .moveTo(margins.left, bottom)
      .lineTo(margins.left + contentWidth(pdf), bottom)
      .stroke(),
  );
  pdf.y = bottom;
}
