import { describe, expect, test } from 'vitest';
import { numbersWithoutSource } from '../../scripts/check-numbers.ts';
import { bareNumbersInCode, bareNumbersInPage } from '../../scripts/checks/bare-numbers.ts';

const wordsIn = (code: string, file = 'text.tsx') =>
  bareNumbersInCode(file, code).map(({ words }) => words);

describe('a number with a unit in a text', () => {
  test('is found in literals, in the fixed parts of templates and between tags', () => {
    const code = [
      "const first = 'It moves the plateau by 0.3 K for every kPa.';",
      'const second = `A table says 78.1 °C, here ' + '$' + '{here} °C and 778 J/mL.`;',
      'const third = <p>Between 60 and 110\u00a0kPa</p>;',
    ].join('\n');
    expect(bareNumbersInCode('text.tsx', code)).toEqual([
      { line: 1, words: '0.3 K' },
      { line: 2, words: '78.1 °C' },
      { line: 2, words: '778 J/mL' },
      { line: 3, words: '60 and 110 kPa' },
    ]);
  });

  test('is in order once it is computed, or a source stands beside it, before it or in it', () => {
    expect(wordsIn('const a = `' + '$' + '{slope} K`;')).toEqual([]);
    expect(wordsIn("const a = '5 mL'; // common practice, no source")).toEqual([]);
    expect(wordsIn("/** Source: a handbook. */\nconst a = { words: ['5 mL'] };")).toEqual([]);
    expect(wordsIn("const a = '± 30 %; round figure, no source';")).toEqual([]);
    expect(wordsIn("const a = '20 °C and 95 % at 101.325 kPa';")).toEqual([]);
  });

  test('is not excused by what is said of the function around it, or by a comment that names nothing', () => {
    const inFunction = "/** Source: a handbook. */\nfunction a() {\n  return '5 mL';\n}";
    expect(wordsIn(inFunction)).toEqual(['5 mL']);
    expect(wordsIn("// About five.\nconst a = '5 mL';")).toEqual(['5 mL']);
  });

  test('is none in names, styles, formulas and other numbers', () => {
    expect(
      wordsIn("const a = ['100%', 'v1.5 m2', 'last-30-min', '2 × 46.07/180.16 g/g'];"),
    ).toEqual([]);
  });

  test('must stand as a name in double braces on a page of the help', () => {
    expect(bareNumbersInPage('From {{low}} to {{high}}.\nAbout 5 mL.')).toEqual([
      { line: 2, words: '5 mL' },
    ]);
  });
});

test('every number in the texts of window, report, worksheets and help is computed or has a source', () => {
  expect(numbersWithoutSource()).toEqual([]);
});
