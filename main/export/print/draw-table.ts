import type { DocumentTable } from '#shared-core';
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
} from './page.ts';

const cellPt = 9;
const padding = { x: 4, y: 3 } as const;

/** A table with its caption above; a table over several pages repeats its column titles. */
export function drawTable(pdf: Pdf, table: DocumentTable): void {
  const { caption, columns, rows } = table;
  const hasTitles = columns.some(({ title }) => title !== '');
  const firstRows = rows.slice(0, 2).reduce((sum, row) => sum + rowHeight(pdf, table, row), 0);
  keepTogether(pdf, 34 + firstRows);
  setFont(pdf, 'bold', cellPt, softInk);
  pdf.y += 4;
  write(pdf, caption);
  pdf.y += 3;
  const titles = () => {
    if (hasTitles)
      drawRow(
        pdf,
        table,
        columns.map(({ title }) => title),
        'bold',
      );
  };
  titles();
  for (const row of rows) {
    if (pdf.y + rowHeight(pdf, table, row) > pageEnd(pdf)) {
      pdf.addPage();
      titles();
    }
    drawRow(pdf, table, row, 'regular');
  }
  pdf.y += 10;
}

function widths(pdf: Pdf, { columns }: DocumentTable): readonly number[] {
  const shares = columns.reduce((sum, { width }) => sum + width, 0);
  return columns.map(({ width }) => (contentWidth(pdf) * width) / shares);
}

function rowHeight(pdf: Pdf, table: DocumentTable, row: readonly string[]): number {
  setFont(pdf, 'bold', cellPt);
  const heights = widths(pdf, table).map((width, index) =>
    pdf.heightOfString(row[index] ?? '', { width: width - 2 * padding.x }),
  );
  return Math.max(cellPt, ...heights) + 2 * padding.y;
}

function drawRow(
  pdf: Pdf,
  table: DocumentTable,
  row: readonly string[],
  weight: 'regular' | 'bold',
): void {
  const [top, height] = [pdf.y, rowHeight(pdf, table, row)];
  let left: number = margins.left;
  for (const [index, width] of widths(pdf, table).entries()) {
    setFont(pdf, weight, cellPt, ink);
    pdf.text(row[index] ?? '', left + padding.x, top + padding.y, {
      width: width - 2 * padding.x,
      align: table.columns[index]?.align === 'end' ? 'right' : 'left',
    });
    left += width;
  }
  pdf
    .undash()
    .lineWidth(weight === 'bold' ? 0.9 : 0.4)
    .strokeColor(weight === 'bold' ? softInk : rule)
    .moveTo(margins.left, top + height)
    .lineTo(margins.left + contentWidth(pdf), top + height)
    .stroke();
  pdf.y = top + height;
}
