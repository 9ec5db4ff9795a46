import { expect, test } from 'vitest';
import { keyOf, worksheetOf } from '../../../shared-core/report/distillation-sheets.ts';
import { plainReport } from './support/plain-report.ts';
import { printedPage } from './support/printed-page.ts';

const run = plainReport();

test('a worksheet has cautions, the curve as recorded, and each question with its data, its marks and room to write', () => {
  expect(printedPage(worksheetOf(run, 'school'))).toEqual([
    'Worksheet: Pear-juice ferment / School level · 19 marks · Name ____________________  Date ____________  Group ______',
    '## Cautions',
    '! Strength from the head temperature is an estimate. It is worked out for ethanol and water alone and says nothing about methanol or anything else.',
    '! Nobody drinks any of it. Methanol comes over in every fraction, no temperature shows it, and no cut takes it away. Nothing that comes out of this rig becomes drinkable.',
    '<Head temperature of the run, as recorded.>',
    '1. Read the plateau [3]',
    'Below the curve is enlarged. Find its longest part at or below 82.7 °C, with the heat on, in which the temperature changes by no more than 1 °C. At what temperature does it lie, and how many minutes does it last?',
    '- Up to 82.7 °C the vapour here holds at least 80 % vol.',
    '- The heat was taken off at 1:05:00.',
    'Marks: temperature 2, length 1.',
    '<>',
    '___',
    '2. What happened when? [4]',
    'How many minutes after the beginning does this happen, and what does it mean at the still? A: the curve rises past 60 °C for good. B: the curve rises past 82.7 °C for good, while the heat is on (use the enlarged curve).',
    '- The heat was taken off at 1:05:00.',
    'Marks: A 2, B 2.',
    '____',
    '3. A different boiling point [3]',
    'A table says that a mixture with 95.6 % ethanol (by mass) boils at 78.15 °C. At what temperature does it boil here? Use the rule: 0.25 °C for every kilopascal.',
    '- Air pressure at the still: 98.3 kPa. The table means 101.3 kPa (Carey and Lewis, Ind. Eng. Chem. 24 (1932) 882).',
    '____',
    '4. How much of the ethanol came over? [4]',
    'How many millilitres of pure ethanol were in the flask? How many are in the receivers 1, 2 together? What percentage is that?',
    '- In the flask: 250 mL of 12 % vol.',
    '- Receiver 1: 20.0 mL of 90.0 % vol.',
    '- Receiver 2: 15.0 mL of 60.0 % vol.',
    'Marks: ethanol charged 2, recovery 2.',
    '_____',
    '5. What would you do better? [3]',
    'The aim was distillate of at least 80 % vol, that is a head at or below 82.7 °C. By how many minutes was the heat taken off too late? (Write 0 if it was not.) Give the reason from the curve, and say what you would do.',
    '- The heat was taken off at 1:05:00.',
    '____',
    '6. Why not 100 %? [2]',
    'However long the column is, the distillate never gets stronger than about 97 % vol. Why?',
    '___',
    '(Still Head Monitor 0.1.0 · monitor model 1 · equilibrium model ethanol-water-nrtl-1)',
  ]);
});

test('a key has both levels on one page, a row a question, marks part by part', () => {
  expect(printedPage(keyOf(run))).toEqual([
    'Key: Pear-juice ferment / For the teacher: answers, what to accept, marks part by part',
    '[School level: 19 marks]',
    'Question | Answer | Marks →',
    '1  Read the plateau | temperature 78.4~°C (accept ±0.3~°C); length 35~min (accept ±9~min) | 2 + 1 = 3',
    '2  What happened when? | A 13.5~min (accept ±2.0~min); B 54.2~min (accept ±2.0~min) | 2 + 2 = 4',
    '3  A different boiling point | 77.4~°C (accept ±0.15~°C) | 3',
    '4  How much of the ethanol came over? | ethanol charged 30.0~mL (accept ±0.3~mL); recovery 90.0~% (accept ±1.0~%) | 2 + 2 = 4',
    '5  What would you do better? | 10.8~min (accept ±2.0~min). Take the heat off, or change the receiver, when the curve leaves the plateau. | 3',
    '6  Why not 100 %? | Liquid and vapour have the same composition there (azeotrope, here at 77.4 °C), so boiling changes nothing any more. | 2',
    '[Undergraduate level: 36 marks]',
    'Question | Answer | Marks →',
    '1  Correct the plateau for pressure | 79.17~°C (accept ±0.05~°C) | 5',
    '2  How well does a thermometer know the strength? | at the plateau 0.38~% vol (accept ±0.05~% vol); 3 K warmer 0.20~% vol (accept ±0.05~% vol). 3 K warmer the interval is narrower. | 2 + 2 = 4',
    '3  Balance the ethanol, with its uncertainty | charged 23.68~g (accept ±0.10~g); collected 21.31~g (accept ±0.10~g); recovery 90.0~% (accept ±0.8~%); U 4.9~% (accept ±1.0~%); missing 1.6~g (accept ±0.2~g). First: strength of charge or mass of cut 1. | 2 + 2 + 2 + 1 + 1 = 8',
    '4  Count the plates twice | stepped 3.5~stages (accept ±0.4~stages); Fenske 3.2~stages (accept ±0.2~stages) | 4 + 4 = 8',
    '5  What would a still without a column have given? | 0.258~mol/mol (accept ±0.021~mol/mol). Measured minus Rayleigh: +22.6~% vol. | 6',
    '6  From sugar to product | fermentation 92.6~% (accept ±0.5~%); distillation 90.0~% (accept ±0.5~%); overall 83.3~% (accept ±0.5~%) | 2 + 2 + 1 = 5',
    '(Still Head Monitor 0.1.0 · monitor model 1 · equilibrium model ethanol-water-nrtl-1)',
  ]);
});
