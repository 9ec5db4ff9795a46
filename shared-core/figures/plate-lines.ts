import type { EquilibriumCurve } from '../column/index.ts';
import type { PlateDiagram } from '../diagram/index.ts';
import type { Point, Shape, Stroke } from './drawing.ts';
import { line } from './plot-area.ts';

/** How the lines of a plate diagram look: ink on paper, the colours of its theme in a window. */
export interface PlateLooks {
  readonly diagonal: Stroke;
  readonly equilibrium: Stroke;
  /** Left out where it is the diagonal, at total reflux. */
  readonly operating?: Stroke;
  readonly steps: Stroke;
}

/** Finer where the curve is steep, towards pure water. */
const curvePoints = 201;

/**
 * The lines of the diagram of McCabe and Thiele, for print and window alike.
 *
 * @param at where a liquid and a vapour [mol/mol] lie in the drawing
 * @param equilibrium the vapour over a liquid [mol/mol]
 * @param diagram operating line and steps; null draws the sheet they are to be drawn on
 *
 * @example
 * const look = { colour: '#000000', widthPt: 1 };
 * const looks = { diagonal: look, equilibrium: look, steps: look };
 * plateLines((x, y) => [100 * x, 100 - 100 * y], (x) => x, null, looks)[0].points // => [[0, 100], [100, 0]]
 */
export function plateLines(
  at: (liquid: number, vapour: number) => Point,
  equilibrium: EquilibriumCurve,
  diagram: PlateDiagram | null,
  looks: PlateLooks,
): readonly Shape[] {
  const curve = Array.from({ length: curvePoints }, (_, index) => {
    const liquid = (index / (curvePoints - 1)) ** 2;
    return at(liquid, equilibrium(liquid));
  });
  const drawn = (points: readonly Point[], { colour, widthPt, dash }: Stroke) =>
    line(points, colour, widthPt, dash);
  const places = (points: PlateDiagram['staircase']) => points.map(({ x, y }) => at(x, y));
  return [
    drawn([at(0, 0), at(1, 1)], looks.diagonal),
    drawn(curve, looks.equilibrium),
    ...(diagram !== null && looks.operating !== undefined
      ? [drawn(places(diagram.operatingLine), looks.operating)]
      : []),
    ...(diagram !== null && diagram.staircase.length > 1
      ? [drawn(places(diagram.staircase), looks.steps)]
      : []),
  ];
}
