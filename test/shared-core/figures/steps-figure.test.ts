import { expect, test } from 'vitest';
import { stepsFigure } from '../../../shared-core/figures/steps-figure.ts';
import { pathsOf, wordsOf } from './support/read-off.ts';

const step = (name: string, grams: number, spread: number) => ({
  name,
  grams,
  low: Math.max(0, grams - spread),
  high: grams + spread,
  words: `${grams} g`,
  colour: '#abcdef',
  texture: 'plain' as const,
});

function drawn() {
  const drawing = stepsFigure(
    [step('Sugar', 60, 5), step('Ferment', 30, 2), step('Lost', 0, 4)],
    'Ethanol / g',
  );
  if (drawing === null) throw new Error('no figure');
  return drawing;
}

/** Grams at a place, by the ticks of the lower axis. */
function gramsAt(drawing: ReturnType<typeof drawn>) {
  const ticks = wordsOf(drawing).filter(
    ({ anchor, text }) => anchor === 'middle' && /^\d+$/.test(text),
  );
  const [first, last] = [ticks[0], ticks.at(-1)];
  const [from = 0, to = 0] = [first?.at[0], last?.at[0]];
  return (x: number) =>
    Number(
      (
        Number(first?.text) +
        ((x - from) / (to - from)) * (Number(last?.text) - Number(first?.text))
      ).toFixed(6),
    ) + 0;
}

test('each mass is a bar from nothing to itself with a whisker over its interval, read off by the axis', () => {
  const drawing = drawn();
  const grams = gramsAt(drawing);
  const bars = pathsOf(drawing).filter(({ fill }) => fill === '#abcdef');
  // Of nothing there is no bar.
  expect(bars.map(({ points }) => [points[0], points[1]].map((at) => grams(at?.[0] ?? 0)))).toEqual(
    [
      [0, 60],
      [0, 30],
    ],
  );
  const whiskers = pathsOf(drawing).filter(({ stroke }) => stroke?.widthPt === 1.2);
  const spans = whiskers.map(({ points }) => points.map(([x]) => grams(x)));
  expect(spans).toEqual([
    [55, 65],
    [55, 55],
    [65, 65],
    [28, 32],
    [28, 28],
    [32, 32],
    [0, 4],
    [0, 0],
    [4, 4],
  ]);
});

test('each has its row with its name before and its words behind, in order, within the drawing', () => {
  const drawing = drawn();
  const bars = pathsOf(drawing).filter(({ fill }) => fill === '#abcdef');
  const rows = ['Sugar', 'Ferment', 'Lost'].map((name, index) => {
    const named = wordsOf(drawing).find(({ text }) => text === name);
    const valued = wordsOf(drawing).find(({ text }) => text === ['60 g', '30 g', '0 g'][index]);
    expect(named?.at[1]).toBe(valued?.at[1]);
    expect([named?.anchor, valued?.anchor]).toEqual(['end', 'start']);
    expect(valued?.at[0]).toBeGreaterThan(named?.at[0] ?? Number.NaN);
    return named?.at[1] ?? Number.NaN;
  });
  expect(rows[1]! - rows[0]!).toBe(30);
  expect(rows[2]! - rows[1]!).toBe(30);
  for (const [index, { points }] of bars.entries()) {
    const [top, bottom] = [points[0]?.[1] ?? 0, points[2]?.[1] ?? 0];
    // 20 pt high, its words and its whisker at half its height.
    expect([bottom - top, rows[index]! - 3 - top]).toEqual([20, 10]);
  }
  const whiskers = pathsOf(drawing).filter(({ stroke }) => stroke?.widthPt === 1.2);
  expect(whiskers.map(({ points }) => points.map(([, y]) => y))).toEqual(
    rows.flatMap((row) => [
      [row - 3, row - 3],
      [row - 8, row + 2],
      [row - 8, row + 2],
    ]),
  );
  expect(drawing.heightPt).toBeGreaterThan(Math.max(...wordsOf(drawing).map(({ at }) => at[1])));
});

test('it says in words what it draws; of nothing there is none', () => {
  expect(drawn().altText).toBe('Ethanol / g: Sugar 60 g; Ferment 30 g; Lost 0 g.');
  expect(wordsOf(drawn()).some(({ text }) => text === 'Ethanol / g')).toBe(true);
  expect(stepsFigure([], 'Ethanol / g')).toBeNull();
});
