// @vitest-environment happy-dom
import { cleanup } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { ForecastFan } from '../../../renderer/strip/forecast-fan.tsx';
import { StripDrawing } from '../../../renderer/strip/strip-drawing.tsx';
import { StripTextContext } from '../../../renderer/strip/strip-text.ts';
import { openedRun } from '../support/opened-run.ts';
import { renderInWindow } from '../support/render-in-window.tsx';

afterEach(cleanup);

/** Ten minutes in view, the fan from minute 2 to the range given: what it says, and its far end as a share of the width. */
function fanTo(highS: number, textPx = 15) {
  const view = openedRun();
  const endS = { low: 200, value: 300, high: highS };
  const { container, unmount } = renderInWindow(
    <StripTextContext value={textPx}>
      <StripDrawing
        size={{ width: 800, height: 300 }}
        range={{ fromS: 0, toS: 600 }}
        height="whole"
        moment={{
          view,
          drawn: [],
          doubtful: [],
          marks: [],
          nowS: 120,
          head: null,
          extra: (
            <ForecastFan fromS={120} fromC={78.5} endS={endS} limitC={82.5} limitName={null} />
          ),
        }}
      />
    </StripTextContext>,
  );
  const farEnd = Number(container.querySelector('.fan-end')?.getAttribute('x2')) / 800;
  const clip = container.querySelector('.fan-area')?.closest('g')?.getAttribute('clip-path');
  const named = container.querySelector('.fan-name');
  const name = named?.textContent;
  const abovePx =
    Number(container.querySelector('.fan-end')?.getAttribute('y1')) -
    Number(named?.getAttribute('y'));
  unmount();
  return { farEnd, clip, name, abovePx };
}

test('a range that ends in view ends where it is drawn to end', () => {
  const { farEnd, name } = fanTo(500);
  expect(farEnd).toBeLessThan(0.9);
  expect(name).toBe('limit expected');
});

test('a range that goes on out of view is cut off by the edge, ends nowhere in view, and says that it goes on', () => {
  const { farEnd, clip, name } = fanTo(1200);
  expect(farEnd).toBeGreaterThan(1.5);
  expect(clip).toMatch(/^url\(#fan-clip/);
  expect(name).toBe('limit expected, perhaps later');
});

test.each([15, 43])(
  'at %d px of type the end’s name and its rim leave the end’s line whole',
  (textPx) => {
    expect(fanTo(500, textPx).abovePx).toBeGreaterThanOrEqual((0.25 + 0.33 / 2) * textPx + 2.499);
  },
);
