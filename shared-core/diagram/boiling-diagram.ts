import { bubblePoint } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';

/** One boiling mixture: liquid and vapour in equilibrium, the two ends of a tie-line. */
export interface BoilingDiagramPoint {
  readonly temperatureC: number;
  /** Ethanol in the liquid [mol/mol]: on the bubble curve. */
  readonly liquidMoleFraction: number;
  /** Ethanol in the vapour [mol/mol]: on the dew curve. */
  readonly vapourMoleFraction: number;
}

/**
 * The T–x–y diagram of ethanol and water at one pressure: bubble curve `T(x)` and dew curve `T(y)` through the
 * same boiling states, from `x γ1 p1(T) + (1 − x) γ2 p2(T) = p`. Points lie denser towards water, where both
 * curves are steep: `x = s²`, s equally spaced.
 *
 * @param pressureKPa local air pressure [kPa], 20 … 200
 * @param cells number of steps from water to ethanol, 8 … 1000
 * @returns cells + 1 states, from pure water to pure ethanol
 * @throws OutOfRangeError outside these ranges
 *
 * Source: see `bubblePoint`.
 * @example
 * boilingDiagram(101.325)[0].temperatureC // ≈ 99.974 ± 0.01
 * boilingDiagram(101.325, 80).length // => 81
 */
export function boilingDiagram(pressureKPa: number, cells = 80): readonly BoilingDiagramPoint[] {
  requireInRange('cells', cells, 8, 1000, '');
  return Array.from({ length: Math.floor(cells) + 1 }, (_, index) => {
    const liquidMoleFraction = (index / Math.floor(cells)) ** 2;
    const state = bubblePoint({ ethanolMoleFraction: liquidMoleFraction, pressureKPa });
    return {
      temperatureC: state.temperatureC,
      liquidMoleFraction,
      vapourMoleFraction: state.vapourEthanolMoleFraction,
    };
  });
}
