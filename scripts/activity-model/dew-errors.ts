import type { NrtlParameters } from '../../shared-core/equilibrium/index.ts';
import { solveBubblePoint, solveDewPoint } from '../../shared-core/equilibrium/index.ts';
import { rootMeanSquare } from './set-errors.ts';
import type { VleSet } from './vle-set.ts';

/**
 * How far the dew temperature of each measured vapour lies from the measured temperature: the error a
 * head thermometer would see. Grouped by the height above the model's azeotrope.
 */
export function dewErrorsByHeight(
  leftOut: readonly { readonly set: VleSet; readonly parameters: NrtlParameters }[],
): readonly Readonly<Record<string, number | string>>[] {
  const errors = leftOut.flatMap(({ set, parameters }) =>
    set.points.flatMap(({ temperatureK, pressureKPa, y }) => {
      if (y === null || y > 0.9) return [];
      const lowestK = solveBubblePoint(0.9, pressureKPa, parameters).temperatureK;
      const errorK = solveDewPoint(y, pressureKPa, parameters).temperatureK - temperatureK;
      return [{ set: set.name, heightK: temperatureK - lowestK, errorK }];
    }),
  );
  const groups = [...new Set(errors.map(({ set }) => set)), 'all modern'];
  const bands = [
    [-1, 0.3],
    [0.3, 1],
    [1, 2.5],
    [2.5, 5],
    [5, 20],
  ] as const;
  return groups.map((group) => {
    const cells = bands.map(([low, high]) => {
      const inside = errors
        .filter(({ set }) => set === group || (group === 'all modern' && !set.includes('1932')))
        .filter(({ heightK }) => heightK > low && heightK <= high)
        .map(({ errorK }) => errorK);
      const text =
        inside.length === 0 ? '-' : `${rootMeanSquare(inside).toFixed(3)} (${inside.length})`;
      return [`${low}…${high} K`, text] as const;
    });
    return { set: group, ...Object.fromEntries(cells) };
  });
}
