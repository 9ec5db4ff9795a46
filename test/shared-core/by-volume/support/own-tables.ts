import { createRandom } from '#shared-core';
import {
  boilingTable,
  molarVolumeMl,
  moleFractionOf,
  nodes,
  strengthAbv,
} from '../../../../scripts/second-still/mixture.ts';

/** A batch that a fictional teaching laboratory distilled and wrote down by volume. */
export interface TableStill {
  readonly chargeMl: number;
  readonly chargeAbv: number;
  readonly pressureKPa: number;
  /** Equilibrium stages above the pot and reflux ratio; null for a still without a column. */
  readonly column: { readonly plates: number; readonly refluxRatio: number } | null;
  /** Volumes at which somebody looked [mL]. */
  readonly readAtMl: readonly number[];
  /** How far an eye is off before it rounds to whole degrees [K]. */
  readonly noiseK: number;
  readonly seed: string;
}

/** What really came over at a volume. */
export interface TruePoint {
  readonly volumeMl: number;
  readonly headC: number;
  readonly abv: number;
  /** Mean strength of all so far [% vol]. */
  readonly collectedAbv: number;
}

const stepMl = 0.02;

/**
 * The batch by Rayleigh's `dW/W = dx/(y − x)`, in small steps of volume. Van Laar and Antoine give the equilibrium, densities at 20 °C the volumes: neither is
 * the product's. A column's head follows from its stages at each pot (McCabe–Thiele at constant reflux, no hold-up).
 */
export function trueCourse(still: TableStill): readonly TruePoint[] {
  const table = boilingTable(still.pressureKPa);
  const over = (x: number) => between(table.vapour, x);
  const top = still.readAtMl.at(-1) ?? 0;
  let x = moleFractionOf(still.chargeAbv);
  let mol = still.chargeMl / molarVolumeMl(x);
  let ethanolMl = 0;
  const points: TruePoint[] = [];
  for (let step = 0; step * stepMl <= top + stepMl / 2; step += 1) {
    const y = still.column === null ? over(x) : aboveStages(table.vapour, x, still.column);
    const volumeMl = step * stepMl;
    const abv = strengthAbv(y);
    points.push({
      volumeMl,
      headC: between(table.temperatureC, liquidUnder(table.vapour, y)),
      abv,
      collectedAbv: volumeMl === 0 ? abv : (100 * ethanolMl) / volumeMl,
    });
    const goneMol = stepMl / molarVolumeMl(y);
    x = (mol * x - goneMol * y) / (mol - goneMol);
    mol -= goneMol;
    ethanolMl += (stepMl * abv) / 100;
  }
  return points;
}

export const trueAt = (course: readonly TruePoint[], volumeMl: number): TruePoint => {
  const point = course[Math.round(volumeMl / stepMl)];
  if (point === undefined) throw new Error(`The course ends before ${volumeMl} mL.`);
  return point;
};

/** The volume from which on what comes over is weaker; null where it never was as strong [mL]. */
export function trueCutMl(course: readonly TruePoint[], leastAbv: number): number | null {
  return course.findLast(({ abv }) => abv >= leastAbv)?.volumeMl ?? null;
}

/** What was written down: volume [mL] and whole degrees. */
export function writtenDown(still: TableStill): readonly (readonly [number, number])[] {
  const course = trueCourse(still);
  const random = createRandom(still.seed);
  return still.readAtMl.map((volumeMl) => [
    volumeMl,
    Math.round(trueAt(course, volumeMl).headC + still.noiseK * random.normal()),
  ]);
}

/** A table by mole fraction, whose nodes lie at equal steps of its root. */
function between(values: Float64Array, x: number): number {
  const at = Math.sqrt(Math.max(0, x)) * (nodes - 1);
  const low = Math.min(nodes - 2, Math.floor(at));
  const share = (x - (low / (nodes - 1)) ** 2) / (((low + 1) ** 2 - low ** 2) / (nodes - 1) ** 2);
  const [from = 0, to = 0] = [values[low], values[low + 1]];
  return from + share * (to - from);
}

/** The liquid under a vapour, below the azeotrope, by halving. */
function liquidUnder(vapour: Float64Array, y: number): number {
  let [low, high] = [0, 0.88];
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (between(vapour, middle) < y) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The distillate whose stages lead down to this pot, by halving. */
function aboveStages(
  vapour: Float64Array,
  pot: number,
  { plates, refluxRatio }: NonNullable<TableStill['column']>,
): number {
  const potOf = (distillate: number): number => {
    let y = distillate;
    let x = liquidUnder(vapour, y);
    for (let stage = 0; stage < plates; stage += 1) {
      y = (refluxRatio * x + distillate) / (refluxRatio + 1);
      x = liquidUnder(vapour, y);
    }
    return x;
  };
  let [low, high] = [pot, 0.88];
  for (let step = 0; step < 24; step += 1) {
    const middle = (low + high) / 2;
    if (potOf(middle) < pot) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
