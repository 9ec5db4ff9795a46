import { worded } from '../wording/index.ts';

const minuteS = 60;
/** Minutes of which the first and the last may be begun only. */
const fewestMinutes = 3;

/** How the rows of a minute are set apart. */
export interface WithinMinutes {
  /** Seconds from a row to the next. */
  readonly stepS: number;
  /** Rows that the first minute lacks: the table begins within it. */
  readonly missingAtFirst: number;
  readonly remark: string;
}

/**
 * Where the times of a table are to the minute, as a spreadsheet leaves them that shows no seconds, and several readings stand in each:
 * how they are set apart. Null for any other table.
 *
 * @param timesS the time of each reading [s], by a count in which full minutes are multiples of 60
 */
export function withinMinutes(timesS: Iterable<number>): WithinMinutes | null {
  const rows: number[] = [];
  let lastS: number | null = null;
  for (const timeS of timesS) {
    if (timeS % minuteS !== 0) return null;
    if (timeS !== lastS) rows.push(0);
    rows.push((rows.pop() ?? 0) + 1);
    lastS = timeS;
  }
  if (rows.length < fewestMinutes) return null;
  const [first = 0] = rows;
  const whole = rows.slice(1, -1).sort((one, other) => one - other);
  const usual = whole[Math.floor(whole.length / 2)] ?? 0;
  if (usual < 2) return null;
  return {
    stepS: minuteS / usual,
    missingAtFirst: Math.max(0, usual - first),
    remark: worded(
      'The times are to the minute only; the readings of a minute ({rows} in most) were spread evenly over it.',
      { rows: usual },
    ),
  };
}

/** Gives each reading a moment of its own within its minute, the first one of the table that of the table's beginning. */
export function createMinuteSpreader({ stepS, missingAtFirst }: WithinMinutes): {
  /** @param isReading whether a reading stands in the row; what else is said there belongs to the reading above */
  spread(timeS: number, isReading: boolean): number;
} {
  const beginsS = missingAtFirst * stepS;
  let minute = 0;
  let row = missingAtFirst - 1;
  let lastS = 0;
  return {
    spread(timeS, isReading) {
      if (timeS !== minute) [minute, row] = [timeS, -1];
      if (isReading) row += 1;
      // More rows than usual, in a minute that was read faster, stay within it.
      const withinS = Math.min(Math.max(row, 0) * stepS, minuteS - stepS / 2);
      lastS = Math.max(lastS, timeS + withinS - beginsS);
      return lastS;
    },
  };
}
