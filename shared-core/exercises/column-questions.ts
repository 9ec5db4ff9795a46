import { ethanolMolarMassGPerMol, waterMolarMassGPerMol } from '../alcoholometry/index.ts';
import { equilibriumCurve } from '../column/index.ts';
import { plateFigure } from '../figures/index.ts';
import { type RunPlates, type RunStudy, runKind } from '../study/index.ts';
import { answerOf, type Exercise, exercise, shown } from './exercise.ts';

/** An eye reads a mole fraction off the diagram to about this [mol/mol]. */
const eyeMoleFraction = 0.005;
/** Where an eye's error is worth more stages than this, they are not asked for. */
const mostDoubtfulStages = 1.5;

/** Stages stepped off and by Fenske's equation. */
export function countPlates({ plates, settings }: RunStudy): Exercise | null {
  if (plates === null || plates.plates.stepped.value === null) return null;
  const { stepped, volatilityAtPot, volatilityAtTop, whyTheyDiffer, fenske } = plates.plates;
  const steps = shown(stepped.value ?? 0, 1);
  const tolerance = steppingTolerance(plates, steps);
  if (tolerance === null) return null;
  const top = shown(plates.distillateMoleFraction.value, 3);
  const pot = shown(plates.potMoleFraction.value, 3);
  const [atPot, atTop] = [volatilityAtPot.toPrecision(3), volatilityAtTop.toPrecision(3)];
  const byFenske = shown(
    Math.log((top / (1 - top)) * ((1 - pot) / pot)) /
      Math.log(Math.sqrt(Number(atPot) * Number(atTop))),
    1,
  );
  const isFenske = fenske !== null && pot > 0.005 && Number.isFinite(byFenske);
  const interval = ({ low, high }: { low: number; high: number }) =>
    `(95 %: ${low.toFixed(3)}–${high.toFixed(3)})`;
  return exercise({
    id: 'undergraduate-plates',
    level: 'undergraduate',
    title: isFenske ? 'Count the plates twice' : 'Count the plates',
    question: `Step off the equilibrium stages at total reflux on the diagram${isFenske ? ', then calculate them with Fenske’s equation and the geometric mean of the relative volatilities. Why do the two differ, and which do you trust?' : '.'}`,
    given: [
      `Distillate x = ${top.toFixed(3)} ${interval(plates.distillateMoleFraction)}; pot x = ${pot.toFixed(3)} ${interval(plates.potMoleFraction)}; ${plates.basis}.`,
      ...(isFenske
        ? [`Relative volatility over the pot ${atPot}, over the distillate ${atTop}.`]
        : []),
    ],
    marks: isFenske ? 8 : 4,
    answer: answerOf([
      { of: 'stepped', value: steps, tolerance, unit: 'stages', decimals: 1 },
      ...(isFenske
        ? [{ of: 'Fenske', value: byFenske, tolerance: 0.2, unit: 'stages', decimals: 1 }]
        : []),
    ]),
    working: [
      `Steps between curve and diagonal: ${steps.toFixed(1)} stages, the pot counted; ${runKind(settings) === 'simple' ? 'without a column the pot alone is one, the wall of the still head adds a little' : `${Math.max(0, steps - 1).toFixed(1)} plates in the column`}.`,
      ...(isFenske
        ? [
            `Fenske: ln[(${top.toFixed(3)}/${(1 - top).toFixed(3)}) × (${(1 - pot).toFixed(3)}/${pot.toFixed(3)})]/ln √(${atPot} × ${atTop}) = ${byFenske.toFixed(1)} stages.`,
            whyTheyDiffer,
          ]
        : []),
      stepped.high === null
        ? 'The upper end of the interval reaches the azeotrope: no largest number of stages can be given.'
        : `The interval of the compositions alone gives ${(stepped.low ?? 0).toFixed(1)}–${stepped.high.toFixed(1)} stages.`,
    ],
    answerLines: 8,
    figure: plateFigure(plates, false),
    solvedFigure: plateFigure(plates, true),
  });
}

/** What an eye's error in reading is worth [stages]; null where it is worth too many. */
function steppingTolerance(plates: RunPlates, steps: number): number | null {
  const top = plates.distillateMoleFraction.value;
  const curve = equilibriumCurve(plates.pressureKPa);
  // Near the azeotrope a step is hardly longer than an eye's error.
  const lift = curve(top) - top;
  if (lift <= eyeMoleFraction) return null;
  const tolerance = Math.max(0.4, shown((eyeMoleFraction / lift) * 2, 1), shown(0.08 * steps, 1));
  return tolerance > mostDoubtfulStages ? null : tolerance;
}

/** Points of 1/(y* − x) that the sheet prints. */
const tablePoints = 12;

/** What Rayleigh's equation expects of the same charge without a column. */
export function compareWithSimple(study: RunStudy): Exercise | null {
  const { simple, product, books, pressureKPa, settings } = study;
  if (simple === null || product === null) return null;
  const charge = molesOf(books.charge);
  const distillate = molesOf(product);
  const [chargeMol, distillateMol] = [shown(charge, 2), shown(distillate, 3)];
  const chargeX = shown(books.charge.ethanolMoleFraction, 4);
  const gainAbv = shown(product.strengthAbv.value, 1) - shown(simple.strengthAbv, 1);
  const kind = runKind(settings);
  const equilibrium = equilibriumCurve(pressureKPa);
  const fromX = Math.max(2e-4, 0.8 * simple.residueMoleFraction);
  const table = Array.from({ length: tablePoints }, (_, index): TableRow => {
    const x = shown(chargeX * (fromX / chargeX) ** (index / (tablePoints - 1)), 4);
    return { x, inverse: shown(1 / (equilibrium(x) - x), 2) };
  });
  const residueX = residueFromTable(table, Math.log(chargeMol / (chargeMol - distillateMol)));
  if (residueX === null) return null;
  const residueMol = chargeMol - distillateMol;
  const meanX = shown((chargeMol * chargeX - residueMol * residueX) / distillateMol, 3);
  const tolerance = Math.max(0.02, shown(0.08 * meanX, 3));
  // Where rounding or trapezia lead astray, as at the last trace of ethanol, the table is no way to the answer.
  if (Math.abs(meanX - simple.distillateMoleFraction) > tolerance) return null;
  return exercise({
    id: 'undergraduate-rayleigh',
    level: 'undergraduate',
    title:
      kind === 'simple'
        ? 'Does Rayleigh’s equation describe this still?'
        : 'What would a still without a column have given?',
    question: `Apply Rayleigh’s equation to the charge and the number of moles of distillate${kind === 'simple' ? '' : ', as if there were no column'}. What is the mole fraction of the distillate? ${comparisonAsked(kind)}`,
    given: [
      `Charge: ${chargeMol.toFixed(2)} mol, x = ${chargeX.toFixed(4)}. Distillate: ${distillateMol.toFixed(3)} mol, as measured ${product.strengthAbv.value.toFixed(1)} % vol; by Rayleigh it would have ${simple.strengthAbv.toFixed(1)} % vol.`,
      `x: 1/(y* − x) at ${pressureKPa.toFixed(1)} kPa: ${table.map(({ x, inverse }) => `${x.toFixed(4)}:\u00a0${inverse.toFixed(2)}`).join('; ')}.`,
    ],
    marks: 6,
    answer: answerOf(
      [
        {
          of: 'mean distillate',
          value: meanX,
          tolerance,
          unit: 'mol/mol',
          decimals: 3,
        },
      ],
      comparisonWords(kind, gainAbv),
    ),
    working: [
      'ln(F/W) = ∫ dx/(y* − x) from the residue to the charge, by trapezia over the table.',
      `W/F = ${((chargeMol - distillateMol) / chargeMol).toFixed(4)}: the integral reaches ln(F/W) = ${Math.log(chargeMol / (chargeMol - distillateMol)).toFixed(4)} at a residue of x = ${residueX.toFixed(4)}.`,
      `Mean distillate: (F x_F − W x_W)/(F − W) = ${meanX.toFixed(3)} mol/mol. Integrated finely it is ${simple.distillateMoleFraction.toFixed(3)} mol/mol, that is ${simple.strengthAbv.toFixed(1)} % vol.`,
    ],
    answerLines: 9,
  });
}

interface TableRow {
  readonly x: number;
  readonly inverse: number;
}

/** Where the integral from the charge down, by trapezia, reaches what was distilled; null beyond the table. */
function residueFromTable(table: readonly TableRow[], wanted: number): number | null {
  let reached = 0;
  for (const [index, to] of table.entries()) {
    const from = table[index - 1];
    if (from === undefined) continue;
    const area = ((from.inverse + to.inverse) / 2) * (from.x - to.x);
    if (area > 0 && reached + area >= wanted) {
      return shown(from.x - ((wanted - reached) / area) * (from.x - to.x), 4);
    }
    reached += area;
  }
  return null;
}

function comparisonAsked(kind: ReturnType<typeof runKind>): string {
  return kind === 'fractional'
    ? 'Express the gain of the column in % vol.'
    : kind === 'simple'
      ? 'Compare it with what was measured.'
      : 'Compare it with what was measured: was there a column at work?';
}

function comparisonWords(kind: ReturnType<typeof runKind>, gainAbv: number): string {
  const gain = `${gainAbv < 0 ? '−' : '+'}${Math.abs(gainAbv).toFixed(1)}\u00a0% vol`;
  return kind === 'fractional'
    ? `Gain of the column: ${gain}.`
    : `Measured minus Rayleigh: ${gain}.`;
}

function molesOf({ massG, ethanolG }: { massG: { value: number }; ethanolG: { value: number } }) {
  return (
    ethanolG.value / ethanolMolarMassGPerMol +
    (massG.value - ethanolG.value) / waterMolarMassGPerMol
  );
}
