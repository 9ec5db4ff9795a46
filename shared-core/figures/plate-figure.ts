import { equilibriumCurve } from '../column/index.ts';
import type { RunPlates } from '../study/index.ts';
import { mutedColours } from './colours.ts';
import { type Drawing, ink, type Point, type Shape, softInk } from './drawing.ts';
import { type PlateLooks, plateLines } from './plate-lines.ts';
import { frame, label, line, type PlotArea, place } from './plot-area.ts';

const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1].map((at) => ({ at, words: at.toFixed(1) }));

/** At total reflux the operating line is the diagonal. */
const inkOfLines: PlateLooks = {
  diagonal: { colour: softInk, widthPt: 0.8 },
  equilibrium: { colour: ink, widthPt: 1.3 },
  steps: { colour: mutedColours.indigo, widthPt: 1.1 },
};

/** The diagram of McCabe and Thiele at total reflux; without `steps` it is a sheet to draw them on. */
export function plateFigure(
  { plates, distillateMoleFraction, potMoleFraction, pressureKPa }: RunPlates,
  withSteps: boolean,
): Drawing {
  const area: PlotArea = {
    left: 46,
    top: 10,
    right: 326,
    bottom: 290,
    x: { low: 0, high: 1, title: 'Ethanol in the liquid / (mol/mol)', ticks },
    y: { low: 0, high: 1, title: 'Ethanol in the vapour / (mol/mol)', ticks },
  };
  const at = (x: number, y: number) => place(area, x, y);
  const diagram = withSteps ? plates.diagram : null;
  const grid = Array.from({ length: 19 }, (_, index) => (index + 1) / 20).flatMap((value) => [
    line([at(value, 0), at(value, 1)], '#e9e7df', 0.4),
    line([at(0, value), at(1, value)], '#e9e7df', 0.4),
  ]);
  const pot = potMoleFraction.value;
  const top = distillateMoleFraction.value;
  return {
    widthPt: 340,
    heightPt: 328,
    altText:
      `Equilibrium curve of ethanol and water at ${pressureKPa.toFixed(1)} kPa` +
      (withSteps && plates.stepped.value !== null
        ? `, with ${plates.stepped.value.toFixed(1)} steps between pot and distillate.`
        : ', with pot and distillate marked.'),
    shapes: [
      ...grid,
      ...frame(area),
      ...plateLines(at, equilibriumCurve(pressureKPa), diagram, inkOfLines),
      line([at(pot, 0), at(pot, pot)], mutedColours.wine, 0.9, [3, 2]),
      // Right of the diagonal, whose foot would run through the words.
      label(
        [Math.max(at(pot, 0)[0] + 4, area.left + 18), area.bottom - 5],
        `pot ${pot.toFixed(3)}`,
        'start',
        mutedColours.wine,
      ),
      line([at(top, 0), at(top, top)], mutedColours.wine, 0.9, [3, 2]),
      label(
        [at(top, 0)[0] - 4, area.bottom - 16],
        `distillate ${top.toFixed(3)}`,
        'end',
        mutedColours.wine,
      ),
      ...stepNumbers(
        (diagram?.staircase ?? []).map(({ x, y }) => at(x, y)),
        area.left,
      ),
    ],
  };
}

/** So far apart the numbers of steps can be read; near the azeotrope steps are shorter. */
const leastNumberGapPt = 11;
const numberRoomPt = 10;

/** Steps counted from the distillate down, each number above its corner on the curve, where nothing else is drawn. */
function stepNumbers(corners: readonly Point[], axisX: number): readonly Shape[] {
  let last: Point | null = null;
  return corners
    .filter((_, index) => index % 2 === 1)
    .flatMap(([x, y], index): Shape[] => {
      if (last !== null && Math.hypot(x - last[0], y - last[1]) < leastNumberGapPt) return [];
      last = [x, y];
      // Beside the axis there is no room but under the step.
      const isAtAxis = x < axisX + numberRoomPt;
      return [
        isAtAxis
          ? label([x + 3, y + 9], String(index + 1), 'start', mutedColours.indigo)
          : label([x - 3, y - 4], String(index + 1), 'end', mutedColours.indigo),
      ];
    });
}
