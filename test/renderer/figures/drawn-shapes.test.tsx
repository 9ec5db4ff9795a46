// @vitest-environment happy-dom
import { cleanup, render } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { drawingToSvg, studyRun } from '#shared-core';
import { DrawnShapes } from '../../../renderer/figures/drawn-shapes.tsx';
import { plateFigure } from '../../../shared-core/figures/plate-figure.ts';
import { pearRun } from '../../shared-core/report/support/pear-run.ts';

afterEach(cleanup);

test('the window draws the paths and words that a file holds, in the same places and order', () => {
  const { plates } = studyRun(pearRun().run);
  if (plates === null) throw new Error('no plates');
  const drawing = plateFigure(plates, true);
  const { container } = render(
    <svg>
      <title>{drawing.altText}</title>
      <DrawnShapes shapes={drawing.shapes} />
    </svg>,
  );
  const file = new DOMParser().parseFromString(drawingToSvg(drawing), 'image/svg+xml');
  const drawn = (root: ParentNode) =>
    [...root.querySelectorAll('path, text')].map((shape) => [
      shape.getAttribute('d') ?? shape.textContent,
      shape.getAttribute('fill'),
      shape.getAttribute('stroke'),
      shape.getAttribute('stroke-dasharray'),
    ]);
  expect(drawn(container).length).toBeGreaterThan(50);
  expect(drawn(container)).toEqual(drawn(file));
});
