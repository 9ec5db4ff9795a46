import { type ColumnRole, columnRole } from './column-title.ts';
import { type SplitTime, splitTime } from './finer-time.ts';
import type { CsvRow } from './parse-csv.ts';
import type { TableBeginning } from './table-beginning.ts';
import { findTimeColumn, rolesWithTime, secondsPerUnit } from './time-column.ts';

/** What the columns of a table hold, and where its time stands: -1 where it has none. */
export interface TableTime extends SplitTime {
  readonly roles: readonly ColumnRole[];
}

/**
 * Finds the time of a table from its first rows.
 *
 * @param allRows goes through the table, for what its first rows leave open
 */
export function timeOfTable(
  { titleRow, titles, data }: TableBeginning,
  allRows: () => Iterable<CsvRow>,
): TableTime {
  const byTitle = titles.map((title) => columnRole(title));
  const roles = rolesWithTime(titles, byTitle, data);
  const timeColumn = findTimeColumn(roles, data[0], titleRow === undefined);
  const perS = secondsPerUnit(roles[timeColumn], data, timeColumn);
  return { roles, ...splitTime({ titles, roles, data, timeColumn, perS, allRows }) };
}
