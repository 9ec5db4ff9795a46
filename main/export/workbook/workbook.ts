/** What a column of a sheet holds. */
export interface SheetColumn {
  readonly title: string;
  /** `date-time`: milliseconds since 1970, as the clock that is shown counts them. */
  readonly type: 'number' | 'text' | 'date-time';
  /** Decimals shown; the cell keeps the whole number. */
  readonly decimals?: number;
}

export type SheetCell = number | string | null;

/** A chart of one column against another, drawn by the spreadsheet itself from the cells. */
export interface SheetChart {
  readonly title: string;
  readonly xTitle: string;
  /** Columns counted from 0. */
  readonly xColumn: number;
  /** One axis a unit: the first stands on the left, the second on the right. */
  readonly yAxes: readonly [SheetAxis] | readonly [SheetAxis, SheetAxis];
}

export interface SheetAxis {
  readonly title: string;
  readonly columns: readonly number[];
}

export interface Sheet {
  /** At most 31 characters, none of []:*?/\ */
  readonly name: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: Iterable<readonly SheetCell[]>;
  readonly chart?: SheetChart;
}

export interface Workbook {
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly createdMs: number;
  readonly sheets: readonly Sheet[];
}

/** Rows that a sheet can hold (ECMA-376 leaves it open; every spreadsheet program stops here). */
export const mostSheetRows = 1_048_576;
