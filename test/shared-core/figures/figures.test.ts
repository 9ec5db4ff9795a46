import { describe, expect, test } from 'vitest';
import { type Drawing, drawingToSvg, studyRun } from '#shared-core';
import { ethanolFigure } from '../../../shared-core/figures/ethanol-figure.ts';
import { niceTicks, timeTicks } from '../../../shared-core/figures/nice-ticks.ts';
import { overlayFigure } from '../../../shared-core/figures/overlay-figure.ts';
import { plateFigure } from '../../../shared-core/figures/plate-figure.ts';
import { strengthFigure } from '../../../shared-core/figures/strength-figure.ts';
import { temperatureFigure } from '../../../shared-core/figures/temperature-figure.ts';
import { pearRun } from '../report/support/pear-run.ts';

const study = studyRun(pearRun().run);
const whole = { stages: true, plateauBand: true };

function drawings(): readonly (readonly [string, Drawing | null])[] {
  return [
    ['temperature', temperatureFigure(study, whole)],
    ['strength', strengthFigure(study)],
    ['plates', study.plates && plateFigure(study.plates, true)],
    ['ethanol', ethanolFigure(study.books)],
    ['overlay', overlayFigure([study, study])],
  ];
}

/** Elements opened and closed in order; attributes quoted; no stray < or &. */
function isWellFormed(xml: string): boolean {
  const open: string[] = [];
  for (const [, close, name = '', self] of xml.matchAll(
    /<(\/?)([a-z]+)(?:\s+[\w:-]+="[^"<]*")*\s*(\/?)>/gi,
  )) {
    if (close) {
      if (open.pop() !== name) return false;
    } else if (!self) open.push(name);
  }
  const text = xml.replace(/<[^>]*>/g, '');
  return open.length === 0 && !/<|&(?!amp;|lt;|gt;|quot;)/.test(text);
}

describe('figures of a run', () => {
  test.each(['temperature', 'strength', 'plates', 'ethanol', 'overlay'])(
    '%s is a drawing within its own bounds, of finite numbers, with words for who cannot see it',
    (name) => {
      const drawing = new Map(drawings()).get(name);
      if (drawing === undefined || drawing === null) throw new Error(`no figure ${name}`);
      const { widthPt, heightPt, shapes, altText } = drawing;
      expect(altText.length).toBeGreaterThan(30);
      for (const shape of shapes) {
        const points = shape.kind === 'path' ? shape.points : [shape.at];
        for (const [x, y] of points) {
          expect(x >= 0 && x <= widthPt && y >= 0 && y <= heightPt).toBe(true);
        }
      }
      expect(isWellFormed(drawingToSvg(drawing))).toBe(true);
    },
  );

  test('a worksheet’s figure gives neither stages nor band away', () => {
    const bare = temperatureFigure(study, { stages: false, plateauBand: false });
    const words = bare.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    expect(words.some((text) => /fraction|tail|azeotrope|limit/i.test(text))).toBe(false);
    expect(bare.altText).not.toMatch(/held at|Stages/);
  });

  test('a record whose moments run back is drawn without a line back, in every figure', () => {
    const { run } = pearRun();
    const set = run.inputs.map((input, index) =>
      index % 500 === 100 ? { ...input, timeS: Math.max(0, input.timeS - 50) } : input,
    );
    const back = studyRun({ ...run, inputs: set });
    expect(back.rows.map(({ timeS }) => timeS)).toEqual(
      back.rows.map(({ timeS }) => timeS).toSorted((a, b) => a - b),
    );
    const [temperature, strength, overlay] = [
      temperatureFigure(back, whole),
      strengthFigure(back),
      overlayFigure([back, back]),
    ];
    for (const drawing of [temperature, overlay]) {
      const lines = (drawing?.shapes ?? []).flatMap((shape) =>
        shape.kind === 'path' && shape.points.length > 100 ? [shape.points.map(([x]) => x)] : [],
      );
      expect(lines.length).toBeGreaterThan(0);
      for (const xs of lines) expect(xs).toEqual(xs.toSorted((a, b) => a - b));
    }
    expect(strength).not.toBeNull();
  });

  test('ten hours at ten readings a second draw as few points as one hour', () => {
    const rows = Array.from({ length: 36_000 }, (_, timeS) => ({
      timeS,
      headC: 78 + Math.sin(timeS),
      readings: 10,
      pressureKPa: 100,
      stage: 'main-fraction' as const,
      aboveAzeotropeK: 0,
      isBathed: false,
      vapourAbv: null,
    }));
    const { shapes } = temperatureFigure({ ...study, rows, endS: 36_000 }, whole);
    const points = shapes.reduce(
      (sum, shape) => sum + (shape.kind === 'path' ? shape.points.length : 0),
      0,
    );
    expect(points).toBeLessThan(4000);
  });

  test('a line breaks where the probe was silent', () => {
    const silent = study.rows.filter(({ timeS }) => timeS < 1500 || timeS > 1700);
    const lines = (drawing: Drawing) =>
      drawing.shapes.filter((shape) => shape.kind === 'path' && shape.points.length > 50).length;
    expect(lines(temperatureFigure({ ...study, rows: silent }, whole))).toBe(
      lines(temperatureFigure(study, whole)) + 1,
    );
  });

  test('a run without vapour or cuts has a temperature figure only', () => {
    const empty = studyRun({ ...pearRun().run, inputs: [], entries: undefined });
    expect([strengthFigure(empty), ethanolFigure(empty.books), overlayFigure([empty])]).toEqual([
      null,
      null,
      null,
    ]);
    expect(isWellFormed(drawingToSvg(temperatureFigure(empty, whole)))).toBe(true);
  });
});

test('text of a run cannot break out of the SVG', () => {
  const svg = drawingToSvg(
    temperatureFigure({ ...study, name: '</title><script>&\u0000"' }, whole),
  );
  expect(svg).not.toContain('<script>');
  expect(isWellFormed(svg)).toBe(true);
});

test('ticks are round and lie within the axis', () => {
  expect(niceTicks(76.83, 83.2, 6)).toEqual({ values: [78, 80, 82], decimals: 0 });
  expect(niceTicks(-0.3, 0.3, 7)).toEqual({
    values: [-0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3].map((value) => value + 0),
    decimals: 1,
  });
  expect(
    [niceTicks(75, 101, 7), niceTicks(-4, 22, 8), niceTicks(75, 87, 7), niceTicks(3, 3, 6)].map(
      ({ values }) => values,
    ),
  ).toEqual([
    [75, 80, 85, 90, 95, 100],
    [-0, 5, 10, 15, 20].map((value) => value + 0),
    [76, 78, 80, 82, 84, 86],
    [3],
  ]);
  expect(timeTicks(0, 3600, 7)).toEqual([0, 600, 1200, 1800, 2400, 3000, 3600]);
  expect(timeTicks(0, 36_000, 8)).toEqual([0, 7200, 14_400, 21_600, 28_800, 36_000]);
});

/** Boxes of all words of a drawing, as wide as a rough count of letters says. */
function wordBoxes({ shapes }: Drawing) {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'text' || shape.upright === true) return [];
    const width = 0.45 * shape.sizePt * shape.text.length;
    const [x, y] = shape.at;
    const left = x - (shape.anchor === 'start' ? 0 : shape.anchor === 'middle' ? width / 2 : width);
    return [
      { text: shape.text, left, right: left + width, top: y - 0.7 * shape.sizePt, bottom: y },
    ];
  });
}

function overprinted(drawing: Drawing): readonly string[] {
  const boxes = wordBoxes(drawing);
  return boxes.flatMap((one, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          one.top < other.bottom &&
          other.top < one.bottom,
      )
      .map((other) => `${one.text} / ${other.text}`),
  );
}

describe('no words lie over others', () => {
  test('in the figures of a run', () => {
    const found = drawings().flatMap(([, drawing]) =>
      drawing === null ? [] : overprinted(drawing),
    );
    expect(found).toEqual([]);
  });

  test('where short stages follow one another', () => {
    const { stages } = study.verdicts;
    const [first] = stages;
    if (first === undefined) throw new Error('no stage');
    const order = ['warm-up', 'first-fraction', 'main-fraction', 'tail', 'cool-down'] as const;
    const short = order.map((stage, index) => ({
      ...first,
      stage,
      fromS: 40 * index,
      toS: stage === 'cool-down' ? study.endS : 40 * (index + 1),
    }));
    const crowded = { ...study, verdicts: { ...study.verdicts, stages: short } };
    expect(overprinted(temperatureFigure(crowded, whole))).toEqual([]);
  });
});

test('the edges of the band are named where neither the curve nor a mark goes through the words', () => {
  const figure = temperatureFigure(study, whole);
  const words = wordBoxes(figure).filter(({ text }) => /azeotrope|limit/.test(text));
  const lines = figure.shapes.filter(
    (shape) =>
      shape.kind === 'path' &&
      shape.stroke !== undefined &&
      shape.stroke.colour !== '#117733' &&
      shape.stroke.colour !== '#cfcbbf',
  );
  expect(words).toHaveLength(2);
  for (const { left, right, top, bottom } of words) {
    const met = lines.some(
      (shape) =>
        shape.kind === 'path' &&
        shape.points.some(([x, y]) => x > left && x < right && y > top && y < bottom),
    );
    expect(met).toBe(false);
  }
});

test('each McCabe–Thiele step that has room for it has its number', () => {
  if (study.plates === null) throw new Error('no plates');
  const numbers = (withSteps: boolean) =>
    plateFigure(study.plates!, withSteps).shapes.filter(
      (shape) => shape.kind === 'text' && /^\d$/.test(shape.text),
    ).length;
  expect(numbers(true) - numbers(false)).toBe(Math.ceil(study.plates.plates.stepped.value ?? 0));
});

test('figures of imported readings say so, and no others', () => {
  const imported = { ...study, imported: true };
  const said = (one: typeof study) =>
    [temperatureFigure(one, whole), strengthFigure(one), overlayFigure([one, one])].map((drawing) =>
      /imported/.test(drawing === null ? '' : drawingToSvg(drawing)),
    );
  expect([said(imported), said(study)]).toEqual([
    [true, true, true],
    [false, false, false],
  ]);
});
