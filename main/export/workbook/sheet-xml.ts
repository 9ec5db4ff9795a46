import { escapeXml } from '#shared-core';
import { styleOf, styles } from './styles.ts';
import { mostSheetRows, type Sheet, type SheetCell, type SheetColumn } from './workbook.ts';
import { columnLetters, xmlHead } from './xml.ts';

const mainNamespace = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const linkNamespace = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const dayMs = 86_400_000;
/** 1970-01-01 in days of the 1900 date system. */
const epochDay = 25_569;
const formulaStart = /^[=+\-@\t\r]/;
/** Characters a cell may hold in every spreadsheet program. */
const longestText = 32_767;
const rowsAtOnce = 400;

/**
 * A sheet's XML in pieces, one row after the other, so that its length costs no memory. Returns how many
 * rows were written under the titles; rows beyond the end of a sheet are left out and said so in the last one.
 * Source: ECMA-376, part 1, 18.3.
 */
export function* sheetXml(sheet: Sheet): Generator<string, number> {
  const { columns, rows, chart } = sheet;
  yield `${xmlHead}<worksheet xmlns="${mainNamespace}" xmlns:r="${linkNamespace}">` +
    '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>' +
    '<selection pane="bottomLeft" activeCell="A2" sqref="A2"/></sheetView></sheetViews>' +
    `<sheetFormatPr defaultRowHeight="15"/><cols>${columns.map(columnWidth).join('')}</cols><sheetData>` +
    rowXml(
      1,
      columns.map(({ title }) => textCell(title, styles.title)),
    );
  const letters = columns.map((_, column) => columnLetters(column));
  let written = 0;
  let piece = '';
  for (const row of rows) {
    if (written + 2 > mostSheetRows - 1) {
      piece += rowXml(mostSheetRows, [
        textCell('More rows than a sheet can hold; see the CSV.', 0),
      ]);
      break;
    }
    written += 1;
    piece += `<row r="${written + 1}">${columns.map((column, index) => cellXml(`${letters[index]}${written + 1}`, row[index] ?? null, column)).join('')}</row>`;
    if (written % rowsAtOnce !== 0) continue;
    yield piece;
    piece = '';
  }
  yield `${piece}</sheetData><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/>` +
    // A4, as wide as the page, as many pages long as it takes.
    '<pageSetup paperSize="9" orientation="landscape" fitToWidth="1" fitToHeight="0"/>' +
    `${chart === undefined ? '' : '<drawing r:id="rId1"/>'}</worksheet>`;
  return written;
}

function columnWidth({ title, type }: SheetColumn, index: number): string {
  const width = Math.max(type === 'date-time' ? 20 : type === 'text' ? 18 : 11, title.length + 2);
  return `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`;
}

function rowXml(number: number, cells: readonly ((at: string) => string)[]): string {
  return `<row r="${number}">${cells.map((cell, column) => cell(`${columnLetters(column)}${number}`)).join('')}</row>`;
}

function textCell(text: string, style: number): (at: string) => string {
  const words = escapeXml(text.slice(0, longestText));
  return (at) =>
    `<c r="${at}" t="inlineStr"${style === 0 ? '' : ` s="${style}"`}><is><t xml:space="preserve">${words}</t></is></c>`;
}

function cellXml(at: string, cell: SheetCell, column: SheetColumn): string {
  if (cell === null || cell === '') return '';
  if (typeof cell === 'string') {
    return textCell(cell, formulaStart.test(cell) ? styles.quotedText : styles.plain)(at);
  }
  if (!Number.isFinite(cell)) return '';
  const style = styleOf(column);
  // To the microsecond: days as such have more digits than anybody measured.
  const value =
    column.type === 'date-time' ? Math.round((cell / dayMs + epochDay) * 1e11) / 1e11 : cell;
  return `<c r="${at}"${style === 0 ? '' : ` s="${style}"`}><v>${value}</v></c>`;
}
