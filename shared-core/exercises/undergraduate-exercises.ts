import { ethanolMolarMassGPerMol } from '../alcoholometry/index.ts';
import {
  gayLussacGPerG,
  hexoseMolarMassGPerMol,
  pasteurEthanolGPerG,
} from '../bookkeeping/index.ts';
import type { RunStudy } from '../study/index.ts';
import { balanceEthanol } from './balance-question.ts';
import { compareWithSimple, countPlates } from './column-questions.ts';
import { answerOf, type Exercise, exercise, shown } from './exercise.ts';
import { correctForPressure, seeThroughTemperature } from './vapour-questions.ts';

type Maker = (study: RunStudy) => Exercise | null;

/** Ethanol from hexose, as printed [g/g]. */
const gayLussac = shown(gayLussacGPerG, 4);
const hundredG = 100;
const practicalPercent = ((100 * pasteurEthanolGPerG) / gayLussacGPerG).toFixed(1);

const judgeYield: Maker = ({ books }) => {
  if (books.ferment === null || books.balance === null) return null;
  // Of a receiver that nobody measured no sheet can say how much of the sugar's ethanol it held.
  if (books.unmeasuredCuts.length > 0) return null;
  const { theoreticalG } = books.ferment;
  const sugarG = shown(theoreticalG.value / gayLussac, 1);
  const chargedG = shown(books.balance.ethanol.inG.value, 2);
  const cutsG = shown(books.balance.ethanol.cutsG.value, 2);
  const possibleG = shown(gayLussac * sugarG, 2);
  const percent = (part: number, of: number) => shown((100 * part) / of, 1);
  const [ferment, distilled, overall] = [
    percent(chargedG, possibleG),
    percent(cutsG, chargedG),
    percent(cutsG, possibleG),
  ];
  const asked = (of: string, value: number) => ({
    of,
    value,
    tolerance: 0.5,
    unit: '%',
    decimals: 1,
  });
  return exercise({
    id: 'undergraduate-yield',
    level: 'undergraduate',
    title: 'From sugar to product',
    question: `Work out the theoretical ethanol from the sugar fermented and the yields of fermentation, of distillation and overall. Compare the first with Pasteur’s ${practicalPercent} %.`,
    given: [
      `Sugar (as hexose): ${sugarG.toFixed(1)} g. C₆H₁₂O₆ → 2 C₂H₅OH + 2 CO₂; 2 × ${ethanolMolarMassGPerMol.toFixed(2)}/${hexoseMolarMassGPerMol.toFixed(2)} = ${gayLussac} g/g.`,
      `Ethanol in the charge: ${chargedG.toFixed(2)} g; in all receivers: ${cutsG.toFixed(2)} g.`,
    ],
    marks: 5,
    answer: answerOf([
      asked('fermentation', ferment),
      asked('distillation', distilled),
      asked('overall', overall),
    ]),
    working: [
      `Theoretical: ${gayLussac} × ${sugarG.toFixed(1)} = ${possibleG.toFixed(2)} g.`,
      `Fermentation ${chargedG.toFixed(2)}/${possibleG.toFixed(2)} = ${ferment.toFixed(1)} %, distillation ${cutsG.toFixed(2)}/${chargedG.toFixed(2)} = ${distilled.toFixed(1)} %, overall ${cutsG.toFixed(2)}/${possibleG.toFixed(2)} = ${overall.toFixed(1)} %.`,
      ferment > 100
        ? 'More than the sugar can give: sugar or strength was misread.'
        : // Source: see pasteurEthanolGPerG.
          `Yeast makes cells, glycerol and other products from part of the sugar; Pasteur found ${(hundredG * pasteurEthanolGPerG).toFixed(1)} g of ethanol in every ${hundredG} g of hexose.`,
    ],
    answerLines: 6,
  });
};

/** In the order of the lesson. */
export const undergraduateExercises: readonly Maker[] = [
  correctForPressure,
  seeThroughTemperature,
  balanceEthanol,
  countPlates,
  compareWithSimple,
  judgeYield,
];
