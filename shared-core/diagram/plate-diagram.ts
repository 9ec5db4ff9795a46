import { type EquilibriumCurve, minimumRefluxRatio, stepPlates } from '../column/index.ts';
import type { Estimate } from '../uncertainty/index.ts';

/** A corner of the staircase: liquid x against vapour y [mol/mol]. */
export interface DiagramPoint {
  readonly x: number;
  readonly y: number;
}

/** Pot, head and reflux at one moment. */
export interface PlateDiagramInput {
  readonly equilibrium: EquilibriumCurve;
  /** Ethanol in the vapour at the head, which becomes the distillate [mol/mol]. */
  readonly head: Estimate;
  /** Ethanol in the pot's liquid [mol/mol]. */
  readonly pot: Estimate;
  /** Liquid going back per distillate, 0 … 1e6 [mol/mol]; Infinity is total reflux. */
  readonly refluxRatio: number;
  /** How far the reflux may be off; left out, it is taken as exact. */
  readonly refluxRange?: Pick<Estimate, 'low' | 'high'>;
}

/** Theoretical stages between pot and head, the pot counted; an end is null where a pinch is in the way. */
export interface StageCount {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** Everything a McCabe–Thiele drawing of a rectifying column shows. */
export interface PlateDiagram {
  /** From the diagonal at the distillate down to the pot's composition. */
  readonly operatingLine: readonly [DiagramPoint, DiagramPoint];
  /** Corners of the steps, from the top down. */
  readonly staircase: readonly DiagramPoint[];
  readonly stages: StageCount;
  /** Reflux below which no number of plates would do; null at or above the azeotrope. */
  readonly minimumReflux: number | null;
}

/** Total reflux as a number the steps can be worked with: the operating line is the diagonal within 1e-6. */
const totalReflux = 1e6;
/** A drawing with more steps than this cannot be read; the count goes on. */
const drawnSteps = 40;

/**
 * Steps off the theoretical stages between pot and head for one reflux ratio: `y = y*(x)` and the operating
 * line `y = R/(R + 1) x + x_D/(R + 1)` in turn. The interval takes the least favourable ends together:
 * strongest head over weakest pot with least reflux, and the reverse.
 *
 * @param input equilibrium curve, compositions [mol/mol] 0 … 1, reflux ratio [mol/mol] 0 … ∞
 * @returns lines and corners to draw, and the stages; null when the head is no richer than the pot
 *
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605.
 * @example
 * const equilibrium = (x) => (2 * x) / (1 + x);
 * const exactly = (value) => ({ value, low: value, high: value });
 * plateDiagram({ equilibrium, head: exactly(0.8), pot: exactly(0.2), refluxRatio: Infinity }).stages.value // ≈ 4 ± 1e-4
 * plateDiagram({ equilibrium, head: exactly(0.2), pot: exactly(0.8), refluxRatio: 1 }) // => null
 */
export function plateDiagram(input: PlateDiagramInput): PlateDiagram | null {
  const { equilibrium, head, pot } = input;
  if (!(head.value > pot.value + 1e-6)) return null;
  const refluxRatio = Math.min(totalReflux, input.refluxRatio);
  const { low, high } = input.refluxRange ?? { low: refluxRatio, high: refluxRatio };
  const lineAt = (x: number) => (refluxRatio * x + head.value) / (refluxRatio + 1);
  const steps = stepPlates({
    equilibrium,
    distillateMoleFraction: head.value,
    potMoleFraction: pot.value,
    refluxRatio,
  });
  const stagesBetween = (distillate: number, potLiquid: number, ratio: number) =>
    distillate <= potLiquid
      ? 0
      : stepPlates({
          equilibrium,
          distillateMoleFraction: distillate,
          potMoleFraction: potLiquid,
          refluxRatio: ratio,
        }).stages;
  return {
    operatingLine: [
      { x: pot.value, y: lineAt(pot.value) },
      { x: head.value, y: head.value },
    ],
    staircase: corners(steps.liquids.slice(0, drawnSteps), head.value, lineAt),
    stages: {
      value: steps.stages,
      low: stagesBetween(head.low, pot.high, Math.min(totalReflux, high)),
      high: stagesBetween(head.high, pot.low, Math.min(totalReflux, low)),
    },
    minimumReflux: minimumRefluxRatio({
      equilibrium,
      distillateMoleFraction: head.value,
      potMoleFraction: pot.value,
    }).refluxRatio,
  };
}

function corners(
  liquids: readonly number[],
  distillate: number,
  lineAt: (x: number) => number,
): readonly DiagramPoint[] {
  const drawn: DiagramPoint[] = [{ x: distillate, y: distillate }];
  let y = distillate;
  for (const x of liquids) {
    drawn.push({ x, y });
    y = lineAt(x);
    drawn.push({ x, y });
  }
  return drawn;
}
