import { ethanolMolarMassGPerMol, waterMolarMassGPerMol } from '../alcoholometry/index.ts';
import {
  gayLussacGPerG,
  hexoseMolarMassGPerMol,
  pasteurEthanolGPerG,
} from '../bookkeeping/index.ts';
import { azeotrope, limitTemperatureC, publishedAzeotrope } from '../equilibrium/index.ts';
import { plateFigure } from '../figures/index.ts';
import type { RunStudy } from '../report/index.ts';
import { intervalWords, measuredWords, numberWords } from '../report/measured-words.ts';
import { gasConstantJPerMolK } from '../thermo/index.ts';
import {
  apparentHeatOfAzeotropeKjPerMol,
  heatOfAzeotropeKjPerMol,
} from './apparent-heat-of-azeotrope.ts';
import { answerInWords, answerOf, type Exercise, exercise } from './exercise.ts';

type Maker = (study: RunStudy) => Exercise | null;

const correctForPressure: Maker = ({ plateau }) => {
  if (plateau === null) return null;
  const { mean, pressureKPa, standard, azeotropeC } = plateau;
  const heat = apparentHeatOfAzeotropeKjPerMol(pressureKPa);
  const temperatureK = mean.value + 273.15;
  const perLogK = (gasConstantJPerMolK * temperatureK ** 2) / (1000 * heat);
  const { pressureKPa: standardKPa, temperatureC: publishedC, cited } = publishedAzeotrope;
  const shiftK = perLogK * Math.log(standardKPa / pressureKPa);
  return exercise({
    id: 'undergraduate-pressure',
    level: 'undergraduate',
    title: 'Correct the plateau for pressure',
    question: `Bring the mean plateau temperature to ${standardKPa} kPa with the Clausius–Clapeyron equation, and compare with the azeotrope there (${publishedC} °C: ${cited}). What composition does the difference speak for?`,
    given: [
      `Plateau: ${measuredWords(mean, '°C')} (k = 2) at ${pressureKPa.toFixed(2)} kPa.`,
      `Apparent enthalpy of vaporisation of the azeotrope, from the slope of its vapour pressure: ${heat.toFixed(1)} kJ/mol. R = ${gasConstantJPerMolK.toFixed(3)} J/(mol K).`,
    ],
    marks: 5,
    answer: answerOf(
      mean.value + shiftK,
      Math.max(0.05, 2 * standard.standardUncertainty),
      '°C',
      2,
    ),
    working: [
      'dT/d ln p = R T²/ΔH (Clausius–Clapeyron, vapour ideal, liquid volume neglected).',
      `It is apparent because the composition moves along with the pressure and the vapour is taken for ideal; a calorimeter would find about ${heatOfAzeotropeKjPerMol(pressureKPa).toFixed(1)} kJ/mol.`,
      `R T²/ΔH = ${gasConstantJPerMolK.toFixed(3)}·10⁻³ × ${temperatureK.toFixed(2)}²/${heat.toFixed(1)} = ${perLogK.toFixed(2)} K.`,
      `ΔT = ${perLogK.toFixed(2)} × ln(${standardKPa}/${pressureKPa.toFixed(2)}) = ${numberWords(shiftK, 2)} K; T = ${(mean.value + shiftK).toFixed(2)} °C.`,
      `The tool’s equilibrium model gives ${standard.value.toFixed(2)} °C: the shift of the azeotrope itself, ${azeotropeC.toFixed(2)} → ${azeotrope(101.325).temperatureC.toFixed(2)} °C.`,
      `The plateau lies ${measuredWords(plateau.aboveAzeotropeK, 'K')} above the azeotrope: ${plateau.aboveAzeotropeK.value > 2 * plateau.aboveAzeotropeK.standardUncertainty ? 'the vapour is on the water side of it' : 'within its uncertainty that is the azeotrope'}.`,
    ],
    answerLines: 8,
  });
};

const balanceEthanol: Maker = ({ books }) => {
  const { balance, charge } = books;
  if (balance === null) return null;
  const { ethanol } = balance;
  const recovery = ethanol.recoveryPercent;
  const largest = recovery.budget.lines[0];
  return exercise({
    id: 'undergraduate-balance',
    level: 'undergraduate',
    title: 'Balance the ethanol, with its uncertainty',
    question:
      'Work out the ethanol charged and collected in grams, the recovery, and its expanded uncertainty (k = 2). Which measurement would you improve first? Does the balance close?',
    given: [
      `Charge: ${measuredWords(charge.massG, 'g')}, ${intervalWords(charge.strengthAbv, '% vol')}.`,
      ...books.cuts.flatMap(({ booked, number }) =>
        booked === null
          ? []
          : [
              `Cut ${number}: ${measuredWords(booked.massG, 'g')}, ${intervalWords(booked.strengthAbv, '% vol')}.`,
            ],
      ),
      ...(books.residue === null
        ? []
        : [
            `Residue: ${measuredWords(books.residue.massG, 'g')}, ${intervalWords(books.residue.strengthAbv, '% vol')}.`,
          ]),
      'Masses ± U with k = 2; strengths as 95 % intervals; OIML R 22 table for % vol → % mass.',
    ],
    marks: 8,
    answer: answerOf(recovery.value, Math.max(1, recovery.standardUncertainty), '%', 1),
    working: [
      `Charged: ${measuredWords(ethanol.inG, 'g')} ethanol (m w, w from OIML R 22).`,
      `Collected: ${measuredWords(ethanol.cutsG, 'g')}. Recovery: ${measuredWords(recovery, '%')}.`,
      `Relative variances add: u²(R)/R² = Σ (c·u)²/R².${largest === undefined ? '' : ` Largest part: ${largest.name.toLowerCase()}, ${(100 * largest.share).toFixed(0)} % of the variance.`}`,
      ethanol.missingG === null
        ? 'The residue was not measured, so closure cannot be judged: a difference always closes.'
        : `Missing: ${measuredWords(ethanol.missingG, 'g')}: the balance ${ethanol.closes ? 'closes within its uncertainty' : 'does not close: hold-up, evaporation or a reading is wrong'}.`,
    ],
    answerLines: 12,
  });
};

const countPlates: Maker = ({ plates }) => {
  if (plates === null || plates.plates.stepped.value === null) return null;
  const { stepped, fenske, meanVolatility, volatilityAtPot, volatilityAtTop, whyTheyDiffer } =
    plates.plates;
  const { distillateMoleFraction: top, potMoleFraction: pot } = plates;
  return exercise({
    id: 'undergraduate-plates',
    level: 'undergraduate',
    title: 'Count the plates twice',
    question:
      'Step off the equilibrium stages at total reflux on the diagram, then calculate them with Fenske’s equation and the geometric mean of the relative volatilities. Why do the two differ, and which do you trust?',
    given: [
      `Distillate x = ${top.value.toFixed(3)} (95 %: ${top.low.toFixed(3)}–${top.high.toFixed(3)}); pot x = ${pot.value.toFixed(3)}; ${plates.basis}.`,
      `Relative volatility over the pot ${volatilityAtPot.toPrecision(3)}, over the distillate ${volatilityAtTop.toPrecision(3)}.`,
    ],
    marks: 8,
    answer: answerOf(stepped.value ?? 0, 0.4, 'stages', 1),
    working: [
      `Steps between curve and diagonal: ${(stepped.value ?? 0).toFixed(1)} stages, the pot counted; ${((stepped.value ?? 0) - 1).toFixed(1)} plates in the column.`,
      fenske === null
        ? 'Fenske’s equation gives nothing at or above the azeotrope.'
        : `Fenske: ln[(${top.value.toFixed(3)}/${(1 - top.value).toFixed(3)}) × (${(1 - pot.value).toFixed(3)}/${pot.value.toFixed(3)})]/ln ${meanVolatility.toPrecision(3)} = ${fenske.toFixed(1)} stages.`,
      whyTheyDiffer,
      stepped.high === null
        ? 'The upper end of the interval reaches the azeotrope: no largest number of stages can be given.'
        : `The interval of the compositions alone gives ${(stepped.low ?? 0).toFixed(1)}–${stepped.high.toFixed(1)} stages.`,
    ],
    answerLines: 8,
    figure: plateFigure(plates, false),
    solvedFigure: plateFigure(plates, true),
  });
};

const compareWithSimple: Maker = ({ simple, product, books }) => {
  if (simple === null || product === null) return null;
  const moles = ({ massG, ethanolG }: { massG: { value: number }; ethanolG: { value: number } }) =>
    ethanolG.value / ethanolMolarMassGPerMol +
    (massG.value - ethanolG.value) / waterMolarMassGPerMol;
  const chargeMol = moles(books.charge);
  const distillateMol = moles(product);
  return exercise({
    id: 'undergraduate-rayleigh',
    level: 'undergraduate',
    title: 'What would a still without a column have given?',
    question:
      'Apply Rayleigh’s equation to the same charge and the same number of moles of distillate. How strong would it have been? Express the gain of the column in % vol.',
    given: [
      `Charge: ${chargeMol.toFixed(2)} mol, x = ${books.charge.ethanolMoleFraction.toFixed(4)}. Distillate: ${distillateMol.toFixed(3)} mol, ${product.strengthAbv.toFixed(1)} % vol.`,
      'Equilibrium data: the diagram, or y = α x/(1 + (α − 1) x) with the α of the previous question over the pot.',
    ],
    marks: 6,
    answer: answerOf(simple.strengthAbv, 3, '% vol', 1),
    working: [
      'ln(F/W) = ∫ dx/(y* − x) from the residue to the charge.',
      `W/F = ${((chargeMol - distillateMol) / chargeMol).toFixed(4)}: the integral reaches ln(F/W) at a residue of x = ${simple.residueMoleFraction.toFixed(4)}.`,
      `Mean distillate: (F x_F − W x_W)/(F − W) = ${simple.distillateMoleFraction.toFixed(3)} mol/mol = ${simple.strengthAbv.toFixed(1)} % vol.`,
      `Gain: ${product.strengthAbv.toFixed(1)} − ${simple.strengthAbv.toFixed(1)} = ${(product.strengthAbv - simple.strengthAbv).toFixed(1)} % vol.`,
    ],
    answerLines: 9,
  });
};

const seeThroughTemperature: Maker = ({ plateau, rows }) => {
  if (plateau === null) return null;
  const middleS = (plateau.statistics.span.fromS + plateau.statistics.span.toS) / 2;
  const vapour = rows.find((row) => row.timeS >= middleS && row.vapourAbv !== null)?.vapourAbv;
  if (vapour == null) return null;
  const width = vapour.high - vapour.low;
  // Chosen for the question: at the azeotrope, and well up the steep part of the curve.
  const [nearAbv, warmerK] = [95, 3];
  const temperatureAt = (leastStrengthAbv: number) =>
    limitTemperatureC({ leastStrengthAbv, pressureKPa: plateau.pressureKPa });
  const perAbvK = temperatureAt(nearAbv - 0.5) - temperatureAt(nearAbv + 0.5);
  return exercise({
    id: 'undergraduate-sensitivity',
    level: 'undergraduate',
    title: 'How well does a thermometer know the strength?',
    question: `In the middle of the plateau the tool gives the strength of the vapour as an interval. Explain from the shape of the dew curve why the interval is as wide as it is, and how it would change if the head were ${warmerK} K warmer.`,
    given: [
      `Strength there: ${intervalWords(vapour, '% vol')} (95 %); probe u = ${(plateau.mean.standardUncertainty).toFixed(2)} K.`,
    ],
    marks: 4,
    answer: answerInWords(
      `The dew curve is nearly flat at the azeotrope (about ${perAbvK.toFixed(2)} K per % vol at ${nearAbv} % vol), so a small error in temperature is a large one in strength: here ${width.toFixed(1)} % vol wide. ${warmerK} K warmer the curve is steeper and the interval narrower.`,
    ),
    working: [
      'u(q) = u(T)/|dT/dq|: the flatter the curve, the larger u(q); at the azeotrope dT/dq = 0.',
      'A perfect thermometer would not end it: the barometer and the equilibrium data have doubts of their own.',
    ],
    answerLines: 6,
  });
};

const judgeYield: Maker = ({ books }) => {
  if (books.ferment === null) return null;
  const { theoreticalG, fermentationPercent, distillationPercent, overallPercent } = books.ferment;
  const practicalPercent = ((100 * pasteurEthanolGPerG) / gayLussacGPerG).toFixed(1);
  return exercise({
    id: 'undergraduate-yield',
    level: 'undergraduate',
    title: 'From sugar to product',
    question: `Work out the theoretical ethanol from the sugar fermented and the yields of fermentation, of distillation and overall. Compare the first with Pasteur’s ${practicalPercent} %.`,
    given: [
      `Sugar (as hexose): ${measuredWords({ value: theoreticalG.value / gayLussacGPerG, standardUncertainty: theoreticalG.standardUncertainty / gayLussacGPerG }, 'g')}. C₆H₁₂O₆ → 2 C₂H₅OH + 2 CO₂.`,
    ],
    marks: 5,
    answer: answerOf(overallPercent.value, Math.max(1, overallPercent.standardUncertainty), '%', 1),
    working: [
      `Theoretical: 2 × ${ethanolMolarMassGPerMol.toFixed(2)}/${hexoseMolarMassGPerMol.toFixed(2)} = ${gayLussacGPerG.toFixed(4)} g/g: ${measuredWords(theoreticalG, 'g')}.`,
      `Fermentation ${measuredWords(fermentationPercent, '%')}, distillation ${measuredWords(distillationPercent, '%')}, overall ${measuredWords(overallPercent, '%')}.`,
      // Source: see pasteurEthanolGPerG.
      `Yeast makes cells, glycerol and other products from part of the sugar; Pasteur found ${(100 * pasteurEthanolGPerG).toFixed(1)} g of ethanol from 100 g of hexose.`,
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
