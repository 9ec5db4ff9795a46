import { expect, test } from 'vitest';
import { type FermentWeek, fermentFigure } from '../../../shared-core/figures/ferment-figure.ts';
import { dotsOf, pathsOf, readOff, rounded, wordsOf } from './support/read-off.ts';

const reading = (
  timeH: number,
  values: Partial<FermentWeek['readings'][number]>,
): FermentWeek['readings'][number] => ({
  timeH,
  gravity: null,
  massG: null,
  temperatureC: null,
  bubblesPerMin: null,
  isDegassed: false,
  ...values,
});

const week: FermentWeek = {
  readings: [
    reading(0, { gravity: 1.06, temperatureC: 24, massG: 1200, bubblesPerMin: 0 }),
    reading(48, { gravity: 1.03, temperatureC: 29, massG: 1180, bubblesPerMin: 40 }),
    reading(108, { gravity: 1, temperatureC: 27, massG: 1160, bubblesPerMin: 4 }),
  ],
  endGravity: { low: 0.994, high: 0.998 },
};

function drawn(of: FermentWeek = week) {
  const drawing = fermentFigure(of);
  if (drawing === null) throw new Error('no figure');
  return drawing;
}

/** What is read off the row of this place, from the top. */
const rowOf = (drawing: ReturnType<typeof drawn>, index: number) => {
  const top = 12 + 100 * index;
  const read = readOff(drawing, top - 3, top + 90);
  const isInside = ([, y]: readonly [number, number]) => y >= top && y <= top + 84;
  const paths = pathsOf(drawing).filter(({ points }) => points.every(isInside));
  return {
    read,
    lines: (widthPt: number) =>
      paths
        .filter(({ stroke }) => stroke?.colour === '#17152b' && stroke.widthPt === widthPt)
        .map(({ points }) => rounded(points.map(read))),
    dots: rounded(dotsOf(drawing).filter(isInside).map(read)),
    bands: paths
      .filter(({ fill }) => fill === '#d5ebd9')
      .map(({ points }) =>
        [points[2], points[0]].map((at) => at && Number(read(at)[1].toFixed(6))),
      ),
    edges: paths
      .filter(({ stroke }) => stroke?.colour === '#117733')
      .map(({ points }) => points.map((at) => Number(read(at)[1].toFixed(6)))),
  };
};

test('each quantity has its row over one axis of days, and is read off as it was read', () => {
  const drawing = drawn();
  expect(drawing.heightPt).toBe(4 * 100 + 34);
  const titles = wordsOf(drawing).flatMap(({ text, upright }) => (upright === true ? [text] : []));
  expect(titles).toEqual(['Gravity', 'Temperature / °C', 'Bubbles a minute', 'Mass / g']);
  const dots = [0, 1, 2, 3].map((index) => rowOf(drawing, index).dots);
  // 0, 48 and 108 h are 0, 2 and 4.5 days.
  const over = (...values: number[]) => [0, 2, 4.5].map((day, index) => [day, values[index]]);
  expect(dots).toEqual([
    over(1.06, 1.03, 1),
    over(24, 29, 27),
    over(0, 40, 4),
    over(1200, 1180, 1160),
  ]);
});

test('what was read at moments goes straight from one to the next: a ferment does not wait for its reader', () => {
  const drawing = drawn();
  const rows = [0, 1, 2, 3].map((index) => rowOf(drawing, index));
  expect(rows.map(({ lines }) => lines(1.2))).toEqual(rows.map(({ dots }) => [dots]));
});

test('the expected end and the warmth that is usual are shaded between their ends, and named', () => {
  const drawing = drawn();
  const [gravity, temperature, bubbles, mass] = [0, 1, 2, 3].map((index) => rowOf(drawing, index));
  expect(gravity?.bands).toEqual([[0.994, 0.998]]);
  expect(gravity?.edges).toEqual([
    [0.998, 0.998],
    [0.994, 0.994],
  ]);
  expect(temperature?.bands).toEqual([[25, 34]]);
  expect([bubbles?.bands, mass?.bands]).toEqual([[], []]);
  const words = wordsOf(drawing).map(({ text }) => text);
  expect(words).toEqual(expect.arrayContaining(['end expected', '25 to 34 °C']));
  const none = drawn({ ...week, endGravity: null });
  expect(rowOf(none, 0).bands).toEqual([]);
  expect(wordsOf(none).some(({ text }) => text === 'end expected')).toBe(false);
});

test('words of a band stand inside it, those of one too thin above it', () => {
  const drawing = drawn();
  const bandAt = (index: number) =>
    pathsOf(drawing)
      .filter(({ fill }) => fill === '#d5ebd9')
      [index]?.points.map(([, y]) => y) ?? [];
  const yOf = (words: string) => wordsOf(drawing).find(({ text }) => text === words)?.at[1] ?? 0;
  expect(yOf('end expected')).toBeLessThan(Math.min(...bandAt(0)));
  expect(yOf('25 to 34 °C')).toBeLessThan(Math.max(...bandAt(1)));
  expect(yOf('25 to 34 °C')).toBeGreaterThan(Math.min(...bandAt(1)));
});

test('days are told once, under the last row, every day of a week and every other day of a month', () => {
  const days = (lastH: number) =>
    wordsOf(
      drawn({
        readings: [reading(0, { massG: 1 }), reading(lastH, { massG: 1 })],
        endGravity: null,
      }),
    )
      .filter(({ anchor, text, at }) => anchor === 'middle' && /^\d+$/.test(text) && at[1] > 96)
      .map(({ text }) => Number(text));
  expect(days(24)).toEqual([0, 1, 2, 3]);
  expect(days(108)).toEqual([0, 1, 2, 3, 4, 5]);
  expect(days(14 * 24)).toEqual(Array.from({ length: 15 }, (_, day) => day));
  expect(days(15 * 24)).toEqual([0, 2, 4, 6, 8, 10, 12, 14]);
  const four = wordsOf(drawn()).filter(({ text }) => text === 'Days since it was begun');
  expect(four.map(({ at }) => at[1] > 300)).toEqual([true]);
});

test('what a probe heard is a line of its own, broken where it said nothing for more than half an hour', () => {
  const heard = [0, 0.25, 0.75, 1.5, 2].map((timeH, index) => ({
    timeH,
    temperatureC: 26 + index,
  }));
  const probed = drawn({ ...week, warmth: { heard, band: { lowC: 20, highC: 28 } } });
  const row = rowOf(probed, 1);
  const day = (timeH: number) => Number((timeH / 24).toFixed(6));
  expect(row.lines(0.9)).toEqual([
    [
      [0, 26],
      [day(0.25), 27],
      [day(0.75), 28],
    ],
    [
      [day(1.5), 29],
      [day(2), 30],
    ],
  ]);
  // Readings by hand stay as dots, without the straight line between them.
  expect(row.lines(1.2)).toEqual([]);
  expect(row.dots).toHaveLength(3);
  expect(row.bands).toEqual([[20, 28]]);
  expect(probed.altText).toContain(
    'Temperature: 5 readings, first 26.0 °C, last 30.0 °C, 26.0 °C to 30.0 °C; shaded from 20.0 °C to 28.0 °C.',
  );
});

test('a week lasts as long as its probe was heard', () => {
  const heard = [0, 120].map((timeH) => ({ timeH, temperatureC: 26 }));
  const { altText } = drawn({ ...week, warmth: { heard, band: { lowC: 20, highC: 28 } } });
  expect(altText).toMatch(/^The ferment over 5 days\. Gravity: /);
  expect(altText).toMatch(/Mass: 3 readings, first 1200 g, last 1160 g, 1160 g to 1200 g\.$/);
});

test('what was never read has no row', () => {
  const drawing = drawn({ readings: [reading(0, { massG: 900 })], endGravity: week.endGravity });
  const titles = wordsOf(drawing).flatMap(({ text, upright }) => (upright === true ? [text] : []));
  expect([titles, drawing.heightPt]).toEqual([['Mass / g'], 134]);
});

test('a cursor goes through all rows at its hour, and stays at the end when asked for later', () => {
  const cursorOf = (cursorH: number) => {
    const drawing = drawn({ ...week, cursorH });
    const line = pathsOf(drawing).find(({ stroke }) => stroke?.colour === '#882255')?.points ?? [];
    const read = rowOf(drawing, 0).read;
    return [line.map((at) => Number(read(at)[0].toFixed(6))), line.map(([, y]) => y)];
  };
  // Rows end at 12 + 4·100 − 16 = 396 pt.
  expect(cursorOf(36)).toEqual([
    [1.5, 1.5],
    [4, 396],
  ]);
  expect(cursorOf(900)[0]).toEqual([5, 5]);
  expect(pathsOf(drawn()).some(({ stroke }) => stroke?.colour === '#882255')).toBe(false);
});

test('a scale has room around what it shows, a count begins at nothing', () => {
  const limits = (index: number, of = week) => {
    const { read } = rowOf(drawn(of), index);
    const top = 12 + 100 * index;
    return [top + 84, top].map((y) => Number(read([0, y])[1].toFixed(4)));
  };
  // 1160 to 1200 g and 6 % of that on both sides.
  expect(limits(3)).toEqual([1157.6, 1202.4]);
  expect(limits(2)[0]).toBe(0);
  // One mass alone: 10 g in all.
  const one = { readings: [reading(0, { massG: 900 })], endGravity: null };
  expect(limits(0, one)).toEqual([895, 905]);
});
