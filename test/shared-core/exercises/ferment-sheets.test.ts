import { expect, test } from 'vitest';
import { exerciseLevels, fermentKind, type PrintedDocument, studyFerment } from '#shared-core';
import { fermentExercises } from '../../../shared-core/exercises/ferment-exercises.ts';
import { partMarks } from '../../../shared-core/exercises/part-marks.ts';
import { pearWeek, type WeekChanges } from '../study/support/pear-week.ts';

const weeks: readonly (readonly [string, WeekChanges])[] = [
  ['as planned', {}],
  ['of unknown sugar', { sugarG: null }],
  ['without a balance', { hasMass: false }],
  ['not degassed and colder', { isDegassed: false, hasWarmth: false }],
  ['of five litres', { volumeMl: 5000, sugarG: { low: 640, high: 660 } }],
  ['strong', { originalGravity: 1.09, endGravity: 0.994, sugarG: { low: 205, high: 215 } }],
  ['weak', { originalGravity: 1.03, endGravity: 1, sugarG: { low: 55, high: 65 }, halfH: 30 }],
  ['late', { halfH: 70 }],
];
const studies = weeks.map(([name, changes]) => [name, studyFerment(pearWeek(changes))] as const);

const wordsOf = ({ blocks }: PrintedDocument): string =>
  blocks
    .map((block) =>
      block.kind === 'list'
        ? block.items.join('\n')
        : 'text' in block
          ? block.text
          : block.kind === 'question'
            ? `# ${block.title}`
            : '',
    )
    .join('\n');

/** A question as a pupil has it: what stands between its heading and the next. */
function questionsOf(sheet: PrintedDocument): ReadonlyMap<string, string> {
  const parts = wordsOf(sheet).split('\n# ').slice(1);
  return new Map(parts.map((part) => [part.split('\n')[0] ?? '', part]));
}

/** The numbers that match, in their order; a comma or a true minus is none of theirs. */
function numbers(text: string, pattern: RegExp): readonly number[] {
  const found = pattern.exec(text);
  if (found === null) throw new Error(`Not on the sheet: ${pattern} in ${text}`);
  return found.slice(1).map(Number);
}

/** How each question is answered by somebody who has the sheet and nothing else. */
const solvers: Readonly<Record<string, (text: string) => readonly number[]>> = {
  'How far did the gravity fall?': (text) => {
    const [first = 0, last = 0] = numbers(
      text,
      /at first: (\d+(?:\.\d+)?); at last: (\d+(?:\.\d+)?)/,
    );
    const [rule = 0] = numbers(text, /strength in % vol = (\d+(?:\.\d+)?) × fall/);
    return [first - last, rule * (first - last)];
  },
  'When did the yeast work hardest?': (text) => {
    const read = [...text.matchAll(/Day (\d+(?:\.\d+)?): gravity (\d+(?:\.\d+)?)/g)].map(
      ([, day, gravity]) => [Number(day), Number(gravity)],
    );
    const falls = read.slice(1).map(([day = 0, gravity = 0], index) => {
      const [before = 0, from = 0] = read[index] ?? [];
      return (from - gravity) / (day - before);
    });
    return [Math.max(...falls)];
  },
  'How much sugar became alcohol?': (text) => {
    if (text.includes('In the vessel')) {
      const [ml = 0, abv = 0] = numbers(
        text,
        /vessel: (\d+(?:\.\d+)?) mL of (\d+(?:\.\d+)?) % vol/,
      );
      const [density = 0] = numbers(text, /alcohol weighs (\d+(?:\.\d+)?) g/);
      const [sugar = 0, alcohol = 1] = numbers(
        text,
        /(\d+(?:\.\d+)?) g of sugar give at most (\d+(?:\.\d+)?) g/,
      );
      const ethanolMl = (ml * abv) / 100;
      const turned = (ethanolMl * density * sugar) / alcohol;
      const began = /Sugar at the beginning: (\d+(?:\.\d+)?) g/.exec(text)?.[1];
      const share = began === undefined ? [] : [(100 * turned) / Number(began)];
      return [ethanolMl, ethanolMl * density, turned, ...share];
    }
    const [sugar = 1, sugarU = 0] = numbers(
      text,
      /hexose: \((\d+(?:\.\d+)?) ± (\d+(?:\.\d+)?)\) g/,
    );
    const [perG = 0] = numbers(text, /2 CO₂: (\d+(?:\.\d+)?) g\/g/);
    const [litres = 0, abv = 1, abvU = 0] = numbers(
      text,
      /Ferment: (\d+(?:\.\d+)?) L of \((\d+(?:\.\d+)?) ± (\d+(?:\.\d+)?)\) % vol/,
    );
    const [perAbv = 0] = numbers(text, /; (\d+(?:\.\d+)?) g of ethanol in a litre/);
    const [most, there] = [perG * sugar, abv * perAbv * litres];
    const percent = (100 * there) / most;
    return [most, there, percent, percent * Math.hypot(sugarU / sugar, abvU / abv)];
  },
  'Why is the vessel never sealed?': (text) => {
    if (!text.includes('Vessel and ferment')) return [];
    const [first = 0, last = 0] = numbers(
      text,
      /at first: (\d+(?:\.\d+)?) g; at last: (\d+(?:\.\d+)?) g/,
    );
    const [perG = 0] = numbers(text, /dioxide takes (\d+(?:\.\d+)?) L/);
    return [first - last, perG * (first - last)];
  },
  'From two gravities to the strength': (text) => {
    const [first = 0, last = 0] = numbers(
      text,
      /s₀ = (\d+(?:\.\d+)?); at last: s = (\d+(?:\.\d+)?)/,
    );
    const [a = 0, b = 0, c = 0, d = 0] = numbers(
      text,
      /(\d+(?:\.\d+)?) s³ − (\d+(?:\.\d+)?) s² \+ (\d+(?:\.\d+)?) s − (\d+(?:\.\d+)?)/,
    );
    const extract = (s: number) => ((a * s - b) * s + c) * s - d;
    const [share = 0, other = 0] = numbers(text, /E = (\d+(?:\.\d+)?) p \+ (\d+(?:\.\d+)?) m/);
    const [most = 0, slope = 0] = numbers(text, /\/\((\d+(?:\.\d+)?) − (\d+(?:\.\d+)?) p\/100\)/);
    const [density = 1] = numbers(text, /= A s\/(\d+(?:\.\d+)?)\./);
    const [p, m] = [extract(first), extract(last)];
    const real = share * p + other * m;
    const percent = (p - real) / (most - (slope * p) / 100);
    return [p, real, percent, (percent * last) / density];
  },
  'What does the scale leave open?': (text) => {
    const [half = 0] = numbers(text, /over ±(\d+(?:\.\d+)?) /);
    const [rule = 0] = numbers(text, /strength = (\d+(?:\.\d+)?) × fall/);
    const [fall = 1] = numbers(text, /Fall of the gravity: (\d+(?:\.\d+)?)\./);
    const u = (rule * half * Math.SQRT2) / Math.sqrt(3);
    return [u, (100 * u) / (rule * fall)];
  },
  'A balance as a strength meter': (text) => {
    const [first = 0, last = 0, litres = 1] = numbers(
      text,
      /at first: (\d+(?:\.\d+)?) g; at last: (\d+(?:\.\d+)?) g; (\d+(?:\.\d+)?) L/,
    );
    const [water = 0] = numbers(text, /carries (\d+(?:\.\d+)?) g of water/);
    const stays = /away; (\d+(?:\.\d+)?) g of CO₂ stay/.exec(text)?.[1] ?? '0';
    const [perEthanol = 1] = numbers(text, /(\d+(?:\.\d+)?) g of CO₂ come with each gram/);
    const [perAbv = 1] = numbers(text, /ethanol; (\d+(?:\.\d+)?) g of ethanol in a litre/);
    const gas = (first - last) / (1 + water) + Number(stays) * litres;
    return [gas, gas / perEthanol, gas / perEthanol / (perAbv * litres)];
  },
};

test.each(studies)(
  'the sheets of a ferment %s are answered from the print alone as their keys say',
  (_, study) => {
    const wrong: string[] = [];
    for (const level of exerciseLevels) {
      const asked = questionsOf(fermentKind.worksheet(study, level));
      const keys = fermentExercises(study, level);
      expect([...asked.keys()]).toEqual(keys.map(({ title }) => title));
      for (const { id, title, answer } of keys) {
        const found = solvers[title]?.(asked.get(title) ?? '') ?? [];
        const isRight =
          found.length === answer.quantities.length &&
          answer.quantities.every(
            ({ value, tolerance }, at) => Math.abs((found[at] ?? Number.NaN) - value) <= tolerance,
          );
        if (!isRight) wrong.push(`${id}: found ${found.join(', ')}; key: ${answer.words}`);
      }
    }
    expect(wrong).toEqual([]);
  },
);

test('each question is asked of some ferments, and not where its data are missing', () => {
  const asked = new Map<string, number>();
  for (const [, study] of studies) {
    for (const level of exerciseLevels) {
      for (const { id } of fermentExercises(study, level)) asked.set(id, (asked.get(id) ?? 0) + 1);
    }
  }
  expect(asked.size).toBe(8);
  expect(asked.get('undergraduate-gas-to-ethanol')).toBe(7);
  const [, without] = studies[2] ?? [];
  if (without === undefined) throw new Error('no such week');
  expect(fermentExercises(without, 'undergraduate').map(({ id }) => id)).not.toContain(
    'undergraduate-gas-to-ethanol',
  );
});

test('no worksheet holds an answer, every marking sheet all of them, and marks add up', () => {
  for (const [, study] of studies) {
    for (const level of exerciseLevels) {
      const sheet = wordsOf(fermentKind.worksheet(study, level));
      const marking = wordsOf(fermentKind.markingSheet(study, level));
      for (const exercise of fermentExercises(study, level)) {
        expect(sheet).not.toContain(exercise.answer.words);
        expect(marking).toContain(exercise.answer.words);
        const parts = partMarks(exercise).map(({ marks }) => marks);
        if (parts.length > 0) expect(parts.reduce((sum, one) => sum + one, 0)).toBe(exercise.marks);
      }
    }
  }
});

test('the two ways to the strength on the university sheet agree with the judge', () => {
  for (const [name, study] of studies) {
    const { value = 0 } = study.verdict.strengthAbv ?? {};
    for (const { id, answer } of fermentExercises(study, 'undergraduate')) {
      const strength = answer.quantities.find(({ of }) => of === 'strength');
      if (strength !== undefined) {
        expect(Math.abs(strength.value - value), `${name} ${id}`).toBeLessThan(0.8);
      }
    }
  }
});
