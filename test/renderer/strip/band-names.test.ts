import { describe, expect, test } from 'vitest';
import { bandNames } from '../../../renderer/strip/band-names.ts';
import { clearPlace, type Point, runsThrough } from '../../../renderer/strip/clear-place.ts';
import { fanLines, traceLines } from '../../../renderer/strip/lines-on-strip.ts';

const box = { left: 10, top: 10, width: 20, height: 10 };

describe('runsThrough', () => {
  test.each<readonly [string, readonly Point[], boolean]>([
    [
      'across',
      [
        [0, 15],
        [40, 15],
      ],
      true,
    ],
    [
      'steeply, with both ends outside',
      [
        [19, 0],
        [21, 40],
      ],
      true,
    ],
    [
      'past a corner',
      [
        [0, 12],
        [12, 0],
      ],
      false,
    ],
    [
      'above',
      [
        [0, 5],
        [40, 9],
      ],
      false,
    ],
    [
      'ending inside',
      [
        [0, 0],
        [12, 12],
      ],
      true,
    ],
    ['a lone point inside', [[12, 12]], true],
    ['no point at all', [], false],
  ])('%s', (_, line, expected) => {
    expect(runsThrough(line, box)).toBe(expected);
  });

  test('of places the first that is clear is taken, and none where all are crossed', () => {
    const other = { ...box, left: 100 };
    const across: Point[] = [
      [0, 15],
      [40, 15],
    ];
    expect(clearPlace([box, other], [across])).toBe(other);
    expect(
      clearPlace(
        [box, other],
        [
          [
            [0, 15],
            [200, 15],
          ],
        ],
      ),
    ).toBe(null);
  });
});

describe('bandNames', () => {
  // A phone: the plot is 263 px wide.
  const frame = { left: 84, right: 347 };
  const measures = { textPx: 15 };
  const band = {
    limitY: 100,
    azeotropeY: 150,
    limitTexts: ['80 % vol at 83.3 °C', '80 % vol'],
    azeotropeTexts: ['azeotrope at 78.0 °C', 'azeotrope'],
  } as const;
  const placed = (lines: readonly (readonly Point[])[], over = {}) => {
    const {
      limit,
      azeotrope,
      band: middle,
    } = bandNames({ ...band, ...over }, frame, measures, lines);
    return [limit, azeotrope, middle].map((name) => name && [name.text, Math.round(name.x)]);
  };

  test('stand at the left while no line is there', () => {
    expect(placed([])).toEqual([
      ['80 % vol at 83.3 °C', 94],
      ['azeotrope at 78.0 °C', 94],
      ['plateau', 94],
    ]);
  });

  test('move to the right of a front that rises at the left', () => {
    expect(
      placed([
        [
          [120, 300],
          [122, 20],
        ],
      ]),
    ).toEqual([
      ['80 % vol at 83.3 °C', 195],
      ['azeotrope at 78.0 °C', 187],
      ['plateau', 285],
    ]);
  });

  test('are shortened where the whole name is clear nowhere', () => {
    expect(
      placed([
        [
          [215, 300],
          [217, 20],
        ],
      ]),
    ).toEqual([
      ['80 % vol', 94],
      ['azeotrope', 94],
      ['plateau', 94],
    ]);
  });

  test('stand short at the left, below the line, where nothing is clear; the band then goes unnamed', () => {
    const hatched: Point[][] = Array.from({ length: 60 }, (_, i) => [
      [84 + i * 5, 0],
      [84 + i * 5, 300],
    ]);
    expect(placed(hatched)).toEqual([['80 % vol', 94], ['azeotrope', 94], null]);
  });

  test('leave whole a line that would run through the pale rim around them', () => {
    // The name at the left ends at x = 94 + 19 · 7.5; its rim reaches 2.5 px farther.
    const beside = (x: number): Point[] => [
      [x, 0],
      [x, 300],
    ];
    expect([placed([beside(237.5)])[0], placed([beside(240)])[0]]).toEqual([
      ['80 % vol', 94],
      ['80 % vol at 83.3 °C', 94],
    ]);
  });

  test.each([15, 43])(
    'at %d px of type the limit’s name and its rim stand above the limit’s line',
    (textPx) => {
      const { limit } = bandNames(band, { left: 84, right: 900 }, { textPx }, []);
      // Letters reach a quarter of their height below the baseline, the rim a third of a half of it farther; the line is 5 px at most.
      expect(limit.y + (0.25 + 0.33 / 2) * textPx).toBeLessThanOrEqual(band.limitY - 2.5);
    },
  );

  test('the band has its long name where that leaves most of it free', () => {
    expect(bandNames(band, { left: 84, right: 700 }, measures, []).band?.text).toBe(
      'plateau band on this probe',
    );
  });

  test('a band lower than three lines of type has no name of its own', () => {
    expect(placed([], { azeotropeY: 112 })[2]).toBe(null);
  });
});

const scale = {
  xOf: (timeS: number) => timeS,
  yOf: (temperatureC: number) => 100 - temperatureC,
  freeXOf: (timeS: number) => timeS,
  freeYOf: (temperatureC: number) => 100 - temperatureC,
};

test('the trace is as many lines as it has stretches', () => {
  const drawn = [
    { timeS: 1, value: 20 },
    { timeS: 2, value: 21 },
    { timeS: 3, value: null },
    { timeS: 4, value: 22 },
  ];
  expect(traceLines(drawn, scale)).toEqual([
    [
      [1, 80],
      [2, 79],
    ],
    [[4, 78]],
  ]);
});

test('the forecast bends as its curve is drawn, and is none where the head is past the limit', () => {
  const fan = { fromS: 0, fromC: 78, limitC: 82, endS: { low: 10, value: 20, high: 40 } };
  expect(fanLines(scale, fan)[2]).toEqual([
    [0, 22],
    [20, 21],
    [40, 18],
  ]);
  expect(fanLines(scale, { ...fan, fromC: 82 })).toEqual([]);
});
