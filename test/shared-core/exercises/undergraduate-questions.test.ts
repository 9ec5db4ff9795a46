import { expect, test } from 'vitest';
import { balanceBatch } from '../../../shared-core/bookkeeping/balance-batch.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { plainEntries, plainStudy } from './support/plain-study.ts';
import { printedQuestion } from './support/printed-question.ts';

const plain = plainStudy();
const asked = (id: string) =>
  printedQuestion(
    exercisesOf(plain, 'undergraduate').find((question) => question.id === id) ?? null,
  );

test('the plateau is brought to standard pressure by Clausius and Clapeyron', () => {
  expect(asked('undergraduate-pressure')).toEqual([
    'undergraduate-pressure (undergraduate): Correct the plateau for pressure [5 marks, 8 lines]',
    'Bring the mean plateau temperature to 101.325 kPa with the Clausius–Clapeyron equation, and compare with the azeotrope there (78.15 °C: Carey and Lewis, Ind. Eng. Chem. 24 (1932) 882). What composition does the difference speak for?',
    '- Plateau: (78.40~±~0.20)~°C (k = 2) at 98.30 kPa.',
    '- Apparent enthalpy of vaporisation of the azeotrope, from the slope of its vapour pressure: 40.7 kJ/mol. R = 8.314 J/(mol K).',
    '= 79.17~°C (accept ±0.05~°C)',
    '  corrected plateau: 79.17 ± 0.05 °C',
    '> dT/d ln p = R T²/ΔH (Clausius–Clapeyron, vapour ideal, liquid volume neglected).',
    '> It is apparent because the composition moves along with the pressure and the vapour is taken for ideal; a calorimeter would find about 39.3 kJ/mol.',
    '> R T²/ΔH = 8.314·10⁻³ × 351.55²/40.7 = 25.25 K.',
    '> ΔT = 25.25 × ln(101.325/98.30) = 0.77 K; T = 79.17 °C.',
    '> The tool’s equilibrium model gives 79.14 °C: the shift of the azeotrope itself, 77.38 → 78.14 °C.',
    '> The plateau lies (1.02~±~0.22)~K above the azeotrope: the vapour is on the water side of it.',
  ]);
});

test('the doubt of a temperature becomes one of strength by the slope of the dew curve', () => {
  expect(asked('undergraduate-sensitivity')).toEqual([
    'undergraduate-sensitivity (undergraduate): How well does a thermometer know the strength? [4 marks, 6 lines]',
    'The thermometer’s standard uncertainty is 0.10 K. What standard uncertainty of the vapour’s strength follows from it at the plateau, and what if the head were 3 K warmer? Is the interval wider or narrower there, and why?',
    '- Dew curve at 98.3 kPa: 92.1 % vol at 77.9 °C; 88.3 % vol at 78.9 °C; 83.6 % vol at 80.9 °C; 81.6 % vol at 81.9 °C. The first two lie about the plateau.',
    '= at the plateau 0.38~% vol (accept ±0.05~% vol); 3 K warmer 0.20~% vol (accept ±0.05~% vol). 3 K warmer the interval is narrower.',
    '  at the plateau: 0.38 ± 0.05 % vol',
    '  3 K warmer: 0.2 ± 0.05 % vol',
    '> u(q) = u(T)·|dq/dT|: the flatter the dew curve T(q), the larger u(q); at the azeotrope dT/dq = 0.',
    '> At the plateau: (92.1 − 88.3)/1 = 3.8 % vol/K, times 0.10 K: 0.38 % vol.',
    '> 3 K warmer: (83.6 − 81.6)/1 = 2.0 % vol/K, times 0.10 K: 0.20 % vol.',
    '> A perfect thermometer would not end it: the barometer and the equilibrium data have doubts of their own.',
  ]);
});

test('the ethanol is balanced with the masses and fractions as printed', () => {
  // 250 mL of 12 % vol hold 30 mL, at 0.7892 g/mL 23.68 g; 18 mL and 9 mL were collected.
  // U: 2.6/245.6 and 0.33/9.64 of the charge, 0.85/16.58 and 0.85/85.66 by two thirds, 0.92/13.64 and 0.70/52.09 by a third.
  expect(asked('undergraduate-balance')).toEqual([
    'undergraduate-balance (undergraduate): Balance the ethanol, with its uncertainty [8 marks, 12 lines]',
    'Work out the ethanol charged and collected in grams, the recovery, and its expanded uncertainty (k = 2, all readings independent). Which measurement would you improve first? How many grams are missing?',
    '- Charge: (245.6~±~2.6)~g with a mass fraction of ethanol of (9.64~±~0.33)~%.',
    '- Cut 1: (16.58~±~0.85)~g with a mass fraction of ethanol of (85.66~±~0.85)~%.',
    '- Cut 2: (13.64~±~0.92)~g with a mass fraction of ethanol of (52.09~±~0.70)~%.',
    '- Residue: (99.7~±~2.0)~g with a mass fraction of ethanol of (0.79~±~0.16)~%.',
    '- Masses and mass fractions ± U with k = 2.',
    '= charged 23.68~g (accept ±0.10~g); collected 21.31~g (accept ±0.10~g); recovery 90.0~% (accept ±0.8~%); U 4.9~% (accept ±1.0~%); missing 1.6~g (accept ±0.2~g). First: strength of charge or mass of cut 1.',
    '  charged: 23.68 ± 0.1 g',
    '  collected: 21.31 ± 0.1 g',
    '  recovery: 90 ± 0.8 %',
    '  U: 4.9 ± 1 %',
    '  missing: 1.6 ± 0.2 g',
    '> Charged: 245.6 × 9.64/100 = 23.68 g ethanol.',
    '> Collected: 16.58 × 85.66/100 + 13.64 × 52.09/100 = 21.31 g. Recovery: 90.0 %.',
    '> Relative uncertainties add as squares: U(R)/R = √Σ(U/value)², a cut’s weighted by its share of the ethanol: U = 4.9 %. Largest part: strength of charge or mass of cut 1.',
    '> The tool rounds nothing on the way: (90.0~±~4.9)~%.',
    '> Missing: 23.68 − 21.31 − 0.79 = 1.6 g, what stayed in the column among it. The balance does not close: hold-up, evaporation or a misread value.',
  ]);
});

test('readings of one instrument are not told to be independent, and its part in U is named', () => {
  const instrument = { name: 'Alcoholometer 70–100', standardUncertainty: 0.5 };
  const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
  const cut = (number: number, abv: number) => ({
    number,
    strength: {
      by: 'alcoholometer' as const,
      indicatedAbv: about(abv, 0.6),
      temperatureC: about(20, 0.5),
      instrument,
    },
  });
  const study = plainStudy({}, { ...plainEntries, cuts: [cut(1, 90), cut(2, 75)] });
  const question = exercisesOf(study, 'undergraduate').find(
    ({ id }) => id === 'undergraduate-balance',
  );
  expect(question?.question).toContain('(k = 2, taking all readings as independent)');
  expect(question?.working).toContain(
    'The strengths of Cut 1, Cut 2 hang on one and the same instrument (Alcoholometer 70–100), so they are not quite independent: what it is off by is in all of them, adds up before it is squared, and makes U larger.',
  );
  const { recoveryPercent } = study.books.balance!.ethanol;
  const apart = balanceBatch({
    ...study.books,
    cuts: study.books.cuts.map(({ booked }) => ({ ...booked!, instrument: null })),
  }).ethanol.recoveryPercent;
  expect(recoveryPercent.standardUncertainty).toBeGreaterThan(apart.standardUncertainty);
});

test('plates are counted on the diagram and by Fenske’s equation', () => {
  expect(asked('undergraduate-plates')).toEqual([
    'undergraduate-plates (undergraduate): Count the plates twice [8 marks, 8 lines, to draw on, solved]',
    'Step off the equilibrium stages at total reflux on the diagram, then calculate them with Fenske’s equation and the geometric mean of the relative volatilities. Why do the two differ, and which do you trust?',
    '- Distillate x = 0.700 (95 %: 0.686–0.715); pot x = 0.029 (95 %: 0.027–0.030); between cut 1 as measured and the pot halfway through it, from the ethanol balance (hold-up neglected).',
    '- Relative volatility over the pot 11.2, over the distillate 1.32.',
    '= stepped 3.5~stages (accept ±0.4~stages); Fenske 3.2~stages (accept ±0.2~stages)',
    '  stepped: 3.5 ± 0.4 stages',
    '  Fenske: 3.2 ± 0.2 stages',
    '> Steps between curve and diagonal: 3.5 stages, the pot counted; 2.5 plates in the column.',
    '> Fenske: ln[(0.700/0.300) × (0.971/0.029)]/ln √(11.2 × 1.32) = 3.2 stages.',
    "> Steps at total reflux and Fenske's formula count the same stages, the pot among them. Relative volatility falls from 11.2 over the pot to 1.32 over the distillate. Fenske's formula takes 3.84 everywhere and so gives fewer stages than the steps, each of which uses its own; trust the steps.",
    '> The interval of the compositions alone gives 3.1–3.8 stages.',
  ]);
});

test('Rayleigh’s equation is integrated over the printed table', () => {
  expect(asked('undergraduate-rayleigh')).toEqual([
    'undergraduate-rayleigh (undergraduate): What would a still without a column have given? [6 marks, 9 lines]',
    'Apply Rayleigh’s equation to the charge and the number of moles of distillate, as if there were no column. What is the mole fraction of the distillate? Compare it with what was measured: was there a column at work?',
    '- Charge: 12.83 mol, x = 0.0401. Distillate: 0.957 mol, as measured 77.4 % vol; by Rayleigh it would have 54.8 % vol.',
    '- x: 1/(y* − x) at 98.3 kPa: 0.0401:~3.83; 0.0373:~3.96; 0.0347:~4.11; 0.0322:~4.28; 0.0300:~4.45; 0.0279:~4.64; 0.0259:~4.85; 0.0241:~5.07; 0.0224:~5.31; 0.0208:~5.57; 0.0194:~5.84; 0.0180:~6.15.',
    '= 0.258~mol/mol (accept ±0.021~mol/mol). Measured minus Rayleigh: +22.6~% vol.',
    '  mean distillate: 0.258 ± 0.021 mol/mol',
    '> ln(F/W) = ∫ dx/(y* − x) from the residue to the charge, by trapezia over the table.',
    '> W/F = 0.9254: the integral reaches ln(F/W) = 0.0775 at a residue of x = 0.0225.',
    '> Mean distillate: (F x_F − W x_W)/(F − W) = 0.258 mol/mol. Integrated finely it is 0.258 mol/mol, that is 54.8 % vol.',
  ]);
});

test('the yields are those of the printed masses', () => {
  expect(asked('undergraduate-yield')).toEqual([
    'undergraduate-yield (undergraduate): From sugar to product [5 marks, 6 lines]',
    'Work out the theoretical ethanol from the sugar fermented and the yields of fermentation, of distillation and overall. Compare the first with Pasteur’s 94.6 %.',
    '- Sugar (as hexose): 50.0 g. C₆H₁₂O₆ → 2 C₂H₅OH + 2 CO₂; 2 × 46.07/180.16 = 0.5114 g/g.',
    '- Ethanol in the charge: 23.68 g; in all receivers: 21.31 g.',
    '= fermentation 92.6~% (accept ±0.5~%); distillation 90.0~% (accept ±0.5~%); overall 83.3~% (accept ±0.5~%)',
    '  fermentation: 92.6 ± 0.5 %',
    '  distillation: 90 ± 0.5 %',
    '  overall: 83.3 ± 0.5 %',
    '> Theoretical: 0.5114 × 50.0 = 25.57 g.',
    '> Fermentation 23.68/25.57 = 92.6 %, distillation 21.31/23.68 = 90.0 %, overall 21.31/25.57 = 83.3 %.',
    '> Yeast makes cells, glycerol and other products from part of the sugar; Pasteur found 48.4 g of ethanol in every 100 g of hexose.',
  ]);
});
