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

/** The same of all times between which the monitor told a strength, minute by minute. */
function toldShare({ rows }: RunStudy): number {
  const times = rows.flatMap(({ timeS, vapourAbv }) => (vapourAbv === null ? [] : [timeS]));
  const wholeS = (times.at(-1) ?? 0) - (times[0] ?? 0);
  const toldS = times.reduce((sum, timeS, index) => {
    const sinceS = timeS - (times[index - 1] ?? timeS);
    // Two minutes in a row, where rows are as far apart, however a long record is averaged.
    return sinceS < 65 ? sum + sinceS : sum;
  }, 0);
  return (axisShare * toldS) / wholeS;
}

/** Width of the axis, of the width of the drawing [1]. */
const axisShare = 0.88;

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
    expect(drawnShare(strengthFigure(study))).toBeGreaterThan(toldShare(study) - 0.02);
    expect(drawnShare(overlayFigure([study, study]))).toBeGreaterThan(1.2);
  });

  test('of the strength is whole where it was told all along, and breaks while the monitor took the probe for silent', () => {
    expect(loggers.map(([name, study]) => [name, toldShare(study) > 0.8])).toEqual([
      ['once a minute', true],
      ['every 40 s', true],
      ['at two paces', false],
      ['over eleven hours', true],
    ]);
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
