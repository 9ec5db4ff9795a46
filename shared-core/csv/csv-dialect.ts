/** How a CSV file separates fields and writes decimals. */
export interface CsvDialect {
  /** A space stands for any run of spaces. */
  readonly delimiter: ',' | ';' | '\t' | '|' | ' ';
  readonly decimal: '.' | ',';
}

/** The two dialects that are written: RFC 4180 with a point, and the one of decimal-comma locales. */
export const csvDialects = {
  csv: { delimiter: ',', decimal: '.' },
  'csv-semicolon': { delimiter: ';', decimal: ',' },
} as const satisfies Record<string, CsvDialect>;

export type CsvFormat = keyof typeof csvDialects;
