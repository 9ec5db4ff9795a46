import { describe, expect, test } from 'vitest';
import type { ExerciseLevel } from '../../../shared-core/exercises/exercise.ts';
import { fermentExercises } from '../../../shared-core/exercises/ferment-exercises.ts';
import { plainWeek } from './support/plain-week.ts';
import { printedQuestion } from './support/printed-question.ts';

const week = plainWeek();
const asked = (id: string, level: ExerciseLevel) =>
  printedQuestion(fermentExercises(week, level).find((question) => question.id === id) ?? null);

describe('at school', () => {
  test('the fall of the gravity is the strength by rule', () => {
    expect(asked('school-fall-of-gravity', 'school')).toEqual([
      'school-fall-of-gravity (school): How far did the gravity fall? [2 marks, 4 lines]',
      'Sugar makes the juice heavier than water; alcohol makes it lighter. By how much did the gravity fall from the first reading to the last, and how strong is the ferment by the rule: strength in % vol = 131.25 × fall?',
      '- Gravity at first: 1.060; at last: 1.000 (both at 20 °C).',
      '= fall 0.060 (accept ±0.001); strength 7.9~% vol (accept ±0.2~% vol)',
      '  fall: 0.06 ± 0.001',
      '  strength: 7.9 ± 0.2 % vol',
      '> Fall: 1.060 − 1.000 = 0.060.',
      '> Strength: 131.25 × 0.060 = 7.9 % vol.',
    ]);
  });

  test('the fastest day is that between the second and the third reading', () => {
    expect(asked('school-fastest-day', 'school')).toEqual([
      'school-fastest-day (school): When did the yeast work hardest? [2 marks, 3 lines]',
      'Between which two readings that follow each other did the gravity fall fastest? By how much in a day?',
      '- Day 0.0: gravity 1.060.',
      '- Day 1.0: gravity 1.050.',
      '- Day 2.0: gravity 1.020.',
      '- Day 3.0: gravity 1.004.',
      '- Day 4.0: gravity 1.000.',
      '= 0.0300 (accept ±0.0010). Between day 1.0 and day 2.0.',
      '  fall in a day: 0.03 ± 0.001',
      '> (1.050 − 1.020)/1.0 = 0.0300 in a day.',
      '> At first there is little yeast; at last there is little sugar: in between it goes fastest.',
    ]);
  });

  test('the sugar is that of the alcohol, as a school’s sheet rounds the equation', () => {
    // A hundredth of each, twice as much of what follows from the two, at least 0.2.
    expect(asked('school-sugar-to-alcohol', 'school')).toEqual([
      'school-sugar-to-alcohol (school): How much sugar became alcohol? [4 marks, 7 lines]',
      'How many millilitres of alcohol are in the ferment, and how many grams? From how many grams of sugar did they come? What percentage of the sugar is that?',
      '- In the vessel: 1000 mL of 8.0 % vol.',
      '- A millilitre of alcohol weighs 0.79 g. 100 g of sugar give at most 51 g of alcohol and 49 g of gas.',
      '- Sugar at the beginning: 130 g.',
      '= alcohol 80.0~mL (accept ±0.8~mL); alcohol by mass 63.2~g (accept ±0.6~g); sugar 123.9~g (accept ±2.4~g); share 95.3~% (accept ±2.0~%)',
      '  alcohol: 80 ± 0.8 mL',
      '  alcohol by mass: 63.2 ± 0.6 g',
      '  sugar: 123.9 ± 2.4 g',
      '  share: 95.3 ± 2 %',
      '> 1000 × 8.0/100 = 80.0 mL of alcohol.',
      '> 80.0 × 0.79 = 63.2 g.',
      '> 63.2 × 100/51 = 123.9 g of sugar.',
      '> 123.9/130 × 100 % = 95.3 %.',
      '> The rest fed the yeast, became other things such as glycerol, or is still there.',
    ]);
  });

  test('the mass that went is gas, and takes room', () => {
    expect(asked('school-never-sealed', 'school')).toEqual([
      'school-never-sealed (school): Why is the vessel never sealed? [3 marks, 4 lines]',
      'The vessel became lighter. What left it, how many grams and how many litres of it? What would have happened had it been closed?',
      '- Vessel and ferment at first: 1480.0 g; at last: 1424.0 g.',
      '- A gram of carbon dioxide takes 0.56 L in a warm room.',
      '= gas 56.0~g (accept ±0.1~g); room 31.4~L (accept ±0.6~L). Carbon dioxide, with a little water and alcohol. The gas needs hundreds of times the room of the sugar; in a closed vessel the pressure grows until it bursts.',
      '  gas: 56 ± 0.1 g',
      '  room: 31.4 ± 0.6 L',
      '> 1480.0 − 1424.0 = 56.0 g.',
      '> 56.0 × 0.56 = 31.4 L. Every gram of alcohol comes with 0.96 g of the gas.',
    ]);
  });
});

describe('at a university', () => {
  test('two gravities are the strength by Balling', () => {
    // 135.997 · 1.191016 − 630.272 · 1.1236 + 1111.14 · 1.06 − 616.868 = 14.74.
    expect(asked('undergraduate-balling', 'undergraduate')).toEqual([
      'undergraduate-balling (undergraduate): From two gravities to the strength [6 marks, 10 lines]',
      'Work out the extracts of both gravities, the real extract that is left, the ethanol by mass and by volume. Why does a hydrometer show less extract than there is?',
      '- Gravity (20/20) at first: s₀ = 1.060; at last: s = 1.000.',
      '- Extract in % by mass: 135.997 s³ − 630.272 s² + 1111.14 s − 616.868.',
      '- Balling: real extract E = 0.1808 p + 0.8192 m (p original, m apparent); ethanol A = (p − E)/(2.0665 − 1.0665 p/100) in % by mass.',
      '- Strength in % vol = A s/0.7907.',
      '= original extract 14.74~% (accept ±0.10~%); real extract 2.66~% (accept ±0.10~%); ethanol 6.33~% (accept ±0.10~%); strength 8.0~% vol (accept ±0.2~% vol). Ethanol is lighter than water and hides extract.',
      '  original extract: 14.74 ± 0.1 %',
      '  real extract: 2.66 ± 0.1 %',
      '  ethanol: 6.33 ± 0.1 %',
      '  strength: 8 ± 0.2 % vol',
      '> p = 14.74 %; m = 0.00 %.',
      '> E = 0.1808 × 14.74 + 0.8192 × (0.00) = 2.66 %.',
      '> A = (14.74 − 2.66)/(2.0665 − 1.0665 × 14.74/100) = 6.33 %.',
      '> 6.33 × 1.000/0.7907 = 8.0 % vol. The log as a whole says 8.0 % vol (90 % interval 7.6 to 8.4).',
    ]);
  });

  test('a division of the scale is a doubt of the strength', () => {
    expect(asked('undergraduate-strength-doubt', 'undergraduate')).toEqual([
      'undergraduate-strength-doubt (undergraduate): What does the scale leave open? [3 marks, 6 lines]',
      'Each gravity is read to the nearest division of 0.001. Take the error as evenly spread over ±0.0005 and both readings as independent: what are the standard uncertainty of the strength by strength = 131.25 × fall, and its share of the strength?',
      '- Fall of the gravity: 0.060.',
      '= u 0.054~% vol (accept ±0.005~% vol); share 0.7~% (accept ±0.1~%)',
      '  u: 0.054 ± 0.005 % vol',
      '  share: 0.7 ± 0.1 %',
      '> u(gravity) = 0.0005/√3; u(fall) = √2 u(gravity); u(strength) = 131.25 u(fall) = 0.054 % vol.',
      '> 0.054/(131.25 × 0.060) × 100 % = 0.7 %.',
    ]);
  });

  test('the yield and its uncertainty follow from sugar and strength', () => {
    // 0.411 % vol to either side of nine in ten are 0.25 % vol of standard uncertainty.
    expect(asked('undergraduate-sugar-yield', 'undergraduate')).toEqual([
      'undergraduate-sugar-yield (undergraduate): How much sugar became alcohol? [6 marks, 8 lines]',
      'Work out the ethanol that the sugar could give at most, the ethanol that is there, the yield of the fermentation and its expanded uncertainty (k = 2, both readings independent). Compare it with Pasteur’s 94.6 %.',
      '- Sugar at the beginning, as hexose: (130.0 ± 4.0) g, k = 2. C₆H₁₂O₆ → 2 C₂H₅OH + 2 CO₂: 0.5114 g/g.',
      '- Ferment: 1 L of (8.0 ± 0.5) % vol, k = 2; 7.892 g of ethanol in a litre for each % vol.',
      '= at most 66.48~g (accept ±0.30~g); there 63.14~g (accept ±0.30~g); yield 95.0~% (accept ±0.5~%); U 6.6~% (accept ±0.7~%)',
      '  at most: 66.48 ± 0.3 g',
      '  there: 63.14 ± 0.3 g',
      '  yield: 95 ± 0.5 %',
      '  U: 6.6 ± 0.7 %',
      '> At most: 0.5114 × 130.0 = 66.48 g.',
      '> There: 8.0 × 7.892 × 1 = 63.14 g. Yield: 95.0 %.',
      '> U = 95.0 × √((4.0/130.0)² + (0.5/8.0)²) = 6.6 %.',
      '> What is missing of 100 % is yeast, glycerol and other products, and sugar that is left.',
    ]);
  });

  test('the mass that went is a second way to the strength', () => {
    expect(asked('undergraduate-gas-to-ethanol', 'undergraduate')).toEqual([
      'undergraduate-gas-to-ethanol (undergraduate): A balance as a strength meter [5 marks, 8 lines]',
      'From the mass that the vessel lost work out the gas that was made, the ethanol that came with it and the strength. Does it agree with the strength by the gravities?',
      '- Vessel and ferment at first: 1480.0 g; at last: 1424.0 g; 1 L.',
      '- At 24 °C each gram of CO₂ carries 0.012 g of water away; 1.51 g of CO₂ stay dissolved in a litre.',
      '- 0.9553 g of CO₂ come with each gram of ethanol; 7.892 g of ethanol in a litre for each % vol.',
      '= gas 56.85~g (accept ±0.30~g); ethanol 59.51~g (accept ±0.30~g); strength 7.5~% vol (accept ±0.2~% vol)',
      '  gas: 56.85 ± 0.3 g',
      '  ethanol: 59.51 ± 0.3 g',
      '  strength: 7.5 ± 0.2 % vol',
      '> Lost: 1480.0 − 1424.0 = 56.0 g; gas among it 56.0/(1 + 0.012) g; with what stays dissolved, 1.51 × 1 g, = 56.85 g.',
      '> Ethanol: 56.85/0.9553 = 59.51 g; strength 59.51/(7.892 × 1) = 7.5 % vol.',
      '> The log as a whole says 8.0 % vol (90 % interval 7.6 to 8.4).',
    ]);
  });
});
