import { expect, test } from 'vitest';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { plainStudy } from './support/plain-study.ts';
import { printedQuestion } from './support/printed-question.ts';

const plain = plainStudy();
const asked = (id: string) =>
  printedQuestion(exercisesOf(plain, 'school').find((question) => question.id === id) ?? null);

test('the plateau is read between its ends, to half its height or 0.3 K, and a quarter of its length', () => {
  expect(asked('school-plateau')).toEqual([
    'school-plateau (school): Read the plateau [3 marks, 3 lines, to draw on, solved]',
    'Below the curve is enlarged. Find its longest part at or below 82.7 °C, with the heat on, in which the temperature changes by no more than 1 °C. At what temperature does it lie, and how many minutes does it last?',
    '- Up to 82.7 °C the vapour here holds at least 80 % vol.',
    '- The heat was taken off at 1:05:00.',
    '= temperature 78.4~°C (accept ±0.3~°C); length 35~min (accept ±9~min)',
    '  temperature: 78.4 ± 0.3 °C',
    '  length: 35 ± 9 min',
    '> A ruler laid along the flat part reads 78.4 °C; the record’s mean over it is the same.',
    '> It lasts from 0:15:00 to 0:50:00.',
  ]);
});

test('moments are read where the head last passes 60 °C and the limit', () => {
  // 60 °C after 600 s + 300 s · 40/58.4 = 805 s, seen in the row at 810 s; 82.7 °C after 3000 s + 4.3 · 60 s = 3258 s, last not passed at 3250 s.
  // An eye reads to a fortieth: of 70 min and of the 55 min from the plateau on.
  expect(asked('school-stages')).toEqual([
    'school-stages (school): What happened when? [4 marks, 4 lines]',
    'How many minutes after the beginning does this happen, and what does it mean at the still? A: the curve rises past 60 °C for good. B: the curve rises past 82.7 °C for good, while the heat is on (use the enlarged curve).',
    '- The heat was taken off at 1:05:00.',
    '= A 13.5~min (accept ±2.0~min); B 54.2~min (accept ±2.0~min)',
    '  A: 13.5 ± 2 min',
    '  B: 54.2 ± 2 min',
    '> A, at 0:13:30: vapour has reached the thermometer: until then the bulb hung in air.',
    '> B, at 0:54:10: the vapour has become weaker than 80 % vol: less and less ethanol is left in the flask.',
  ]);
});

test('the boiling point follows the rule by hand, and the key prints the limit that it is marked by', () => {
  expect(asked('school-pressure')).toEqual([
    'school-pressure (school): A different boiling point [3 marks, 4 lines]',
    'A table says that a mixture with 95.6 % ethanol (by mass) boils at 78.15 °C. At what temperature does it boil here? Use the rule: 0.25 °C for every kilopascal.',
    '- Air pressure at the still: 98.3 kPa. The table means 101.3 kPa (Carey and Lewis, Ind. Eng. Chem. 24 (1932) 882).',
    '= 77.4~°C (accept ±0.15~°C)',
    '  boiling point: 77.4 ± 0.15 °C',
    '> Difference in pressure: 101.3 − 98.3 = 3.0 kPa.',
    '> Difference in temperature: 3.0 × 0.25 = 0.75 °C.',
    '> 78.15 − 0.75 = 77.4 °C.',
    '> Lower pressure, lower boiling point: the vapour has less air to push against.',
  ]);
});

test('the recovery is that of volumes times strengths', () => {
  // The flask: 2 · 0.2 of 12 is 3.3 %, 2.7 of 250 is 1.1 %; as squares 3.5 %.
  expect(asked('school-recovery')).toEqual([
    'school-recovery (school): How much of the ethanol came over? [4 marks, 5 lines]',
    'How many millilitres of pure ethanol were in the flask? How many are in the receivers 1, 2 together? What percentage is that?',
    '- In the flask: 250 mL of 12 % vol.',
    '- Receiver 1: 20.0 mL of 90.0 % vol.',
    '- Receiver 2: 15.0 mL of 60.0 % vol.',
    '= ethanol charged 30.0~mL (accept ±0.3~mL); recovery 90.0~% (accept ±1.0~%)',
    '  ethanol charged: 30 ± 0.3 mL',
    '  recovery: 90 ± 1 %',
    '> In the flask: 250 × 12/100 = 30.0 mL ethanol.',
    '> In the receivers: 20.0 × 90.0/100 + 15.0 × 60.0/100 = 27.0 mL ethanol.',
    '> 27.0/30.0 × 100 % = 90.0 %.',
    '> The flask held ±2.7 mL and ±0.40 % vol (k = 2): by that alone the percentage is uncertain by 3.5 % of itself.',
    '> The rest is still in the flask, clings to the column, or was lost as vapour.',
  ]);
});

test('heat is late by what passed since the head left the limit', () => {
  expect(asked('school-critique')).toEqual([
    'school-critique (school): What would you do better? [3 marks, 4 lines]',
    'The aim was distillate of at least 80 % vol, that is a head at or below 82.7 °C. By how many minutes was the heat taken off too late? (Write 0 if it was not.) Give the reason from the curve, and say what you would do.',
    '- The heat was taken off at 1:05:00.',
    '= 10.8~min (accept ±2.0~min). Take the heat off, or change the receiver, when the curve leaves the plateau.',
    '  late by: 10.8 ± 2 min',
    '> The curve passes 82.7 °C for good at 0:54:10; the heat came off at 1:05:00: 10.8 min later.',
    '> From there on each drop is weaker than wanted and thins what is already in the receiver.',
  ]);
});

test('why the distillate is never pure is asked for words', () => {
  expect(asked('school-azeotrope')).toEqual([
    'school-azeotrope (school): Why not 100 %? [2 marks, 3 lines]',
    'However long the column is, the distillate never gets stronger than about 97 % vol. Why?',
    '= Liquid and vapour have the same composition there (azeotrope, here at 77.4 °C), so boiling changes nothing any more.',
    '> One mark for “same composition”, one for “so distillation no longer separates”.',
  ]);
});
