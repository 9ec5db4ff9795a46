import { bubblePoint } from '../equilibrium/index.ts';

/** Cells of the table; nodes lie at x = (i/cells)², dense where y rises steeply. */
export const tableCells = 1024;
const coarseCells = 128;

/**
 * Vapour–liquid equilibrium at one pressure, tabulated for the simulator's inner loop.
 *
 * Instead of y the logarithm-free relative volatility α = y(1 − x)/((1 − y)x) is kept: it is smooth, and
 * y = αx/(1 + (α − 1)x) can then leave neither 0 … 1 nor its exact ends.
 */
export interface VapourTable {
  pressureKPa: number;
  /** α at the nodes. */
  readonly volatility: Float64Array;
  /** Boiling temperature at the nodes [°C]. */
  readonly bubbleTemperatureC: Float64Array;
  /** Dew temperature at y = i/cells [°C]. */
  readonly dewTemperatureC: Float64Array;
}

/** Solves the model at 129 compositions and fills the fine table between them by cubics. */
export function tabulateVapour(pressureKPa: number): VapourTable {
  const logVolatility = new Float64Array(coarseCells + 1);
  const temperatureC = new Float64Array(coarseCells + 1);
  for (let node = 0; node <= coarseCells; node++) {
    // α is a limit at the pure ends: step just inside.
    const x = Math.min(Math.max((node / coarseCells) ** 2, 1e-7), 1 - 1e-7);
    const boiling = bubblePoint({ ethanolMoleFraction: x, pressureKPa });
    const y = boiling.vapourEthanolMoleFraction;
    logVolatility[node] = Math.log((y * (1 - x)) / ((1 - y) * x));
    temperatureC[node] = boiling.temperatureC;
  }
  const table = emptyVapourTable(pressureKPa);
  for (let node = 0; node <= tableCells; node++) {
    const position = (node / tableCells) * coarseCells;
    table.volatility[node] = Math.exp(cubicAt(logVolatility, position));
    table.bubbleTemperatureC[node] = cubicAt(temperatureC, position);
  }
  fillDewTemperatures(table);
  return table;
}

export function emptyVapourTable(pressureKPa: number): VapourTable {
  return {
    pressureKPa,
    volatility: new Float64Array(tableCells + 1),
    bubbleTemperatureC: new Float64Array(tableCells + 1),
    dewTemperatureC: new Float64Array(tableCells + 1),
  };
}

/** Cubic through the four nodes around a position; the functions are even in √x, so the left end mirrors. */
function cubicAt(values: Float64Array, position: number): number {
  const last = values.length - 1;
  const start = Math.min(Math.floor(position), last - 2) - 1;
  const t = position - start;
  const at = (offset: number) => values[Math.abs(start + offset)] as number;
  return (
    (-at(0) * (t - 1) * (t - 2) * (t - 3)) / 6 +
    (at(1) * t * (t - 2) * (t - 3)) / 2 -
    (at(2) * t * (t - 1) * (t - 3)) / 2 +
    (at(3) * t * (t - 1) * (t - 2)) / 6
  );
}

/** Walks along the bubble curve, whose y rises with x, and reads T where y passes each node. */
function fillDewTemperatures(table: VapourTable): void {
  const { volatility, bubbleTemperatureC, dewTemperatureC } = table;
  let cell = 0;
  let lowY = 0;
  let highY = vapourAtNode(volatility, 1);
  for (let node = 0; node <= tableCells; node++) {
    const y = node / tableCells;
    while (highY < y && cell < tableCells - 1) {
      cell++;
      lowY = highY;
      highY = vapourAtNode(volatility, cell + 1);
    }
    const lowT = bubbleTemperatureC[cell] as number;
    const highT = bubbleTemperatureC[cell + 1] as number;
    dewTemperatureC[node] = lowT + ((highT - lowT) * (y - lowY)) / (highY - lowY);
  }
}

function vapourAtNode(volatility: Float64Array, node: number): number {
  const x = (node / tableCells) ** 2;
  const alpha = volatility[node] as number;
  return (alpha * x) / (1 + (alpha - 1) * x);
}
