import { describe, expect, test } from 'vitest';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import type { RunStudy } from '../../../shared-core/study/study-run.ts';
import { plainByVolume } from '../by-volume/support/plain-by-volume.ts';
import { plainStudy } from './support/plain-study.ts';
import { printedQuestion } from './support/printed-question.ts';

const plain = plainStudy();

/** A run by volume through these points [mL, °C]; at 98.3 kPa 80 % vol is 82.7 °C. */
const through = (...points: readonly (readonly [number, number])[]): RunStudy => ({
  ...plain,
  byVolume: plainByVolume(points),
});
const asked = (study: RunStudy) =>
  printedQuestion(
    exercisesOf(study, 'school').find(({ id }) => id === 'school-cut-by-volume') ?? null,
  );
const volumeOf = (study: RunStudy) => asked(study).find((line) => line.startsWith('  volume'));

test('the cut is where the straight line between two readings passes the limit', () => {
  // From 82 °C at 20 mL to 84 °C at 30 mL: 82.7 °C at 23.5 mL. The key prints the limit that it is marked by.
  expect(asked(through([0, 78], [20, 82], [30, 84], [41, 90]))).toEqual([
    'school-cut-by-volume (school): Where would you cut? [2 marks, 3 lines, to draw on, solved]',
    'Below is the temperature against the distillate collected. At how many millilitres does it pass 82.7 °C for the last time, and why would you change the receiver there?',
    '- Up to 82.7 °C the vapour here holds at least 80 % vol.',
    '= 24~mL (accept ±2.1~mL). What comes later is weaker than 80 % vol and would dilute what is already in the receiver.',
    '  volume: 24 ± 2.1 mL',
    '> The curve passes 82.7 °C at 24 mL of 41 mL.',
    '> One mark for the volume, one for the reason.',
  ]);
});

test('less than 20 mL are read to a tenth', () => {
  expect(volumeOf(through([0, 78], [10, 82], [15, 84], [19.9, 90]))).toBe('  volume: 11.8 ± 1 mL');
  expect(volumeOf(through([0, 78], [10, 82], [15, 84], [20, 90]))).toBe('  volume: 12 ± 1 mL');
});

describe('nothing is asked', () => {
  test('where there is no volume, or no crossing', () => {
    expect(asked(plain)).toEqual([]);
    expect(asked(through([0, 78]))).toEqual([]);
    expect(asked(through([0, 78], [40, 82]))).toEqual([]);
  });

  test('where the crossing can’t be told from an end of the curve', () => {
    const crossingAt = (volumeMl: number) =>
      volumeOf(through([0, 78], [volumeMl - 0.01, 82.7], [volumeMl, 83], [60, 84])) !== undefined;
    // A twelfth of 60 mL is 5 mL.
    expect([4.9, 5.1, 54.9, 55.1].map(crossingAt)).toEqual([false, true, true, false]);
  });

  test('where the curve goes up and down across the limit, but for a wiggle', () => {
    const wiggle = (widthMl: number) =>
      volumeOf(
        through(
          [0, 78],
          [20, 82.7],
          [20.01, 83],
          [20 + widthMl, 82.7],
          [21 + widthMl, 84],
          [60, 90],
        ),
      );
    // A twentieth of 60 mL is 3 mL.
    expect([wiggle(2.9), wiggle(3.1)]).toEqual(['  volume: 23 ± 3 mL', undefined]);
  });
});
