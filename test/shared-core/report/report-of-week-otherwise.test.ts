import { describe, expect, test } from 'vitest';
import { fermentKind } from '../../../shared-core/report/ferment-kind.ts';
import { massesOfFerment } from '../../../shared-core/report/ferment-steps.ts';
import {
  overlayOfFerments,
  reportOfFerments,
  weekFigure,
} from '../../../shared-core/report/report-of-ferment.ts';
import { plainWeek } from '../exercises/support/plain-week.ts';
import { printedPage } from './support/printed-page.ts';

type Week = ReturnType<typeof plainWeek>;

const plain = plainWeek();
const linesOf = (changes: Partial<Week>) =>
  printedPage(reportOfFerments([{ ...plain, ...changes }]));
const heard = {
  atIso: '2026-03-09T08:00:00.000Z',
  lowC: 29,
  meanC: 30,
  highC: 31,
  minutes: 10,
};

describe('the report of a week', () => {
  test('says what the judge says as far as it is known', () => {
    const verdict = {
      ...plain.verdict,
      because: 'It works.',
      expectedEndGravity: { low: 0.994, value: 0.996, high: 0.998 },
      donePercent: { low: 80, value: 85.4, high: 90 },
      problems: ['The gravity 1.070 was doubted.'],
    };
    expect(linesOf({ verdict }).slice(5, 13)).toEqual([
      '- It works.',
      '- Volume 1000 mL; sugar as hexose 128 to 132 g; in it: 1 L of pear juice.',
      '- Strength by its log: 8.0 % vol (7.6 to 8.4 % vol).',
      '- Gravity before anything fermented: 1.060 (1.059 to 1.061).',
      '- Gravity expected at its end: 0.996 (0.994 to 0.998).',
      '- Of what can ferment has fermented: 85 % (80 to 90 %).',
      '- By its log it is not ready for the still; not met: ended, degassed, settled, strained.',
      '- The gravity 1.070 was doubted.',
    ]);
    const unknown = { ...plain.verdict, strengthAbv: null, originalGravity: null };
    expect(linesOf({ verdict: unknown }).slice(5, 9)).toEqual([
      '- Nothing was read yet.',
      '- Volume 1000 mL; sugar as hexose 128 to 132 g; in it: 1 L of pear juice.',
      '- By its log it is not ready for the still; not met: ended, degassed, settled, strained.',
      expect.stringMatching(/^<Figure 1/),
    ]);
  });

  test('says of what went in only what was stated', () => {
    const stated = { ...plain.kept.stated, wentIn: '', sugarG: null };
    expect(linesOf({ kept: { ...plain.kept, stated } })[6]).toBe(
      '- Volume 1000 mL; sugar not stated.',
    );
  });

  test('says that it is ready, and between what it was kept', () => {
    const lines = linesOf({
      advice: { isGo: true, unmet: [], leastPotMl: 2000 },
      stretches: [heard],
    });
    expect(lines.slice(9, 11)).toEqual([
      '- By its log it is ready for the still: finished, degassed, settled and strained.',
      '- Kept under watch between 25.0 and 34.0 °C.',
    ]);
  });

  test('has a table of its days where a probe was heard', () => {
    const tally = {
      lowC: 24.04,
      meanC: 29.96,
      highC: 31,
      heardH: 12,
      belowH: 1.5,
      aboveH: 0,
    } as Week['days'][number]['tally'];
    const lines = linesOf({ days: [{ day: 2, tally }] });
    const at = lines.findIndex((line) => line.includes('How warm it was'));
    expect(lines.slice(at, at + 3)).toEqual([
      '[Table 2. How warm it was (°C), and for how long outside 25.0 to 34.0 °C]',
      'Day → | Lowest → | Mean → | Highest → | Heard / h → | Below / h → | Above / h →',
      '2 | 24.0 | 30.0 | 31.0 | 12.0 | 1.5 | 0.0',
    ]);
  });

  test('draws the strength along the way where it was judged twice', () => {
    const judged = (timeH: number, value: number) => ({
      timeH,
      state: 'working' as const,
      strengthAbv: { low: value - 0.5, value, high: value + 0.5 },
      gravity: { low: 1.01, value: 1.02, high: 1.03 },
      donePercent: { low: 10, value: 20, high: 30 },
    });
    const caption =
      '<Figure 2. Strength by the readings up to each moment. Shaded: 90 % interval.>';
    expect(linesOf({ course: [judged(24, 2), judged(48, 4)] })).toContain(caption);
    expect(linesOf({})).not.toContain(caption);
  });

  test('leaves out what there is not, and says why the sugar cannot be balanced', () => {
    const lines = linesOf({ moments: [], balance: null });
    expect(lines.filter((line) => /^[<[]/.test(line))).toEqual([]);
    expect(lines).toContain(
      'How much of the sugar became ethanol can’t be said: its sugar or its strength is not known.',
    );
  });

  test('has what was done before each reading, and every kind of reading', () => {
    const [first] = plain.moments;
    const read = {
      ...first!.read,
      ph: 3.86,
      bubblesPerMin: 12,
      refractometerPercent: 7.25,
      treatments: ['degassed' as const, 'settled' as const],
    };
    expect(linesOf({ moments: [{ ...first!, timeH: 36, gravityAt20C: null, read }] })).toContain(
      '1.5 | – | 1480.0 | 24.0 | 12 | 3.9 | 7.3 | degassed, settled',
    );
  });
});

test('several weeks make one report, their gravities over one another, a page each', () => {
  const lines = printedPage(reportOfFerments([plain, { ...plain, runId: 'other', name: 'Other' }]));
  expect(lines[0]).toBe('Ferment report: 2 ferments / plain, other');
  expect(lines[4]).toBe('<Figure 1. Gravities of all ferments at 20 °C.>');
  expect(lines.filter((line) => line === '=====')).toHaveLength(2);
  expect(lines).toContain(
    '4. By more than their intervals: in what do the ferments differ, and why?',
  );
  expect(reportOfFerments([]).footer).toBe('');
});

test('gravities are laid over one another as far as they were read', () => {
  const other = { ...plain, name: 'Other', moments: plain.moments.slice(0, 3) };
  expect(JSON.stringify(overlayOfFerments([plain, other]))).toContain('Other');
  expect(overlayOfFerments([plain])).toBeNull();
});

describe('the drawing of a week', () => {
  const drawn = (changes: Partial<Week>, isSolved = true) =>
    weekFigure({ ...plain, ...changes }, isSolved)?.altText ?? '';
  const expectedEndGravity = { low: 0.994, value: 0.996, high: 0.998 };

  test('tells the end that is expected to the teacher alone', () => {
    const verdict = { ...plain.verdict, expectedEndGravity };
    expect(drawn({ verdict })).toContain('0.994');
    expect(drawn({ verdict }, false)).not.toContain('0.994');
  });

  test('has the warmth that a probe heard, else what was read of it', () => {
    const stretches = [
      { ...heard, atIso: '2026-03-08T07:00:00.000Z', meanC: 31.5 },
      { ...heard, meanC: 28.5 },
    ];
    expect(drawn({ stretches })).toContain('31.5');
    expect(drawn({})).not.toContain('31.5');
  });
});

test('the drawings of a week are named in their order, null where there is nothing to draw', () => {
  const names = (changes: Partial<Week>) =>
    fermentKind
      .figures({ ...plain, ...changes })
      .map(({ name, drawing }) => `${name} ${drawing !== null}`);
  expect(names({})).toEqual(['week true', 'strength false', 'sugar true']);
  expect(names({ moments: [], balance: null })).toEqual([
    'week false',
    'strength false',
    'sugar false',
  ]);
});

test('the sheets of a week have its cautions, its week, and its questions', () => {
  const worksheet = printedPage(fermentKind.worksheet(plain, 'school'));
  expect(worksheet[0]).toMatch(/^Worksheet: Pear juice \/ School level · 11 marks/);
  expect(worksheet).toContain('<The week as it was entered and heard.>');
  expect(worksheet.join('\n')).toContain('! Never seal a vessel that ferments.');
  const empty = { ...plain, moments: [] };
  expect(printedPage(fermentKind.worksheet(empty, 'school')).join('\n')).not.toContain('<The week');
  expect(printedPage(fermentKind.markingSheet(plain, 'undergraduate'))[0]).toMatch(
    /^Marking sheet: Pear juice \/ Undergraduate level · 20 marks/,
  );
  expect(printedPage(fermentKind.key(plain))[0]).toMatch(/^Key: Pear juice/);
  expect(printedPage(fermentKind.groupSheets([plain, plain], 'school'))).toEqual(
    expect.arrayContaining(['# Group 2: Pear juice', '(Still Head Monitor 0.1.0)']),
  );
});

test('the masses of a ferment stand in the order in which they become each other', () => {
  expect(
    plain.balance && massesOfFerment(plain.balance).map(({ name, massG }) => [name, massG.value]),
  ).toEqual([
    ['Sugar at first', 130],
    ['of it fermented', 123.4],
    ['Ethanol at most', 66.5],
    ['Ethanol by the log', 63.1],
    ['Gas with it', 60.3],
  ]);
});
