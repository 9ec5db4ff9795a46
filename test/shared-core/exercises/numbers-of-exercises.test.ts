import { describe, expect, test } from 'vitest';
import {
  azeotrope,
  azeotropeSlopeKPerKPa,
  exerciseLevels,
  strengthFromMoleFraction,
  studyRun,
} from '#shared-core';
import {
  fermentYield,
  pasteurEthanolGPerG,
} from '../../../shared-core/bookkeeping/ferment-yield.ts';
import { publishedAzeotrope } from '../../../shared-core/equilibrium/published-azeotrope.ts';
import { exercisesOf } from '../../../shared-core/exercises/exercises-of.ts';
import { pearRun } from '../report/support/pear-run.ts';

const { run } = pearRun();
const study = studyRun(run);
const pressureKPa = study.plateau?.pressureKPa ?? Number.NaN;
const allWords = (id: string): string => {
  const found = exerciseLevels
    .flatMap((level) => exercisesOf(study, level))
    .find((exercise) => exercise.id === id);
  if (found === undefined) throw new Error(`There is no exercise ${id}.`);
  const { question, given, answer, working } = found;
  return [question, ...given, answer.words, ...working].join('\n');
};

describe('numbers in questions and answers', () => {
  test('what is called a table’s value is the published one, with its source, not the model’s', () => {
    const { temperatureC, cited } = publishedAzeotrope;
    expect(temperatureC).not.toBe(azeotrope(publishedAzeotrope.pressureKPa).temperatureC);
    expect(allWords('school-pressure')).toContain(`95.6 % ethanol (by mass) boils at 78.15 °C`);
    expect(allWords('school-pressure')).toContain(cited);
    expect(allWords('undergraduate-pressure')).toContain(`(78.15 °C: ${cited})`);
  });

  test('the enthalpy from the slope is called apparent, and told apart from a calorimeter’s', () => {
    const words = allWords('undergraduate-pressure');
    expect(words).toContain('Apparent enthalpy of vaporisation of the azeotrope, from the slope');
    const [apparent, measured] = [/pressure: ([\d.]+) kJ/, /find about ([\d.]+) kJ/].map((form) =>
      Number(form.exec(words)?.[1]),
    );
    expect((apparent ?? 0) - (measured ?? 0)).toBeGreaterThan(1);
  });

  test('the rule for pressure and the strongest distillate are those of this air pressure', () => {
    const halfwayKPa = (publishedAzeotrope.pressureKPa + pressureKPa) / 2;
    expect(allWords('school-pressure')).toContain(
      `the rule: ${azeotropeSlopeKPerKPa(halfwayKPa).toFixed(2)} °C for every kilopascal`,
    );
    const strongestAbv = strengthFromMoleFraction(azeotrope(pressureKPa).ethanolMoleFraction);
    expect(allWords('school-azeotrope')).toContain(`about ${strongestAbv.toFixed(0)} % vol`);
  });

  test('Pasteur’s percentage is what his grams make of the equation', () => {
    const exact = (value: number) => ({ value, standardUncertainty: 0 });
    const { fermentationPercent } = fermentYield({
      sugarG: exact(100),
      fermentEthanolG: exact(100 * pasteurEthanolGPerG),
      productEthanolG: exact(1),
    });
    const words = allWords('undergraduate-yield');
    expect(words).toContain(`Pasteur’s ${fermentationPercent.value.toFixed(1)} %`);
    expect(words).toContain('48.4 g of ethanol in every 100 g of hexose');
  });
});
