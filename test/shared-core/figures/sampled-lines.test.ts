import { describe, expect, test } from 'vitest';
import { type Drawing, type RunStudy, studyRun } from '#shared-core';
import { overlayFigure } from '../../../shared-core/figures/overlay-figure.ts';
import { strengthFigure } from '../../../shared-core/figures/strength-figure.ts';
import { temperatureFigure } from '../../../shared-core/figures/temperature-figure.ts';
import { pearRun } from '../report/support/pear-run.ts';

const { run } = pearRun();
const whole = { stages: true, plateauBand: true };

/** The run as a logger would have it that writes at these times. */
function loggedRun(keep: (timeS: number) => boolean, stretch = 1): RunStudy {
  const inputs = run.inputs
    .filter((input) => input.kind !== 'reading' || keep(input.timeS))
    .map((input) => ({ ...input, timeS: input.timeS * stretch }));
  const silenceS = 5;
  return studyRun({
    ...run,
    settings: { ...run.settings, probe: { ...run.settings.probe, silenceS } },
    inputs,
    endS: run.endS * stretch,
  });
}

/** Width that the lines of a curve cover, of the width of the drawing [1]. */
function drawnShare(drawing: Drawing | null): number {
  if (drawing === null) return 0;
  const lines = drawing.shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.closed !== true && shape.points.length > 8 ? [shape.points] : [],
  );
  const widthPt = lines.reduce(
    (sum, points) => sum + (points.at(-1)?.[0] ?? 0) - (points[0]?.[0] ?? 0),
    0,
  );
  return widthPt / drawing.widthPt;
}

const loggers: readonly (readonly [string, RunStudy])[] = [
  ['once a minute', loggedRun((timeS) => Math.floor(timeS) % 60 === 0)],
  ['every 40 s', loggedRun((timeS) => Math.floor(timeS) % 40 === 0)],
  ['at two paces', loggedRun((timeS) => timeS < 1500 || Math.floor(timeS) % 60 === 0)],
  ['over eleven hours', loggedRun((timeS) => Math.floor(timeS) % 2 === 0, 8.25)],
];

describe('the line of a run', () => {
  test.each(loggers)('is drawn whole for a table logged %s', (_, study) => {
    expect(drawnShare(temperatureFigure(study, whole))).toBeGreaterThan(0.85);
    expect(
      drawnShare(temperatureFigure(study, { stages: false, plateauBand: false })),
    ).toBeGreaterThan(0.85);
    expect(drawnShare(strengthFigure(study))).toBeGreaterThan(0.8);
    expect(drawnShare(overlayFigure([study, study]))).toBeGreaterThan(1.2);
  });

  test('breaks where a logger that writes once a minute missed ten of them', () => {
    const isMissed = (timeS: number) => timeS > 1500 && timeS < 2160;
    const study = loggedRun((timeS) => Math.floor(timeS) % 60 === 0 && !isMissed(timeS));
    const shares = [temperatureFigure(study, whole), strengthFigure(study)].map(drawnShare);
    for (const share of shares) {
      expect(share).toBeGreaterThan(0.4);
      expect(share).toBeLessThan(0.85);
    }
  });
});
