import { requireInRange } from '../result/index.ts';
import type { PressurePoint } from './batch-setup.ts';
import { emptyVapourTable, tabulateVapour, type VapourTable } from './vapour-table.ts';

/** How often a drifting pressure reaches the table: 1 kPa in an hour is then 1 Pa, 0.3 mK, a time. */
const refreshS = 4;

/** The equilibrium at the pressure of the moment. */
export interface AirPressureCourse {
  /** The table in force; the same object for the whole run. */
  readonly table: VapourTable;
  /** Brings the table to this time [s]; called with rising times. */
  follow(timeS: number): void;
}

/**
 * Follows a constant or drifting pressure. Between the lowest and highest pressure of the run the table is
 * interpolated in ln p, which is off by some 6 mK in the middle of a range of 10 kPa and by a hundredth of that over one of 1 kPa.
 */
export function airPressureCourse(
  pressureKPa: number | readonly PressurePoint[],
): AirPressureCourse {
  const points = typeof pressureKPa === 'number' ? [{ timeS: 0, pressureKPa }] : pressureKPa;
  for (const point of points) requireInRange('air pressure', point.pressureKPa, 50, 110, 'kPa');
  const pressures = points.map((point) => point.pressureKPa);
  const lowest = Math.min(...pressures);
  const highest = Math.max(...pressures);
  requireInRange('number of pressure points', points.length, 1, 100_000, '');
  if (lowest === highest) return { table: tabulateVapour(lowest), follow: () => {} };

  const low = tabulateVapour(lowest);
  const high = tabulateVapour(highest);
  const table = emptyVapourTable(lowest);
  let due = Number.NEGATIVE_INFINITY;
  const follow = (timeS: number): void => {
    if (timeS < due) return;
    due = timeS + refreshS;
    const now = pressureAt(points, timeS);
    const share = Math.log(now / lowest) / Math.log(highest / lowest);
    table.pressureKPa = now;
    blend(low.volatility, high.volatility, share, table.volatility);
    blend(low.bubbleTemperatureC, high.bubbleTemperatureC, share, table.bubbleTemperatureC);
    blend(low.dewTemperatureC, high.dewTemperatureC, share, table.dewTemperatureC);
  };
  follow(0);
  return { table, follow };
}

function pressureAt(points: readonly PressurePoint[], timeS: number): number {
  const after = points.findIndex((point) => point.timeS > timeS);
  const next = points[after === -1 ? points.length - 1 : after] as PressurePoint;
  const previous = points[after === -1 ? points.length - 1 : Math.max(0, after - 1)];
  if (previous === undefined || previous === next) return next.pressureKPa;
  const share = (timeS - previous.timeS) / (next.timeS - previous.timeS);
  return previous.pressureKPa + share * (next.pressureKPa - previous.pressureKPa);
}

function blend(low: Float64Array, high: Float64Array, share: number, into: Float64Array): void {
  for (let node = 0; node < into.length; node++) {
    const from = low[node] as number;
    into[node] = from + share * ((high[node] as number) - from);
  }
}
