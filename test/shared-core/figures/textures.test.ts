import { expect, test } from 'vitest';
import type { Point } from '../../../shared-core/figures/drawing.ts';
import { type Texture, texturedBox } from '../../../shared-core/figures/textures.ts';

/** Lines over a box from (100, 50), 30 wide and 16 high, by its corner. */
function linesOf(texture: Texture): readonly (readonly Point[])[] {
  const [ground, ...lines] = texturedBox(100, 50, 130, 66, '#abcdef', texture);
  expect(ground).toMatchObject({
    fill: '#abcdef',
    closed: true,
    points: [
      [100, 50],
      [130, 50],
      [130, 66],
      [100, 66],
    ],
  });
  return lines.flatMap((shape) =>
    shape.kind === 'path' ? [shape.points.map(([x, y]) => [x - 100, y - 50] as const)] : [],
  );
}

test('a plain box has no lines, a level one has them 4 pt apart', () => {
  expect(linesOf('plain')).toEqual([]);
  expect(linesOf('level')).toEqual(
    [3, 7, 11].map((y) => [
      [0.5, y],
      [29.5, y],
    ]),
  );
});

test('slanted lines go up at 45°, or down, 6 pt apart, from edge to edge', () => {
  // They meet the lower edge at −10, −4, 2 … 26 and are 16 pt wide, where the box lets them.
  const ends = [-10, -4, 2, 8, 14, 20, 26].map((start) => [
    start,
    Math.max(0, start),
    Math.min(30, start + 16),
  ]);
  expect(linesOf('rising')).toEqual(
    ends.map(([start = 0, from = 0, to = 0]) => [
      [from, 16 - (from - start)],
      [to, 16 - (to - start)],
    ]),
  );
  expect(linesOf('falling')).toEqual(
    ends.map(([start = 0, from = 0, to = 0]) => [
      [from, from - start],
      [to, to - start],
    ]),
  );
  expect(linesOf('cross')).toEqual([...linesOf('rising'), ...linesOf('falling')]);
});

test('dots stand in rows 4 pt apart, each row between those of the one above', () => {
  const row = (y: number, from: number, count: number) =>
    Array.from({ length: count }, (_, index) => [from + 6 * index, y]);
  const dots = linesOf('dots');
  expect(dots.map(([at]) => at)).toEqual([...row(3, 3, 5), ...row(7, 6, 4), ...row(11, 3, 5)]);
  expect(dots.every(([from, to]) => Math.abs((to?.[0] ?? 0) - (from?.[0] ?? 0) - 0.7) < 1e-9)).toBe(
    true,
  );
});
