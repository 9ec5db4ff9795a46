import { describe, expect, test } from 'vitest';
import {
  type Drawing,
  drawingToSvg,
  ethanolFigure,
  niceTicks,
  overlayFigure,
  plateFigure,
  strengthFigure,
  studyRun,
  temperatureFigure,
  timeTicks,
} from '#shared-core';
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
  test.each(drawings())(
    '%s is a drawing within its own bounds, of finite numbers, with words for who cannot see it',
    (_, drawing) => {
      expect(drawing).not.toBeNull();
      if (drawing === null) return;
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

  test('ten hours at ten readings a second draw as few points as one hour', () => {
    const rows = Array.from({ length: 36_000 }, (_, timeS) => ({
      timeS,
      headC: 78 + Math.sin(timeS),
      readings: 10,
      pressureKPa: 100,
      stage: 'main-fraction' as const,
      aboveAzeotropeK: 0,
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
  expect(timeTicks(0, 36_000, 8)).toEqual([0, 7200, 14_400, 21_600, 28_800, 36_000]);
});
