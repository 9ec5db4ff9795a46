// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { StripDrawing } from '../../../renderer/strip/strip-drawing.tsx';
import { openedRun } from '../support/opened-run.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

test('the dot stands where the trace ends, also when time has run ahead of the readings', () => {
  const drawn = [0, 60, 120].map((timeS) => ({ timeS, value: 60 + timeS / 10 }));
  const view = openedRun();
  const { container } = renderInWindow(
    <StripDrawing
      size={{ width: 800, height: 300 }}
      range={{ fromS: 0, toS: 600 }}
      height="whole"
      moment={{
        view,
        drawn,
        doubtful: [],
        marks: [],
        nowS: 240,
        head: { timeS: 120, value: 72 },
        extra: null,
      }}
    />,
  );
  const end = /L([\d.]+) ([\d.]+)$/.exec(
    container.querySelector('.strip-trace')?.getAttribute('d') ?? '',
  );
  const dot = container.querySelector('.now-dot');
  const at = ['cx', 'cy'].map((name) => Number(dot?.getAttribute(name)).toFixed(0));
  expect(at).toEqual(end?.slice(1).map((pixel) => Number(pixel).toFixed(0)));
  expect(Number(container.querySelector('.now-line')?.getAttribute('x1'))).toBeGreaterThan(
    Number(dot?.getAttribute('cx')) + 50,
  );
});
