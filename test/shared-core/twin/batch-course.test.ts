import { describe, expect, test } from 'vitest';
import { createBatchSimulation, pearFermentSetup } from '#shared-core';
import { courseAt, emptyCourse, runCourse } from '../../../shared-core/twin/batch-course.ts';
import { chargeAmounts } from '../../../shared-core/twin/charge-amounts.ts';
import { equilibriumTables, readTable } from '../../../shared-core/twin/equilibrium-tables.ts';
import type { StillGuess } from '../../../shared-core/twin/still-guess.ts';

const guess: StillGuess = {
  plates: 4.8,
  refluxRatio: 3.2,
  lossShare: 0.8,
  vapourMolPerS: 0.0012,
  strengthAbv: 10.5,
  holdUpMol: 0.025,
  biasK: 0,
};

describe('runCourse', () => {
  test('loses and makes no ethanol: pot, plates and distillate add up to the charge', () => {
    const course = emptyCourse();
    const bare = { ...guess, holdUpMol: 1e-6 };
    runCourse(bare, 330, 12, course);
    const last = course.count - 1;
    let distilled = 0;
    for (let index = 1; index <= last; index += 1) {
      const head = course.headMoleFraction[index] as number;
      const flow =
        (course.distillateMl[index] as number) - (course.distillateMl[index - 1] as number);
      distilled +=
        (flow / readTable(equilibriumTables(), equilibriumTables().molarVolumeMl, head)) * head;
    }
    const potX = course.potMoleFraction[last] as number;
    const curve = equilibriumTables();
    const inPot =
      ((course.potMl[last] as number) / readTable(curve, curve.molarVolumeMl, potX)) * potX;
    const charged = 330 * chargeAmounts(bare.strengthAbv).ethanolMol;
    expect(Math.abs((distilled + inPot) / charged - 1)).toBeLessThan(0.002);
  });

  test('the head only gets weaker once the column has settled', () => {
    const course = emptyCourse();
    runCourse(guess, 330, 10, course);
    const heights = Array.from(course.headHeightK.subarray(6, course.count));
    expect(
      heights.filter((height, index) => index > 0 && height < (heights[index - 1] ?? 0) - 1e-6),
    ).toEqual([]);
    expect(heights[heights.length - 1]).toBeGreaterThan(10);
  });

  test('more plates or more reflux keep the head purer', () => {
    const at = (changed: Partial<StillGuess>): number => {
      const course = emptyCourse();
      runCourse({ ...guess, ...changed }, 330, 12, course);
      return courseAt(course, course.headHeightK, 1200);
    };
    expect(at({ plates: 7 })).toBeLessThan(at({}));
    expect(at({ plates: 2 })).toBeGreaterThan(at({}));
  });

  test('follows the dynamic simulator of the demonstration rig within 0.4 K and 10 % in volume on the plateau', () => {
    const still = createBatchSimulation(pearFermentSetup());
    still.advance(1200);
    const { boilUpMolPerS, refluxRatio } = still.state;
    const course = emptyCourse();
    runCourse(
      {
        ...guess,
        plates: 5,
        refluxRatio: refluxRatio ?? 3,
        vapourMolPerS: boilUpMolPerS,
        holdUpMol: 0.045,
      },
      330,
      12,
      course,
    );
    const startedMl = still.state.distillateVolumeMl;
    const startedAt = startedMl / ((courseAt(course, course.distillateMl, 600) as number) / 600);
    still.advance(2100);
    const truth = still.state;
    const azeotropeC = 77.657;
    const height = courseAt(course, course.headHeightK, startedAt + 900);
    const volume = courseAt(course, course.distillateMl, startedAt + 900);
    expect(Math.abs(height - (truth.headVapourTemperatureC - azeotropeC))).toBeLessThan(0.4);
    expect(Math.abs(volume / truth.distillateVolumeMl - 1)).toBeLessThan(0.1);
  });
});
