import { tableCells, type VapourTable } from './vapour-table.ts';

// An own name: looking the constant up in another module costs as much as the rest of a look-up.
const cells = tableCells;

/** Result of a look-up; one object is used again and again, so the inner loop allocates nothing. */
export interface BoilingPoint {
  temperatureC: number;
  temperaturePerX: number;
  y: number;
  yPerX: number;
}

/** Boiling temperature, vapour composition and their slopes at liquid composition x, into `result`. */
export function lookUpBoiling(table: VapourTable, x: number, result: BoilingPoint): void {
  const scaled = Math.sqrt(x) * cells;
  const cell = scaled < cells ? scaled | 0 : cells - 1;
  const perCell = 1 / (cells * cells);
  const width = (2 * cell + 1) * perCell;
  const share = (x - cell * cell * perCell) / width;
  const { volatility, bubbleTemperatureC } = table;
  const lowT = bubbleTemperatureC[cell] as number;
  const riseT = (bubbleTemperatureC[cell + 1] as number) - lowT;
  const lowAlpha = volatility[cell] as number;
  const riseAlpha = (volatility[cell + 1] as number) - lowAlpha;
  const alpha = lowAlpha + share * riseAlpha;
  const weight = 1 / (1 + (alpha - 1) * x);
  result.temperatureC = lowT + share * riseT;
  result.temperaturePerX = riseT / width;
  result.y = alpha * x * weight;
  result.yPerX = (alpha + (riseAlpha / width) * x * (1 - x)) * weight * weight;
}

/** Dew temperature [°C] of a vapour of composition y. */
export function lookUpDewTemperatureC(table: VapourTable, y: number): number {
  const scaled = y * cells;
  const cell = scaled < cells ? scaled | 0 : cells - 1;
  const low = table.dewTemperatureC[cell] as number;
  const high = table.dewTemperatureC[cell + 1] as number;
  return low + (scaled - cell) * (high - low);
}
