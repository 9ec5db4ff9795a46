import type { SheetColumn } from './workbook.ts';
import { xmlHead } from './xml.ts';

/** Cell formats by their number in `stylesXml`. */
export const styles = {
  plain: 0,
  title: 1,
  dateTime: 2,
  /** Text that must stay text, also when somebody edits it: the spreadsheet shows it with its own mark. */
  quotedText: 3,
  decimals: [4, 5, 6, 7, 8],
} as const;

const mostDecimals = styles.decimals.length - 1;

export function styleOf({ type, decimals }: SheetColumn): number {
  if (type === 'date-time') return styles.dateTime;
  if (type !== 'number' || decimals === undefined) return styles.plain;
  return styles.decimals[Math.min(mostDecimals, decimals)] ?? styles.plain;
}

const decimalFormats = [0, 1, 2, 3, 4].map((decimals) => ({
  id: 170 + decimals,
  code: decimals === 0 ? '0' : `0.${'0'.repeat(decimals)}`,
}));

/** Source: ECMA-376, part 1, 18.8. */
export const stylesXml =
  `${xmlHead}<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">` +
  `<numFmts count="${decimalFormats.length + 1}"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd\\ hh:mm:ss"/>` +
  `${decimalFormats.map(({ id, code }) => `<numFmt numFmtId="${id}" formatCode="${code}"/>`).join('')}</numFmts>` +
  '<fonts count="2"><font><sz val="11"/><name val="Calibri"/></font>' +
  '<font><b/><sz val="11"/><name val="Calibri"/></font></fonts>' +
  '<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>' +
  '<fill><patternFill patternType="solid"><fgColor rgb="FFE3E0EE"/></patternFill></fill></fills>' +
  '<borders count="1"><border/></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  `<cellXfs count="${4 + decimalFormats.length}"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>` +
  '<xf numFmtId="0" fontId="1" fillId="2" borderId="0" xfId="0" applyFont="1" applyFill="1"/>' +
  '<xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>' +
  '<xf numFmtId="49" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" quotePrefix="1"/>' +
  `${decimalFormats.map(({ id }) => `<xf numFmtId="${id}" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>`).join('')}</cellXfs>` +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>';
