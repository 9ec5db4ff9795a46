import { requireInRange } from '../result/index.ts';
import { requireAzeotropePressure } from './azeotrope.ts';
import { slopesOfState } from './bubble-curve-slopes.ts';
import { headBounds, solveHeadState } from './head-state.ts';
import { remember } from './remember.ts';
import { celsiusOffsetK } from './saturation-pressure.ts';

/** Head temperature → vapour at one pressure, precomputed. */
export interface HeadVapourTable {
  readonly pressureKPa: number;
  readonly azeotropeTemperatureC: number;
  readonly waterBoilingTemperatureC: number;
  readonly azeotropeEthanolMoleFraction: number;
  /** Ethanol mole fraction of the vapour; the nearer end outside azeotrope … boiling water. */
  readonly ethanolMoleFractionAt: (temperatureC: number) => number;
}

const cells = 64;

/**
 * Fast inverse of the dew curve on its water-rich side: ethanol mole fraction of the vapour from head
 * temperature by cubic Hermite interpolation with exact slopes.
 *
 * The variable is `s = √((T − Taz)/(Twater − Taz))`: composition has a square-root singularity at the
 * azeotrope and is smooth in s. Tables are remembered by pressure (the last 32).
 *
 * @param pressureKPa [kPa], 20 … 200
 * @returns the table; its look-up takes a temperature [°C], −50 … 150, and differs from the full solve by
 * less than 1e-5 K
 * @throws OutOfRangeError outside these ranges, and for NaN in the look-up
 * @see The dew curve of this folder's NRTL model; interpolation: de Boor, A Practical Guide to Splines
 * (1978), chapter IV.
 * @example
 * headVapourTable(101.325).ethanolMoleFractionAt(90) // ≈ 0.336 ± 0.01
 * headVapourTable(101.325).ethanolMoleFractionAt(100) // => 0
 */
export function headVapourTable(pressureKPa: number): HeadVapourTable {
  requireAzeotropePressure(pressureKPa);
  return rememberedTable(pressureKPa);
}

const rememberedTable = remember(32, tabulateHeadVapour);

function tabulateHeadVapour(pressureKPa: number): HeadVapourTable {
  const bounds = headBounds(pressureKPa);
  const lowestK = bounds.azeotrope.temperatureK;
  const spanK = bounds.waterBoilingK - lowestK;
  const values = new Float64Array(cells + 1);
  const slopes = new Float64Array(cells + 1);
  for (let node = 0; node <= cells; node++) {
    const s = node / cells;
    const state = solveHeadState(lowestK + s * s * spanK, bounds);
    const { vapourPerX, temperaturePerX } = slopesOfState(state);
    values[node] = state.y;
    slopes[node] = ((vapourPerX / temperaturePerX) * 2 * s * spanK) / cells;
  }
  // At the azeotrope itself dy/dT is infinite and ds/dT too; their ratio is taken just beside it.
  const beside = 1e-4;
  const y = solveHeadState(lowestK + beside * beside * spanK, bounds).y;
  slopes[0] = (y - bounds.azeotrope.y) / beside / cells;

  const lowestC = lowestK - celsiusOffsetK;
  const ethanolMoleFractionAt = (temperatureC: number): number => {
    requireInRange('head temperature', temperatureC, -50, 150, '°C');
    const height = (temperatureC - lowestC) / spanK;
    if (height <= 0) return values[0] as number;
    if (height >= 1) return 0;
    const position = Math.sqrt(height) * cells;
    const cell = Math.min(position | 0, cells - 1);
    return hermite(values, slopes, cell, position - cell);
  };
  return {
    pressureKPa,
    azeotropeTemperatureC: lowestC,
    waterBoilingTemperatureC: bounds.waterBoilingK - celsiusOffsetK,
    azeotropeEthanolMoleFraction: bounds.azeotrope.x,
    ethanolMoleFractionAt,
  };
}

/** Cubic through both ends of a cell with the slopes there (per cell); t runs from 0 to 1. */
function hermite(values: Float64Array, slopes: Float64Array, cell: number, t: number): number {
  const low = values[cell] as number;
  const rise = (values[cell + 1] as number) - low;
  const lowSlope = slopes[cell] as number;
  const highSlope = slopes[cell + 1] as number;
  const quadratic = 3 * rise - 2 * lowSlope - highSlope;
  const cubic = lowSlope + highSlope - 2 * rise;
  return low + t * (lowSlope + t * (quadratic + t * cubic));
}
